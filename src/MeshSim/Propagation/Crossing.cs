namespace MeshSim.Propagation;

/// <summary>One meeting of a path with a wall, a closed opening, a floor structure or an object.</summary>
public readonly record struct Crossing
{
    /// <summary>What is met: wall, door, window, floor or object.</summary>
    public required LossKind Kind { get; init; }

    /// <summary>Index of what is met, for <see cref="CrossingTracer.NameOf"/>.</summary>
    public required int Element { get; init; }

    /// <summary>Index into <see cref="CrossingTracer.Constructions"/>.</summary>
    public required int Construction { get; init; }

    /// <summary>
    /// Cosine of the true angle between the path and the surface normal, 0 to 1, no cap. The normal of a wall is horizontal,
    /// that of a floor vertical; an object counts as met head-on, 1.
    /// </summary>
    public required double Cosine { get; init; }

    /// <summary>
    /// By what its loss is multiplied: 1, or for a wall ½ where the path passes exactly through an end or starts exactly on
    /// the wall, ¼ where both.
    /// </summary>
    public required double Weight { get; init; }

    /// <summary>The share of the path that lies before it, 0 to 1.</summary>
    public required double Share { get; init; }
}

/// <summary>Takes the crossings of a path one by one, in no particular but always the same order, without allocation.</summary>
public interface ICrossingVisitor
{
    /// <summary>Takes one crossing.</summary>
    void Take(in Crossing crossing);
}
