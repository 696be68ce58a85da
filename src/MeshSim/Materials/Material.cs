using System.Numerics;
using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>
/// A building material by the four parameters of ITU-R P.2040: relative permittivity a·f^b and conductivity c·f^d, f in GHz.
/// </summary>
public sealed record Material
{
    /// <summary>The factor of conductivity over frequency in the imaginary part, as the recommendation rounds it.</summary>
    public const double LossFactorGigahertz = 17.98;

    /// <summary>Name in the catalogue, such as <c>concrete</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Edition that the row comes from, such as "P.2040-3".</summary>
    public required string Edition { get; init; }

    /// <summary>Parameter a, no unit.</summary>
    public required double A { get; init; }

    /// <summary>Parameter b, no unit.</summary>
    public required double B { get; init; }

    /// <summary>Parameter c, S/m.</summary>
    public required double C { get; init; }

    /// <summary>Parameter d, no unit.</summary>
    public required double D { get; init; }

    /// <summary>Frequencies at which the row was measured, GHz. Beyond them a value is an extrapolation.</summary>
    public required ValidRange FrequencyGigahertz { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required string Source { get; init; }

    /// <summary>Complex relative permittivity, ε' − jε'': imaginary part zero or negative.</summary>
    public Complex RelativePermittivity(Frequency frequency)
    {
        double real = A * Math.Pow(frequency.Gigahertz, B);
        double conductivitySiemensPerMetre = C * Math.Pow(frequency.Gigahertz, D);
        return new Complex(real, -LossFactorGigahertz * conductivitySiemensPerMetre / frequency.Gigahertz);
    }
}

/// <summary>One layer of a construction.</summary>
/// <param name="Material">What it is.</param>
/// <param name="ThicknessMetres">How thick, m, above zero.</param>
public sealed record Layer(Material Material, double ThicknessMetres);
