using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>What a radio profile's receiver makes of a level: how much it needs, and what it loses.</summary>
public sealed class Receiver
{
    /// <summary>Share of reference frames that are lost at the required level: how receivers state their sensitivity.</summary>
    public const double ReferenceLoss = 0.01;

    private readonly RadioProfile profile;
    private readonly Decibels requiredRatio;

    /// <summary>The receiver of a profile.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A frame length, the bandwidth or the bit rate of the profile is outside its range.</exception>
    public Receiver(RadioProfile profile)
    {
        this.profile = profile;
        requiredRatio = PacketErrorRate.RequiredRatio(profile.Modulation, profile.SensitivityFrameOctets, ReferenceLoss);
        PacketErrorRate.Octets.Check(profile.FrameOctets);

        RequiredSinr = profile.Modulation == Modulation.OQpsk ? requiredRatio : requiredRatio + BitRateOverBandwidth(profile);
        NoiseFloor = ThermalNoise.Floor(profile.NoiseBandwidthKilohertz, profile.NoiseFigure);
        RequiredLevel = RequiredLevelIn(NoiseFloor);
    }

    /// <summary>Thermal noise in the receiver's bandwidth, noise figure included.</summary>
    public PowerLevel NoiseFloor { get; }

    /// <summary>Signal to noise and interference in the noise bandwidth at which <see cref="ReferenceLoss"/> is reached.</summary>
    public Decibels RequiredSinr { get; }

    /// <summary>The greater of the stated sensitivity and what noise and <see cref="RequiredSinr"/> ask for.</summary>
    public PowerLevel RequiredLevel { get; }

    /// <summary>The same among other noise: the greater of the stated sensitivity and what that noise and <see cref="RequiredSinr"/> ask for.</summary>
    /// <param name="noise">Everything in the noise bandwidth that is not the signal, noise figure included.</param>
    public PowerLevel RequiredLevelIn(PowerLevel noise) => PowerLevel.Max(profile.Sensitivity, noise + RequiredSinr);

    /// <summary>
    /// Share of planning frames that are lost at a steady level: the modulation's error formula, shifted so that
    /// <see cref="ReferenceLoss"/> of the reference frames are lost at <see cref="RequiredLevel"/>.
    /// </summary>
    /// <param name="received">Level at the antenna connector.</param>
    /// <returns>0 to 1.</returns>
    public double LossAt(PowerLevel received) => PacketErrorRate.Of(BitErrorRateAt(received), profile.FrameOctets);

    /// <summary>Share of wrong bits at a steady level, shifted as in <see cref="LossAt"/>.</summary>
    /// <param name="received">Level at the antenna connector.</param>
    /// <returns>0 to 0.5.</returns>
    public double BitErrorRateAt(PowerLevel received)
    {
        Decibels ratio = requiredRatio + (received - RequiredLevel);
        return BitErrorRate.Of(profile.Modulation, Math.Min(ratio.PowerRatio, BitErrorRate.Ratio.Max));
    }

    private static Decibels BitRateOverBandwidth(RadioProfile profile) =>
        Decibels.FromPowerRatio(profile.BitRateKilobitsPerSecond / profile.NoiseBandwidthKilohertz);
}
