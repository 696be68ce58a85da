using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>Turns the power references of band limits into one another.</summary>
public static class RadiatedPower
{
    /// <summary>Gain of a half-wave dipole over an isotropic radiator as regulators round it; exactly 2.15088 dB (ratio 1.640922).</summary>
    public static readonly Decibels HalfWaveDipoleGain = new(2.15);

    /// <summary>Accepted field strengths.</summary>
    public static readonly ValidRange FieldMicrovoltsPerMetre = new(1e-3, 1e9, "µV/m");

    /// <summary>Accepted distances of measurement.</summary>
    public static readonly ValidRange DistanceMetres = new(0.1, 1e4, "m");

    /// <summary>EIRP of an effective radiated power.</summary>
    public static PowerLevel EirpFromErp(PowerLevel erp) => erp + HalfWaveDipoleGain;

    /// <summary>Effective radiated power of an EIRP.</summary>
    public static PowerLevel ErpFromEirp(PowerLevel eirp) => eirp - HalfWaveDipoleGain;

    /// <summary>EIRP that makes a field strength in free space: (E d)² / 30 watts.</summary>
    /// <param name="fieldMicrovoltsPerMetre">E, µV/m, within <see cref="FieldMicrovoltsPerMetre"/>.</param>
    /// <param name="distanceMetres">d, m, within <see cref="DistanceMetres"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static PowerLevel EirpFromField(double fieldMicrovoltsPerMetre, double distanceMetres)
    {
        double volts = FieldMicrovoltsPerMetre.Check(fieldMicrovoltsPerMetre) * 1e-6 * DistanceMetres.Check(distanceMetres);
        return PowerLevel.FromMilliwatts(volts * volts / 30 * 1e3);
    }
}
