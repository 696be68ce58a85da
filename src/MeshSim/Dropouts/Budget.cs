using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Dropouts;

/// <summary>What takes power from a frame on its way.</summary>
/// <param name="Item">The loss.</param>
/// <param name="Share">Its share of all losses on the way, 0 to 1.</param>
public sealed record BudgetLoss(LossItem Item, double Share);

/// <summary>What decides the level that a receiver needs.</summary>
public enum RequirementCause
{
    /// <summary>The receiver's stated sensitivity.</summary>
    Sensitivity,

    /// <summary>Thermal noise and the signal-to-noise ratio of the modulation.</summary>
    Noise,

    /// <summary>USB 3 storage beside the coordinator raises the noise.</summary>
    HubNoise,

    /// <summary>Wi-Fi in the channel.</summary>
    Interference,
}

/// <summary>A link in its worse direction, from the transmitter to the level that the receiver needs, nothing left out.</summary>
public sealed record Budget
{
    /// <summary>The link.</summary>
    public required Link Link { get; init; }

    /// <summary>Who sends in the worse direction.</summary>
    public required DeviceId Sender { get; init; }

    /// <summary>Who receives in the worse direction.</summary>
    public required DeviceId Receiver { get; init; }

    /// <summary>At the sender's antenna connector.</summary>
    public required PowerLevel TransmitPower { get; init; }

    /// <summary>Of each of the two antennas.</summary>
    public required Decibels AntennaGain { get; init; }

    /// <summary>All losses, distance first, then in the order in which the path meets them, mountings last. They sum to the path loss.</summary>
    public required ImmutableArray<BudgetLoss> Losses { get; init; }

    /// <summary>What arrives: power + gain − losses + gain.</summary>
    public required PowerLevel Received { get; init; }

    /// <summary>What the receiver needs undisturbed: sensitivity or noise, whichever asks for more.</summary>
    public required PowerLevel UndisturbedRequired { get; init; }

    /// <summary>By how much noise and interference at its place raise that.</summary>
    public required Decibels Disturbance { get; init; }

    /// <summary>What decides the required level.</summary>
    public required RequirementCause Cause { get; init; }

    /// <summary>The margin that a link must have to count.</summary>
    public required Decibels DesignMargin { get; init; }

    /// <summary>The level that the receiver needs.</summary>
    public PowerLevel Required => UndisturbedRequired + Disturbance;

    /// <summary>How far the received level lies above the required one.</summary>
    public Decibels Margin => Received - Required;

    /// <summary>What the link lacks to count; negative when it has some to spare.</summary>
    public Decibels Missing => DesignMargin - Margin;

    /// <summary>The dearest loss other than distance; null in the open.</summary>
    public BudgetLoss? Dearest => Losses.Where(loss => loss.Item.Kind != LossKind.Distance && loss.Item.Loss > Decibels.Zero).MaxBy(loss => loss.Item.Loss);
}
