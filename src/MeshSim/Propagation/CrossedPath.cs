using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation;

/// <summary>One path with what it meets, on its way to an itemised loss.</summary>
internal sealed class CrossedPath
{
    private readonly CrossingTracer tracer;
    private readonly ImmutableArray<LossItem>.Builder items;

    public CrossedPath(CrossingTracer tracer, Position from, Position to)
    {
        this.tracer = tracer;
        DistanceMetres = from.DistanceMetresTo(to);
        tracer.Trace(from, to, Crossings);
        Floors = Crossings.Count(crossing => crossing.Kind == LossKind.Floor);
        items = ImmutableArray.CreateBuilder<LossItem>(Crossings.Count + 2);
    }

    /// <summary>What is met, in order from the start.</summary>
    public List<Crossing> Crossings { get; } = [];

    /// <summary>How many floor structures are met.</summary>
    public int Floors { get; }

    /// <summary>Straight-line distance, m.</summary>
    public double DistanceMetres { get; }

    public void AddDistance(double lossDb, bool isExtrapolated) =>
        items.Add(new() { Kind = LossKind.Distance, Name = "distance", Loss = new(lossDb), IsExtrapolated = isExtrapolated });

    /// <summary>Adds what one crossing costs.</summary>
    /// <param name="crossing">What is met.</param>
    /// <param name="lossDb">What it costs, dB.</param>
    /// <param name="isExtrapolated">Whether a loss is used where nobody measured it.</param>
    /// <param name="sensitivity">By how much the total grows per decibel that its construction costs more.</param>
    public void Add(in Crossing crossing, double lossDb, bool isExtrapolated, double sensitivity) => items.Add(new()
    {
        Kind = crossing.Kind,
        Name = tracer.NameOf(crossing),
        Construction = tracer.Constructions[crossing.Construction],
        AngleDegrees = crossing.Kind == LossKind.Object ? null : Math.Acos(crossing.Cosine) * 180 / Math.PI,
        Loss = new(lossDb),
        IsExtrapolated = isExtrapolated,
        Sensitivity = sensitivity,
    });

    /// <summary>Adds what the way round saves.</summary>
    /// <param name="lossDb">What the way round takes off the sum of the walls, dB, as a negative loss.</param>
    /// <param name="sensitivity">By how much the total grows per decibel that the way round costs more.</param>
    public void AddDetour(double lossDb, double sensitivity) =>
        items.Add(new() { Kind = LossKind.Detour, Name = "way round", Loss = new(lossDb), Sensitivity = sensitivity });

    public PathLoss ToPathLoss(string model) => new(model, DistanceMetres, items.ToImmutable());
}
