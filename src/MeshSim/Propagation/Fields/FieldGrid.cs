using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Quantities;

namespace MeshSim.Propagation.Fields;

/// <summary>A regular grid of receiver points on one storey, all at one height, on the <see cref="Lattice"/>.</summary>
/// <param name="Storey">The storey.</param>
/// <param name="Origin">The first point: lower left.</param>
/// <param name="Step">Lattice steps between neighbouring points.</param>
/// <param name="Columns">Points along x.</param>
/// <param name="Rows">Points along y, upwards.</param>
/// <param name="Z">Lattice height of all points above the lowest floor.</param>
public sealed record FieldGrid(StoreyName Storey, PlanPoint Origin, int Step, int Columns, int Rows, int Z)
{
    /// <summary>Accepted distances between neighbouring points.</summary>
    public static readonly ValidRange StepMetres = new(Lattice.ToMetres(1), 100, "m");

    /// <summary>Number of points.</summary>
    /// <exception cref="OverflowException">More than an array can hold.</exception>
    public int Count => checked(Columns * Rows);

    /// <summary>The place of a point.</summary>
    public Position At(int column, int row) => new(new(Origin.X + (column * Step), Origin.Y + (row * Step)), Z);

    /// <summary>The grid over a storey's walls and rooms with its points on whole multiples of the step, one step of rim around.</summary>
    /// <param name="plan">The building.</param>
    /// <param name="storey">A storey of it.</param>
    /// <param name="stepMetres">Distance between neighbouring points, m, within <see cref="StepMetres"/>.</param>
    /// <param name="heightMetres">Height above the storey's floor, m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is outside its range or not a number.</exception>
    /// <exception cref="ArgumentException">The storey has neither rooms nor walls.</exception>
    public static FieldGrid Over(FloorPlan plan, StoreyName storey, double stepMetres, double heightMetres)
    {
        Storey on = plan.Storey(storey);
        int step = Lattice.FromMetres(StepMetres.Check(stepMetres));
        var points = on.Rooms.SelectMany(room => room.Outline.Corners).Concat(on.Walls.SelectMany(wall => new[] { wall.Start, wall.End })).ToList();
        if (points.Count == 0) throw new ArgumentException($"storey \"{storey}\" has neither rooms nor walls", nameof(storey));

        int left = FloorTo(points.Min(p => p.X), step) - step, right = -FloorTo(-points.Max(p => p.X), step) + step;
        int low = FloorTo(points.Min(p => p.Y), step) - step, high = -FloorTo(-points.Max(p => p.Y), step) + step;
        int z = Lattice.FromMetres(on.ElevationMetres + heightMetres);
        return new(storey, new(left, low), step, ((right - left) / step) + 1, ((high - low) / step) + 1, z);
    }

    private static int FloorTo(int value, int step) => (int)Math.Floor(value / (double)step) * step;
}

/// <summary>A value at every point of a grid, in dB or dBm as its producer says.</summary>
/// <param name="Grid">Where.</param>
/// <param name="Values">Row by row, lowest row first, each from left to right; not-a-number where there is no value.</param>
public sealed record Field(FieldGrid Grid, float[] Values)
{
    /// <summary>The value at one point.</summary>
    public float this[int column, int row] => Values[(row * Grid.Columns) + column];
}
