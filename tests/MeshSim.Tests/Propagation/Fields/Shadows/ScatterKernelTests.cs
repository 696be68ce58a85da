using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;
using MeshSim.Propagation.Fields.Shadows;

namespace MeshSim.Tests.Propagation.Fields.Shadows;

public sealed class ScatterKernelTests
{
    private const int Columns = 48, Rows = 20, Step = 500, Far = 3 * Columns * Step;

    private static readonly GridFrame Frame = new(new FieldGrid(new StoreyName("ground"), new(0, 0), Step, Columns, Rows, 0));

    // Multiples of half a step beside any place at all: many borders go exactly through grid points.
    private static readonly Gen<int> Coordinates = Gen.OneOf(Gen.Int[-Far, Far], Gen.Int[-2 * Columns, 4 * Columns].Select(half => half * (Step / 2)));

    private static readonly Gen<Border[]> Borders = Gen.Select(
        Coordinates, Coordinates, Gen.Int[0, Rows - 1], Gen.Int[0, Rows - 1], Gen.Int[-9, 9].Select(half => 2 * half),
        (x, y, a, b, jump) => new Border(new(x, y), Math.Min(a, b), Math.Max(a, b), jump)).Array[1, 40];

    private sealed record Border(PlanPoint Vertex, int First, int Last, int Jump);

    [Fact]
    public void Every_border_changes_each_row_where_whole_numbers_say() => Gen.Select(Coordinates, Coordinates, Borders).Sample((x, y, borders) =>
    {
        var shadows = new ShadowLines(Frame, 1);
        shadows.Start(new(new(x, y), 0));
        int[,] expected = new int[Rows, Columns];
        foreach (Border border in borders.Where(border => border.Vertex.Y != y))
        {
            ShadowLine ray = shadows.RayThrough(border.Vertex, border.First, border.Last);
            shadows.Add(ShadowLines.Clip(ray, Columns), 0, border.Jump, new(new(x, y), border.Vertex, Scale.One, border.Jump / 2));
            AddExact(expected, new(x, y), border);
        }

        shadows.Finish();
        Compare(shadows, expected);
    });

    // Right of the ray the jump, on it half of it.
    private static void AddExact(int[,] sums, PlanPoint transmitter, Border border)
    {
        int rising = Math.Sign((long)border.Vertex.Y - transmitter.Y);
        for (int row = border.First; row <= border.Last; row++)
            for (int column = 0; column < Columns; column++)
                sums[row, column] += border.Jump / 2 * (1 - (rising * Math.Sign(Predicates.SignedArea(transmitter, border.Vertex, Frame.At(column, row)))));
    }

    private static void Compare(ShadowLines shadows, int[,] expected)
    {
        var channel = new StripChannel(Columns);
        for (int strip = 0; strip < ShadowLines.StripCount(Rows); strip++)
        {
            foreach (int line in shadows.LinesOf(strip)) channel.Activate(shadows.Lines[line]);
            channel.Scatter(shadows, strip * ShadowLines.StripRows);
            for (int lane = 0; lane < ShadowLines.StripRows && (strip * ShadowLines.StripRows) + lane < Rows; lane++)
            {
                int row = (strip * ShadowLines.StripRows) + lane, sum = shadows.Base(0, row);
                for (int column = 0; column < Columns; column++)
                {
                    sum += channel.Cells[(column * ShadowLines.StripRows) + lane];
                    sum.Should().Be(expected[row, column], "row {0} column {1}", row, column);
                }
            }

            channel.Cells.Clear();
        }
    }
}
