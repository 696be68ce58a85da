using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Mesh;

/// <summary>A path-loss model that remembers its totals: for those who ask for the same few paths again and again.</summary>
internal sealed class KnownLosses(IPathLossModel model) : IPathLossModel
{
    private readonly Dictionary<(Position, Position), Decibels> totals = [];

    /// <inheritdoc/>
    public PathLoss Between(Position from, Position to) => model.Between(from, to);

    /// <inheritdoc/>
    public Decibels TotalBetween(Position from, Position to) =>
        totals.TryGetValue((from, to), out Decibels known) ? known : totals[(from, to)] = model.TotalBetween(from, to);
}
