using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>The points of a map that lie in one room.</summary>
internal sealed class RoomGrid
{
    /// <summary>Where a device can hang: nearer to a wall's centre line it would be in the wall.</summary>
    private const double ClearOfWallsMetres = 0.15;

    private readonly Storey storey;
    private readonly ImmutableArray<(int Column, int Row)> inside;

    /// <summary>Lays the grid on whole multiples of the step, as a map does; a room between its points gets a finer one.</summary>
    public RoomGrid(FloorPlan plan, Storey storey, Room room, double stepMetres, double heightMetres)
    {
        this.storey = storey;
        int z = Lattice.FromMetres(storey.ElevationMetres + heightMetres);
        int step = Math.Max(1, Lattice.FromMetres(stepMetres));
        do
        {
            Grid = Over(storey.Name, room.Outline, step, z);
            inside = [.. from row in Enumerable.Range(0, Grid.Rows)
                          from column in Enumerable.Range(0, Grid.Columns)
                          where room.Outline.Contains(Grid.At(column, row).Plan)
                          select (column, row)];
            step = Math.Max(1, step / 2);
        }
        while (inside.IsEmpty);
    }

    /// <summary>The grid, around the room.</summary>
    public FieldGrid Grid { get; }

    /// <summary>How the room stands with a margin at each point of the grid.</summary>
    public RoomStanding Judge(Field margin, Decibels designMargin)
    {
        int dark = inside.Count(point => margin[point.Column, point.Row] < designMargin.Value);
        (int Column, int Row)[] clear = [.. inside.Where(point => storey.DistanceMetresToNearestWall(PlaceOf(point)) >= ClearOfWallsMetres)];
        (int Column, int Row) worst = (clear.Length > 0 ? clear : [.. inside]).MinBy(point => margin[point.Column, point.Row]);
        return new(dark / (double)inside.Length, new(margin[worst.Column, worst.Row]), PlaceOf(worst));
    }

    /// <summary>The places in the room.</summary>
    public IEnumerable<PlanPoint> Places => inside.Select(PlaceOf);

    /// <summary>The margins in the room, in order of place.</summary>
    public IEnumerable<float> ValuesIn(Field field) => inside.Select(point => field[point.Column, point.Row]);

    private PlanPoint PlaceOf((int Column, int Row) point) => Grid.At(point.Column, point.Row).Plan;

    private static FieldGrid Over(StoreyName storey, Polygon outline, int step, int z)
    {
        int left = FloorTo(outline.Corners.Min(p => p.X), step), right = FloorTo(outline.Corners.Max(p => p.X), step);
        int low = FloorTo(outline.Corners.Min(p => p.Y), step), high = FloorTo(outline.Corners.Max(p => p.Y), step);
        return new(storey, new(left, low), step, ((right - left) / step) + 1, ((high - low) / step) + 1, z);
    }

    private static int FloorTo(int value, int step) => (int)Math.Floor(value / (double)step) * step;
}
