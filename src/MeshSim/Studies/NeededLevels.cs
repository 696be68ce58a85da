using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>What a device in the open needs at every point of a grid to be planned with.</summary>
/// <param name="Grid">The grid.</param>
/// <param name="Levels">As many as it has points.</param>
internal sealed record NeededLevels(FieldGrid Grid, ImmutableArray<PowerLevel> Levels)
{
    /// <summary>The levels among a home's access points; null where none of them counts anywhere.</summary>
    public static NeededLevels? At(Surroundings surroundings, Home home, IPathLossModel model, FieldGrid grid, Decibels noiseRise = default)
    {
        if (!surroundings.Counts) return null;

        Func<Position, Field> lossFrom = LossesOver(model, grid);
        Field[] losses = [.. surroundings.Heard.Select(point => lossFrom(home.PositionOf(point)))];
        return new(
            grid,
            [.. Enumerable.Range(0, grid.Count).Select(i => surroundings.At([.. losses.Select(loss => new Decibels(loss.Values[i]))], noiseRise).PlanningLevel)]);
    }

    /// <summary>How to find the path loss from a place to every point of a grid.</summary>
    public static Func<Position, Field> LossesOver(IPathLossModel model, FieldGrid grid) => model is LogDistance walls
        ? walls.FieldsOver(grid).PathLoss
        : place => FieldTracer.PathLoss(model, place, grid, CancellationToken.None);
}
