using System.Collections.Immutable;
using System.Runtime.Intrinsics;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation.Fields;

namespace MeshSim.Benchmarks;

/// <summary>
/// The obvious fast way, as a yardstick: eight receivers at a time against every wall of their storey, in single precision,
/// whole walls, constant losses, no ties.
/// </summary>
internal sealed class WallBruteForceKernel
{
    private readonly FieldGrid grid;
    private readonly float[] ax, ay, bx, by, lossesDb;

    public WallBruteForceKernel(FloorPlan plan, ImmutableDictionary<ConstructionName, Construction> constructions, FieldGrid grid)
    {
        this.grid = grid;
        ImmutableArray<Wall> walls = plan.Storeys[0].Walls;
        ax = [.. walls.Select(wall => (float)wall.Start.XMetres)];
        ay = [.. walls.Select(wall => (float)wall.Start.YMetres)];
        bx = [.. walls.Select(wall => (float)wall.End.XMetres)];
        by = [.. walls.Select(wall => (float)wall.End.YMetres)];
        lossesDb = [.. walls.Select(wall => constructions[wall.Construction].Stated is [var stated] ? (float)stated.Loss.Value : 5)];
    }

    public void SumRow(Position transmitter, int row, Span<float> output)
    {
        float px = (float)transmitter.Plan.XMetres, py = (float)transmitter.Plan.YMetres;
        float y = (float)grid.At(0, row).Plan.YMetres, dy = y - py, step = (float)Lattice.ToMetres(grid.Step), x0 = (float)grid.Origin.XMetres;
        for (int column = 0; column + 8 <= grid.Columns; column += 8)
        {
            Vector256<float> x = Vector256.Create(x0 + (step * column)) + (Vector256<float>.Indices * step), dx = x - Vector256.Create(px);
            Vector256<float> squared = Vector256.Max((dx * dx) + Vector256.Create(dy * dy), Vector256.Create(0.01f));
            Vector256<float> sum = Vector256.Log2(squared) * 3.01f;
            for (int i = 0; i < ax.Length; i++)
            {
                float wx = bx[i] - ax[i], wy = by[i] - ay[i], sideOfFrom = (wx * (py - ay[i])) - (wy * (px - ax[i]));
                Vector256<float> sideOfTo = Vector256.Create(wx * (y - ay[i])) - ((x - Vector256.Create(ax[i])) * wy);
                Vector256<float> sideOfA = (dx * (ay[i] - py)) - Vector256.Create(dy * (ax[i] - px));
                Vector256<float> sideOfB = (dx * (by[i] - py)) - Vector256.Create(dy * (bx[i] - px));
                Vector256<float> isCrossed = Vector256.LessThan(sideOfA * sideOfB, Vector256<float>.Zero)
                    & Vector256.LessThan(sideOfTo * sideOfFrom, Vector256<float>.Zero);
                sum += isCrossed & Vector256.Create(lossesDb[i]);
            }

            sum.CopyTo(output[column..]);
        }
    }
}
