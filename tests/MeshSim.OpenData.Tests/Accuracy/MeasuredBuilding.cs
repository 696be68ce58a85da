using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Quantities;

namespace MeshSim.OpenData.Tests.Accuracy;

/// <summary>A level that somebody measured between two places.</summary>
/// <param name="Transmitter">Who sent, or the fixed end where the other one moved: what is left out together.</param>
/// <param name="From">Where that is.</param>
/// <param name="To">Where the other end is.</param>
/// <param name="LevelDbm">The mean level; null where nothing was heard.</param>
/// <param name="IsTest">Whether the publisher set it apart to be predicted from the others.</param>
internal sealed record MeasuredLink(string Transmitter, Position From, Position To, double? LevelDbm, bool IsTest = false)
{
    /// <summary>The level of a link that was heard, dBm.</summary>
    public double HeardDbm => LevelDbm ?? throw new InvalidOperationException("nothing was heard on this link");
}

/// <summary>What was measured in one building, and the building as a plan.</summary>
internal sealed record MeasuredBuilding
{
    /// <summary>What it is, in a few words.</summary>
    public required string Name { get; init; }

    /// <summary>What was done, sentence by sentence.</summary>
    public required string What { get; init; }

    /// <summary>Who published it, under which title, where.</summary>
    public required string Citation { get; init; }

    /// <summary>Under what licence.</summary>
    public required string Licence { get; init; }

    /// <summary>Standard and carriers.</summary>
    public required string Radio { get; init; }

    /// <summary>The carrier that losses are computed at.</summary>
    public required Frequency Carrier { get; init; }

    /// <summary>What the plan assumes that the publisher does not say; empty when nothing.</summary>
    public string Assumed { get; init; } = "";

    /// <summary>What every transmitter sends with, dBm; null where nobody says.</summary>
    public double? SentDbm { get; init; }

    /// <summary>The building.</summary>
    public required FloorPlan Plan { get; init; }

    /// <summary>The links, heard or not.</summary>
    public required ImmutableArray<MeasuredLink> Links { get; init; }

    /// <summary>The links with a level.</summary>
    public ImmutableArray<MeasuredLink> Heard => [.. Links.Where(link => link.LevelDbm is not null)];

    /// <summary>Whether it has walls that a path could meet.</summary>
    public bool HasWalls => Plan.Storeys.Any(storey => !storey.Walls.IsEmpty);

    /// <summary>A place on its one storey.</summary>
    public static Position At(double xMetres, double yMetres, double heightMetres) =>
        new(PlanPoint.FromMetres(xMetres, yMetres), Lattice.FromMetres(heightMetres));

    /// <summary>A plan of one storey with walls as lines and no rooms.</summary>
    public static FloorPlan WallsOnly(double ceilingMetres, IEnumerable<Wall> walls) =>
        new([new() { Name = new("ground"), ElevationMetres = 0, CeilingMetres = ceilingMetres, Walls = [.. walls] }]);
}
