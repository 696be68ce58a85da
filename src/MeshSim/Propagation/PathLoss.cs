using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Pairs;
using MeshSim.Quantities;

namespace MeshSim.Propagation;

/// <summary>What one item of a path loss stands for.</summary>
public enum LossKind
{
    /// <summary>Distance alone.</summary>
    Distance,

    /// <summary>A wall.</summary>
    Wall,

    /// <summary>A closed door.</summary>
    Door,

    /// <summary>A window.</summary>
    Window,

    /// <summary>A floor structure.</summary>
    Floor,

    /// <summary>An object.</summary>
    Object,

    /// <summary>What the way round saves: the one item that is never positive.</summary>
    Detour,

    /// <summary>Where and in what a device is hidden.</summary>
    Mounting,
}

/// <summary>One line of an itemised path loss.</summary>
public sealed record LossItem
{
    /// <summary>What it stands for.</summary>
    public required LossKind Kind { get; init; }

    /// <summary>Which one, in the words of the home folder.</summary>
    public required string Name { get; init; }

    /// <summary>What it is built of, where that decides its loss.</summary>
    public ConstructionName? Construction { get; init; }

    /// <summary>Angle between the path and the surface normal, degrees, before any cap.</summary>
    public double? AngleDegrees { get; init; }

    /// <summary>What it costs.</summary>
    public required Decibels Loss { get; init; }

    /// <summary>Whether a material was used outside the frequencies at which it was measured.</summary>
    public bool IsExtrapolated { get; init; }

    /// <summary>
    /// By how much the total of the path grows per decibel that <see cref="Construction"/>, <see cref="Mounting"/> or the way round
    /// costs more; 0 where none of them decides the loss.
    /// </summary>
    public double Sensitivity { get; init; }

    /// <summary>Name of the mounting, of an item of that kind.</summary>
    public string? Mounting { get; init; }
}

/// <summary>The loss along one path, item by item. The items sum to the total.</summary>
/// <param name="Model">The model that made it.</param>
/// <param name="DistanceMetres">Straight-line distance, m.</param>
/// <param name="Items">Distance first, then what the path goes through, in order from its start, then what a way round saves.</param>
public sealed record PathLoss(string Model, double DistanceMetres, ImmutableArray<LossItem> Items)
{
    /// <summary>The sum of the items.</summary>
    public Decibels Total => new(Items.Sum(item => item.Loss.Value));
}

/// <summary>A path-loss model made up for one building and one frequency. It answers one question: what a path costs.</summary>
public interface IPathLossModel
{
    /// <summary>The loss between two places, item by item. The same in both directions.</summary>
    PathLoss Between(Position from, Position to);

    /// <summary>The total of <see cref="Between"/> without the items: what a map asks a million times.</summary>
    Decibels TotalBetween(Position from, Position to) => Between(from, to).Total;

    /// <summary><see cref="TotalBetween"/> for every pair of places, to the last bit, from the earlier to the later.</summary>
    /// <param name="places">The places.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <param name="maximumThreads">Most threads to use; −1 leaves it to the machine. The values do not depend on it.</param>
    /// <exception cref="OperationCanceledException">The work was ended early.</exception>
    PairLosses TotalsAmong(IReadOnlyList<Position> places, CancellationToken cancellation, int maximumThreads = -1)
    {
        ArgumentNullException.ThrowIfNull(places);

        var losses = new PairLosses(places.Count);
        var options = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = maximumThreads };
        Parallel.For(0, places.Count, options, from =>
        {
            for (int to = from + 1; to < places.Count; to++) losses.Set(from, to, TotalBetween(places[from], places[to]).Value);
        });
        return losses;
    }
}
