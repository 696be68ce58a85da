using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>How bits are put on the carrier.</summary>
public enum Modulation
{
    /// <summary>Offset quadrature phase-shift keying with spreading, IEEE 802.15.4 at 2450 MHz.</summary>
    OQpsk,

    /// <summary>Two-level frequency-shift keying, received without a phase reference.</summary>
    Fsk,

    /// <summary>Binary phase-shift keying with spreading, IEEE 802.15.4 at 868 and 915 MHz.</summary>
    Bpsk,

    /// <summary>On-off keying, simple remote controls.</summary>
    OnOff,
}

/// <summary>How a network of this kind hangs together.</summary>
public enum Topology
{
    /// <summary>Routers pass frames on.</summary>
    Mesh,

    /// <summary>Each device speaks to the coordinator alone.</summary>
    Star,
}

/// <summary>One kind of radio: what a standard, a region and a class of chips make of it.</summary>
public sealed record RadioProfile
{
    /// <summary>Name in the catalogue, such as <c>ieee802154-2450</c>.</summary>
    public required string Name { get; init; }

    /// <summary>In words.</summary>
    public required string Description { get; init; }

    /// <summary>The standard and its part, by number.</summary>
    public required string Standard { get; init; }

    /// <summary>Region whose band limits apply, such as "EU" or "US"; null where the band is the same everywhere.</summary>
    public string? Region { get; init; }

    /// <summary>Carrier of the first channel.</summary>
    public required Frequency FirstCarrier { get; init; }

    /// <summary>Number of the first channel; equal to <see cref="LastChannel"/> where there is only one.</summary>
    public required int FirstChannel { get; init; }

    /// <summary>Number of the last channel.</summary>
    public required int LastChannel { get; init; }

    /// <summary>Step between neighbouring channels, MHz; 0 where there is only one.</summary>
    public double ChannelStepMegahertz { get; init; }

    /// <summary>Mesh or star.</summary>
    public required Topology Topology { get; init; }

    /// <summary>How bits are put on the carrier.</summary>
    public required Modulation Modulation { get; init; }

    /// <summary>Gross bit rate, kb/s.</summary>
    public required double BitRateKilobitsPerSecond { get; init; }

    /// <summary>Noise bandwidth of the receiver, kHz.</summary>
    public required double NoiseBandwidthKilohertz { get; init; }

    /// <summary>Level at which one reference frame in a hundred is lost.</summary>
    public required PowerLevel Sensitivity { get; init; }

    /// <summary>Length of the frame for which the sensitivity is stated, octets.</summary>
    public required int SensitivityFrameOctets { get; init; }

    /// <summary>Noise figure of the receiver.</summary>
    public required Decibels NoiseFigure { get; init; }

    /// <summary>Transmit power of a device that states none.</summary>
    public required PowerLevel TransmitPower { get; init; }

    /// <summary>Antenna gain of a device over an isotropic radiator.</summary>
    public required Decibels AntennaGain { get; init; }

    /// <summary>Most links in a row between a device and the coordinator; 1 in a star.</summary>
    public required int HopLimit { get; init; }

    /// <summary>Planning frame, octets of the physical-layer payload.</summary>
    public required int FrameOctets { get; init; }

    /// <summary>Octets on the air before the payload: preamble, start of frame, length.</summary>
    public required int OverheadOctets { get; init; }

    /// <summary>How a frame gets across one link.</summary>
    public MediumAccess Access { get; init; } = new();

    /// <summary>By how much the receiver weakens what lies in the channel beside its own; null where nothing of it is taken to get in.</summary>
    public Decibels? AdjacentRejection { get; init; }

    /// <summary>By how much it weakens what lies farther away; null where nothing of it is taken to get in.</summary>
    public Decibels? AlternateRejection { get; init; }

    /// <summary>Where the figures come from, or "assumed".</summary>
    public required string Source { get; init; }

    /// <summary>The carrier of a channel.</summary>
    /// <param name="channel">Channel number.</param>
    /// <exception cref="ArgumentOutOfRangeException">The profile has no such channel.</exception>
    public Frequency Carrier(int channel) =>
        channel >= FirstChannel && channel <= LastChannel
            ? new(FirstCarrier.Megahertz + ((channel - FirstChannel) * ChannelStepMegahertz))
            : throw new ArgumentOutOfRangeException(nameof(channel), channel, FormattableString.Invariant($"must be {FirstChannel} to {LastChannel}"));
}
