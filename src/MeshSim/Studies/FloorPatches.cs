using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>Collects the points in rooms by who is heard there.</summary>
internal sealed class FloorPatches
{
    private readonly int nodes;
    private readonly Dictionary<string, int> points = new(StringComparer.Ordinal);

    /// <summary>Nothing yet.</summary>
    /// <param name="nodes">Number of nodes that could be heard.</param>
    public FloorPatches(int nodes) => this.nodes = nodes;

    /// <summary>Adds the points of a storey.</summary>
    /// <param name="storey">The storey.</param>
    /// <param name="grid">Its grid.</param>
    /// <param name="margins">Per node the margins over the grid; null for one that passes nothing on.</param>
    /// <param name="designMargin">The margin that counts.</param>
    public void Add(Storey storey, FieldGrid grid, Field?[] margins, Decibels designMargin)
    {
        for (int row = 0; row < grid.Rows; row++)
        {
            for (int column = 0; column < grid.Columns; column++)
            {
                if (!storey.Rooms.Any(room => room.Outline.Contains(grid.At(column, row).Plan))) continue;
                string heard = string.Create(nodes, (column, row), (text, at) =>
                {
                    for (int node = 0; node < text.Length; node++) text[node] = margins[node]?[at.column, at.row] >= designMargin.Value ? '1' : '0';
                });
                points[heard] = points.GetValueOrDefault(heard) + 1;
            }
        }
    }

    /// <summary>The patches, in order of who is heard.</summary>
    public ImmutableArray<FloorPatch> All() =>
        [.. points.OrderBy(patch => patch.Key, StringComparer.Ordinal).Select(patch => new FloorPatch([.. patch.Key.Select(mark => mark == '1')], patch.Value))];
}
