using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;

namespace MeshSim.Drawing.Margins;

/// <summary>A line of equal margin.</summary>
/// <param name="LevelDb">The margin, dB.</param>
/// <param name="Points">Its points in order.</param>
/// <param name="IsClosed">Whether the last point joins the first.</param>
internal sealed record Contour(double LevelDb, ImmutableArray<PlanPoint> Points, bool IsClosed);

/// <summary>
/// Contour lines of a field by marching squares: in each cell between four points the line enters and leaves where the field,
/// straight between neighbours, has the level. At a saddle the mean of the four decides. Cells with a missing value are skipped.
/// </summary>
internal sealed class ContourTracer
{
    // For the four corners anticlockwise from the lower left (1, 2, 4, 8 when at or above the level): which sides the line joins,
    // sides anticlockwise from the lower one. The two saddles, 5 and 10, are handled apart.
    private static readonly (int From, int To)[] Joins =
        [(-1, -1), (3, 0), (0, 1), (3, 1), (1, 2), (-1, -1), (0, 2), (3, 2), (2, 3), (2, 0), (-1, -1), (2, 1), (1, 3), (1, 0), (0, 3), (-1, -1)];

    private readonly Field field;
    private readonly double level;
    private readonly Dictionary<long, long> next = [], previous = [];
    private readonly List<long> starts = [];

    private ContourTracer(Field field, double levelDb) => (this.field, level) = (field, levelDb);

    /// <summary>All lines of one level, in the order in which a scan from below meets them; higher values on their right.</summary>
    public static ImmutableArray<Contour> Trace(Field field, double levelDb)
    {
        var tracer = new ContourTracer(field, levelDb);
        for (int row = 0; row + 1 < field.Grid.Rows; row++)
            for (int column = 0; column + 1 < field.Grid.Columns; column++)
                tracer.Cross(column, row);
        return [.. tracer.Lines()];
    }

    private void Cross(int column, int row)
    {
        float a = field[column, row], b = field[column + 1, row], c = field[column + 1, row + 1], d = field[column, row + 1];
        if (float.IsNaN(a + b + c + d)) return;

        int corners = (a >= level ? 1 : 0) | (b >= level ? 2 : 0) | (c >= level ? 4 : 0) | (d >= level ? 8 : 0);
        bool isHighSaddle = (a + b + c + d) / 4 >= level;
        (int From, int To)[] joins = corners switch
        {
            0 or 15 => [],
            5 => isHighSaddle ? [(1, 0), (3, 2)] : [(3, 0), (1, 2)],
            10 => isHighSaddle ? [(0, 3), (2, 1)] : [(0, 1), (2, 3)],
            _ => [Joins[corners]],
        };
        foreach ((int from, int to) in joins)
        {
            long start = SideOf(column, row, from), end = SideOf(column, row, to);
            next.Add(start, end);
            previous.Add(end, start);
            starts.Add(start);
        }
    }

    /// <summary>The number of a cell's side, shared with the neighbour: even for level sides, odd for upright ones.</summary>
    private long SideOf(int column, int row, int side) => side switch
    {
        0 => 2L * ((row * (long)field.Grid.Columns) + column),
        1 => (2L * ((row * (long)field.Grid.Columns) + column + 1)) + 1,
        2 => 2L * (((row + 1) * (long)field.Grid.Columns) + column),
        _ => (2L * ((row * (long)field.Grid.Columns) + column)) + 1,
    };

    private IEnumerable<Contour> Lines()
    {
        HashSet<long> done = [];
        foreach (long start in starts)
        {
            if (done.Contains(start)) continue;

            long first = start;
            while (previous.TryGetValue(first, out long before) && before != start) first = before;
            bool isClosed = previous.ContainsKey(first);
            List<PlanPoint> points = [PlaceOf(first)];
            for (long at = first; done.Add(at) && this.next.TryGetValue(at, out long next) && next != first; at = next)
                points.Add(PlaceOf(next));
            yield return new(level, [.. points], isClosed);
        }
    }

    private PlanPoint PlaceOf(long side)
    {
        FieldGrid grid = field.Grid;
        int column = (int)(side / 2 % grid.Columns), row = (int)(side / 2 / grid.Columns);
        bool isUpright = side % 2 == 1;
        float from = field[column, row], to = isUpright ? field[column, row + 1] : field[column + 1, row];
        int along = (int)Math.Round((level - from) / (to - from) * grid.Step);
        PlanPoint corner = grid.At(column, row).Plan;
        return isUpright ? new(corner.X, corner.Y + along) : new(corner.X + along, corner.Y);
    }
}
