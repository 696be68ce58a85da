using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation.Fields;
using MeshSim.Propagation.Pairs;
using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;

namespace MeshSim.Propagation;

/// <summary>
/// The default model when it has a way round, and a cautious one without: free space to 1 m, a power law of distance beyond, every wall, closed opening and object by its planning
/// loss at its own angle, and the floor term of COST 231 with the planning losses of the floors met. With a way round, the sum
/// of all but the floors saturates as <see cref="Detour"/> says.
/// </summary>
public sealed class LogDistance : IPathLossModel
{
    /// <summary>Accepted path-loss exponents: from a guiding corridor to the densest building published.</summary>
    public static readonly ValidRange Exponent = new(1, 6, "as path-loss exponent");

    private readonly FloorPlan plan;
    private readonly CrossingTracer tracer;
    private readonly LossCurve[] curves;
    private readonly double lossAtOneMetreDb, decibelsPerDecade;
    private readonly double? detourDb;
    private readonly WayRound? wayRound;
    private readonly Lazy<PathLossPairs> pairs;

    /// <summary>Makes up the model.</summary>
    /// <param name="plan">The building.</param>
    /// <param name="constructions">All constructions that the building names.</param>
    /// <param name="frequency">The carrier.</param>
    /// <param name="exponent">Path-loss exponent n, within <see cref="Exponent"/>.</param>
    /// <param name="detourDb">What the way round costs, dB, within <see cref="Detour.ExtraDb"/>; null where there is none.</param>
    /// <param name="corrections">By how much constructions cost more than computed; null where nothing was measured.</param>
    /// <exception cref="ArgumentException">A construction is missing, or frequency, exponent or way round is out of range.</exception>
    public LogDistance(
        FloorPlan plan,
        ImmutableDictionary<ConstructionName, Construction> constructions,
        Frequency frequency,
        double exponent,
        double? detourDb = null,
        IReadOnlyDictionary<ConstructionName, Decibels>? corrections = null)
    {
        decibelsPerDecade = 10 * Exponent.Check(exponent);
        this.detourDb = detourDb is { } extraDb ? Detour.ExtraDb.Check(extraDb) : null;
        wayRound = detourDb is { } roundDb ? new(roundDb) : null;
        lossAtOneMetreDb = FreeSpace.LossDb(1, frequency.Megahertz);
        this.plan = plan;
        tracer = new(plan);
        curves = [.. PathLossModels.ConstructionsOf(tracer, constructions).Select(construction => CurveOf(construction))];
        pairs = new(() => new(tracer, curves, TotalDb));

        LossCurve CurveOf(Construction construction) =>
            LossCurves.Of(construction, frequency).Corrected(corrections?.GetValueOrDefault(construction.Name) ?? Decibels.Zero);
    }

    /// <inheritdoc/>
    public PathLoss Between(Position from, Position to)
    {
        var path = new CrossedPath(tracer, from, to);
        path.AddDistance(DistanceLossDb(path.DistanceMetres), isExtrapolated: false);
        double floorShare = Cost231.FloorShare(path.Floors), othersDb = 0;
        foreach (Crossing crossing in path.Crossings)
            if (crossing.Kind != LossKind.Floor) othersDb += crossing.Weight * curves[crossing.Construction].At(crossing.Cosine).Value;
        double slope = detourDb is { } extraDb ? Detour.Slope(othersDb, extraDb) : 1;
        foreach (Crossing crossing in path.Crossings)
        {
            LossCurve curve = curves[crossing.Construction];
            bool isFloor = crossing.Kind == LossKind.Floor;
            double lossDb = crossing.Weight * curve.At(crossing.Cosine).Value;
            path.Add(crossing, isFloor ? floorShare * lossDb : lossDb, curve.IsExtrapolated, crossing.Weight * (isFloor ? floorShare : slope));
        }

        if (detourDb is null) return path.ToPathLoss(ModelNames.LogDistance);
        if (othersDb > 0) path.AddDetour(WallsDb(othersDb) - othersDb, Detour.ExtraSlope(othersDb, detourDb.Value));
        return path.ToPathLoss(ModelNames.Detour);
    }

    /// <inheritdoc/>
    public Decibels TotalBetween(Position from, Position to)
    {
        var sum = new LossSum(curves);
        tracer.Visit(from, to, ref sum);
        return new(TotalDb(from, to, sum));
    }

    /// <inheritdoc/>
    public PairLosses TotalsAmong(IReadOnlyList<Position> places, CancellationToken cancellation, int maximumThreads = -1) =>
        pairs.Value.Among(places, maximumThreads, cancellation);

    /// <summary>Prepares the path loss of whole grids: what <see cref="TotalBetween"/> gives at every point, many times faster.</summary>
    /// <param name="grid">Where the receivers are.</param>
    public PathLossFields FieldsOver(FieldGrid grid) => new(
        plan,
        new FieldPhysics
        {
            LossAtOneMetreDb = lossAtOneMetreDb,
            DecibelsPerDecade = decibelsPerDecade,
            ShortestMetres = FreeSpace.DistanceMetres.Min,
            CurveOf = name => curves[tracer.Constructions.IndexOf(name)],
            FloorShare = Cost231.FloorShare,
            DetourDb = detourDb,
        },
        grid);

    private double TotalDb(Position from, Position to, LossSum sum) =>
        DistanceLossDb(from.DistanceMetresTo(to)) + WallsDb(sum.OthersDb) + (Cost231.FloorShare(sum.Floors) * sum.FloorsDb);

    private double WallsDb(double sumDb) => wayRound is { } round ? round.LossDb(sumDb) : sumDb;

    private double DistanceLossDb(double distanceMetres) =>
        lossAtOneMetreDb + (decibelsPerDecade * Math.Log10(Math.Max(distanceMetres, FreeSpace.DistanceMetres.Min)));
}
