using MeshSim.Mesh.Reliability;

namespace MeshSim.Placement.Robustness;

/// <summary>How a recommendation is tried against chance.</summary>
public sealed record RobustnessOptions
{
    /// <summary>How often is drawn, within <see cref="ConnectionDraws.Draws"/>; 0 leaves chance out.</summary>
    public int Draws { get; init; } = 10_000;

    /// <summary>Chooses the random numbers.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Correlation of the shadowing of two links that share an end.</summary>
    public double Correlation { get; init; } = LinkShadowing.DefaultCorrelation;
}
