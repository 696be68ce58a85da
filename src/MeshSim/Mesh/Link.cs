using MeshSim.Devices;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh;

/// <summary>What two devices of one network hear of each other. Traffic is acknowledged, so the worse direction counts.</summary>
public sealed record Link
{
    /// <summary>The device that sends forward.</summary>
    public required DeviceId From { get; init; }

    /// <summary>The device that receives forward.</summary>
    public required DeviceId To { get; init; }

    /// <summary>The loss between the two antennas, mountings of both ends included as items.</summary>
    public required PathLoss PathLoss { get; init; }

    /// <summary>What <see cref="To"/> receives.</summary>
    public required PowerLevel Received { get; init; }

    /// <summary>What <see cref="From"/> receives the other way.</summary>
    public required PowerLevel Reverse { get; init; }

    /// <summary>What <see cref="From"/> needs: its noise and who disturbs it. Null in a link that nobody computed.</summary>
    public Reception? AtFrom { get; init; }

    /// <summary>What <see cref="To"/> needs.</summary>
    public Reception? AtTo { get; init; }

    /// <summary>How far the worse direction lies above the planning level of its receiver; negative when below.</summary>
    public required Decibels Margin { get; init; }

    /// <summary>How wrong <see cref="Margin"/> may be. None in a link that nobody computed.</summary>
    public MarginUncertainty Uncertainty { get; init; }

    /// <summary>The probability that the margin of the link as built is 0 dB or more, so that it meets what its receiver needs.</summary>
    public double Holds => Uncertainty.ProbabilityAbove(Decibels.Zero, Margin);

    /// <summary>Share of frames that arrive forward at the first try, expected over shadowing and interference, 0 to 1.</summary>
    public required double Delivery { get; init; }

    /// <summary>Share of frames that arrive the other way, 0 to 1.</summary>
    public required double ReverseDelivery { get; init; }

    /// <summary>Expected transmissions per acknowledged frame, 1 / (delivery · reverse delivery); infinite when nothing arrives.</summary>
    public double Etx => 1 / (Delivery * ReverseDelivery);

    /// <summary>The other end.</summary>
    /// <param name="end">One of the two ends.</param>
    public DeviceId Other(DeviceId end) => end == From ? To : From;

    /// <summary>Share of frames that arrive when one of the ends sends.</summary>
    /// <param name="sender">One of the two ends.</param>
    public double DeliveryFrom(DeviceId sender) => sender == From ? Delivery : ReverseDelivery;
}
