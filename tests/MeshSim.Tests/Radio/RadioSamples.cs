using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

/// <summary>Radio profiles with round figures.</summary>
internal static class RadioSamples
{
    /// <summary>A sensitivity so good that noise alone decides.</summary>
    public static readonly PowerLevel NoiseDecides = new(-250);

    public static readonly RadioProfile OQpsk = Of(Modulation.OQpsk, 250, 2000, overheadOctets: 6);

    public static RadioProfile Of(Modulation modulation, double bitRateKilobitsPerSecond, double noiseBandwidthKilohertz, int overheadOctets) => new()
    {
        Name = "sample",
        Description = "round figures for tests",
        Standard = "none",
        FirstCarrier = new(2405),
        FirstChannel = 11,
        LastChannel = 26,
        ChannelStepMegahertz = 5,
        Topology = Topology.Mesh,
        Modulation = modulation,
        BitRateKilobitsPerSecond = bitRateKilobitsPerSecond,
        NoiseBandwidthKilohertz = noiseBandwidthKilohertz,
        Sensitivity = new(-95),
        SensitivityFrameOctets = 20,
        NoiseFigure = new(15),
        TransmitPower = new(0),
        AntennaGain = Decibels.Zero,
        HopLimit = 10,
        FrameOctets = 50,
        OverheadOctets = overheadOctets,
        Source = "assumed",
    };
}
