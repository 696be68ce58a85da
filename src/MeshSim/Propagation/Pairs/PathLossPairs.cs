using System.Numerics;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;

namespace MeshSim.Propagation.Pairs;

/// <summary>What a path costs in all, given what it crosses.</summary>
internal delegate double TotalOfCrossings(Position from, Position to, LossSum sum);

/// <summary>
/// The path loss of every pair of places. For one end after the other the walls are sorted by direction; each other end then
/// looks only at the walls of its own direction, eight at a time in single precision with a certain error bound. What the bound
/// does not settle, and every wall whose loss depends on more than being crossed, goes to the tracer's whole numbers. Losses are
/// added in the tracer's order, so the totals are the tracer's to the last bit.
/// </summary>
internal sealed class PathLossPairs
{
    private readonly CrossingTracer tracer;
    private readonly LossCurve[] curves;
    private readonly TotalOfCrossings totalDb;
    private readonly StackTable[] storeys;

    public PathLossPairs(CrossingTracer tracer, LossCurve[] curves, TotalOfCrossings totalDb)
    {
        (this.tracer, this.curves, this.totalDb) = (tracer, curves, totalDb);
        storeys = [.. tracer.Walls.ToArray().Select(walls => new StackTable(walls, curves))];
    }

    public PairLosses Among(IReadOnlyList<Position> places, int maximumThreads, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(places);

        Position[] all = [.. places];
        var losses = new PairLosses(all.Length);
        var options = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = maximumThreads };
        Parallel.For(
            0,
            Math.Max(0, all.Length - 1),
            options,
            () => new Workspace(storeys, all.Length),
            (from, _, workspace) =>
            {
                workspace.Sums.AsSpan().Fill(new LossSum(curves));
                SumFrom(all, from, workspace);
                Span<double> row = losses.After(from);
                for (int i = 0; i < row.Length; i++)
                {
                    ref LossSum sum = ref workspace.Sums[from + 1 + i];
                    tracer.VisitOthers(new TracedPath(all[from], all[from + 1 + i]), ref sum);
                    row[i] = totalDb(all[from], all[from + 1 + i], sum);
                }

                return workspace;
            },
            static _ => { });
        return losses;
    }

    private void SumFrom(Position[] places, int from, Workspace workspace)
    {
        for (int storey = 0; storey < storeys.Length; storey++)
        {
            StackTable stacks = storeys[storey];
            if (stacks.Count == 0) continue;

            DirectionBins bins = workspace.Bins[storey];
            bins.SortEnds(places, from);
            bins.SortStacks(places[from].Plan);
            int layer = stacks.LayerAt(places[from].Z);
            for (int bin = 0; bin < bins.Count; bin++)
            {
                ReadOnlySpan<int> ends = bins.EndsIn(bin);
                if (ends.IsEmpty) continue;
                workspace.Kernel.Load(stacks, bins, bin, layer);
                foreach (int to in ends)
                    SumPath(stacks, new TracedPath(places[from], places[to]), layer, workspace.Kernel, ref workspace.Sums[to]);
            }
        }
    }

    private static void SumPath(StackTable stacks, in TracedPath path, int layer, StackKernel kernel, ref LossSum sum)
    {
        if (stacks.Walls.IsClearBetween(path.LowZ, path.HighZ)) return;

        // Between two heights in one layer every point of the path is in it, and a crossed stack costs what it costs there.
        bool isLevel = layer >= 0 && stacks.LayerAt(path.To.Z) == layer;
        PathFilter filter = kernel.FilterOf(path);
        if (isLevel && kernel.IsKnown && kernel.TryAddKnown(filter, ref sum.OthersDb)) return;

        for (int block = 0; block < kernel.Length; block += StackKernel.Lanes)
        {
            (uint crossed, uint doubtful) = kernel.Test(block, filter);
            for (uint left = crossed | doubtful; left != 0; left &= left - 1)
            {
                int at = block + BitOperations.TrailingZeroCount(left);
                bool isSure = (doubtful & left & (~left + 1)) == 0;
                double lossDb = kernel.LossesDb[at];
                if (isLevel && isSure && !double.IsNaN(lossDb)) sum.OthersDb += lossDb;
                else stacks.Visit(path, kernel.Stacks[at], ref sum);
            }
        }
    }

    private sealed class Workspace(StackTable[] storeys, int ends)
    {
        public readonly LossSum[] Sums = new LossSum[ends];
        public readonly DirectionBins[] Bins = [.. storeys.Select(stacks => new DirectionBins(stacks, ends))];
        public readonly StackKernel Kernel = new(storeys.Max(stacks => stacks.Count));
    }
}
