using System.Collections.Immutable;
using MeshSim.Mesh;
using MeshSim.Radio;

namespace MeshSim.Studies;

/// <summary>What the air allows one network.</summary>
public sealed record NetworkAir
{
    /// <summary>What Wi-Fi leaves of each channel, in order; empty where there is no choice or nobody disturbs.</summary>
    public required ImmutableArray<ChannelEvidence> Channels { get; init; }

    /// <summary>The channel that is disturbed least; null where there is no choice or nobody disturbs.</summary>
    public required int? BestChannel { get; init; }

    /// <summary>The budget of time on the air; null where the band sets no limit of time.</summary>
    public required DutyBudget? Duty { get; init; }

    /// <summary>How many devices a coordinator that polls them all would poll.</summary>
    public required int Polled { get; init; }
}
