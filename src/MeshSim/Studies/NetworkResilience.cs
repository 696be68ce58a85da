using System.Collections.Immutable;
using MeshSim.Mesh.Outages;
using MeshSim.Mesh.Reliability;
using MeshSim.Mesh.Routers;

namespace MeshSim.Studies;

/// <summary>What a rehearsal is asked beyond the home, the network and the state.</summary>
public sealed record RehearsalOptions
{
    /// <summary>Whether pairs of routers are rehearsed too.</summary>
    public bool Pairs { get; init; }

    /// <summary>How often shadowing is drawn; 0 leaves chance out.</summary>
    public int Draws { get; init; } = 100_000;

    /// <summary>Chooses the random numbers.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Correlation of the shadowing of two links that share an end.</summary>
    public double Correlation { get; init; } = LinkShadowing.DefaultCorrelation;
}

/// <summary>Which mains devices carry one network, and which would help it.</summary>
public sealed record NetworkRouters
{
    /// <summary>Links and routes, in the state asked for.</summary>
    public required NetworkCoverage Coverage { get; init; }

    /// <summary>Every router and mains device that is on, the coordinator excepted, in the home's order.</summary>
    public required ImmutableArray<RouterDuty> Duties { get; init; }

    /// <summary>Mains devices that would help if they routed in the network, the greatest help first.</summary>
    public required ImmutableArray<NewRouter> NewRouters { get; init; }

    /// <summary>How many mains devices were asked.</summary>
    public required int Considered { get; init; }
}

/// <summary>What outages and chance do to one network.</summary>
public sealed record NetworkRehearsal
{
    /// <summary>Links and routes before anything happens, in the state asked for.</summary>
    public required NetworkCoverage Coverage { get; init; }

    /// <summary>What was asked.</summary>
    public required RehearsalOptions Options { get; init; }

    /// <summary>Every outage: states, switches, circuits, routers, the coordinator, pairs.</summary>
    public required ImmutableArray<Rehearsal> Rehearsals { get; init; }

    /// <summary>How likely each device is connected; empty when not asked.</summary>
    public required ImmutableArray<ConnectionChance> Chances { get; init; }

    /// <summary>States that must hold and drop a device that has power.</summary>
    public IEnumerable<Rehearsal> Broken => Rehearsals.Where(rehearsal => rehearsal.Outage.MustHold && !rehearsal.Dropped.IsEmpty);
}
