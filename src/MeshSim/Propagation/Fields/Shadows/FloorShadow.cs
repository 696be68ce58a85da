using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// The shadow of one floor structure. Every path between two heights meets it at the same share of its length, so a row of the
/// grid is the enlarged image of one straight scan through rooms and stairwells.
/// </summary>
internal sealed class FloorShadow(FloorCrossings floor, GridFrame frame)
{
    // Rows whose scan comes nearer than this to a corner or a crossing of edges are asked point by point, lattice steps.
    private const double SpareSteps = 1e-3;

    // Column ends nearer than this to a grid point are asked exactly; rounding stays far below unless the image is enormous.
    private const double SpareColumns = 1e-6, LargestEnlargement = 1e4;

    private readonly FloorSlabs slabs = new(floor);

    /// <summary>Index of what it is built of.</summary>
    public int Construction => floor.Construction;

    /// <summary>Whether paths from a height to the grid meet it.</summary>
    public bool IsMetFrom(int z) => floor.LiesBetween(Math.Min(z, frame.Z), Math.Max(z, frame.Z));

    /// <summary>The share of a path from the transmitter to any point of the grid that lies before the floor.</summary>
    public double ShareFrom(Position transmitter) => floor.MetBy(transmitter, new(frame.At(0, 0), frame.Z)).Share;

    /// <summary>
    /// Whether a row has the runs of a row before it, found in a slab: walls of rooms are mostly upright on the plan, and then all
    /// scans of the slab begin and end at the same columns.
    /// </summary>
    /// <param name="transmitter">The transmitter.</param>
    /// <param name="share">From <see cref="ShareFrom"/>.</param>
    /// <param name="row">The row.</param>
    /// <param name="slab">The slab of the row before.</param>
    public bool IsAsBefore(Position transmitter, double share, int row, int slab)
    {
        if (!slabs.IsUpright(slab)) return false;
        double y = ScanY(transmitter, share, row);
        return slabs.SlabAt(y, slab) == slab && !IsDoubtful(share, slab, y);
    }

    /// <summary>Adds the runs of columns of a row that lie behind it.</summary>
    /// <param name="transmitter">The transmitter.</param>
    /// <param name="share">From <see cref="ShareFrom"/>.</param>
    /// <param name="row">The row.</param>
    /// <param name="slab">A slab near that of the row; becomes it.</param>
    /// <param name="found">Added to.</param>
    /// <returns>Whether the runs are those of the slab, and not of this row alone.</returns>
    public bool AddRuns(Position transmitter, double share, int row, ref int slab, List<(int First, int Last)> found)
    {
        double y = ScanY(transmitter, share, row);
        slab = slabs.SlabAt(y, slab);
        if (IsDoubtful(share, slab, y))
        {
            AddPointByPoint(transmitter, row, found);
            return false;
        }

        int next = 0;
        foreach ((FloorEdge left, FloorEdge right) in slabs.RunsOf(slab))
        {
            int first = left.IsFar ? 0 : Math.Max(next, FirstColumn(transmitter, row, Image(left), isSolidBefore: false));
            int last = right.IsFar ? frame.Columns - 1 : FirstColumn(transmitter, row, Image(right), isSolidBefore: true) - 1;
            if (first > last) continue;
            found.Add((first, last));
            next = last + 1;
        }

        return true;

        double Image(FloorEdge edge) => frame.ColumnOf(transmitter.Plan.X + ((edge.XAt(y) - transmitter.Plan.X) / share));
    }

    private double ScanY(Position transmitter, double share, int row) =>
        transmitter.Plan.Y + (share * ((double)frame.At(0, row).Y - transmitter.Plan.Y));

    private bool IsDoubtful(double share, int slab, double y) => share * LargestEnlargement < 1 || slabs.StepsToBorder(slab, y) < SpareSteps;

    // The first column on the right side of an edge; a point on the edge goes where the exact question puts it.
    private int FirstColumn(Position transmitter, int row, double place, bool isSolidBefore)
    {
        if (!(place > -0.5)) return 0;
        if (place > frame.Columns - 0.5) return frame.Columns;
        double nearest = Math.Round(place);
        if (Math.Abs(place - nearest) > SpareColumns) return (int)Math.Ceiling(place);
        return IsSolid(transmitter, (int)nearest, row) == isSolidBefore ? (int)nearest + 1 : (int)nearest;
    }

    private bool IsSolid(Position transmitter, int column, int row) =>
        floor.IsSolidAt(floor.MetBy(transmitter, new(frame.At(column, row), frame.Z)));

    private void AddPointByPoint(Position transmitter, int row, List<(int First, int Last)> found)
    {
        int first = -1;
        for (int column = 0; column <= frame.Columns; column++)
        {
            bool isSolid = column < frame.Columns && IsSolid(transmitter, column, row);
            if (isSolid && first < 0) first = column;
            if (isSolid || first < 0) continue;
            found.Add((first, column - 1));
            first = -1;
        }
    }
}
