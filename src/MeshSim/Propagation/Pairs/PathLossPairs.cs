using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;

namespace MeshSim.Propagation.Pairs;

/// <summary>What a path costs in all, given what it crosses.</summary>
internal delegate double TotalOfCrossings(Position from, Position to, LossSum sum);

/// <summary>
/// The path loss of every pair of places. From one place after the other, from left to right on the plan, the places still to
/// come are sorted by direction into groups of eight, and each stack of wall panels is tested against the groups of its own
/// directions. What is more than a proper crossing at a known height goes to the tracer's questions. Losses are added in the
/// tracer's order, so the totals are the tracer's to the last bit.
/// </summary>
internal sealed class PathLossPairs
{
    // Places that share one list of the stacks on their right: the list is made so often, and chunks are so many.
    private const int LargestChunk = 32, FewestChunks = 64;

    private readonly CrossingTracer tracer;
    private readonly LossCurve[] curves;
    private readonly TotalOfCrossings totalDb;
    private readonly StackTable[] storeys;

    public PathLossPairs(CrossingTracer tracer, LossCurve[] curves, TotalOfCrossings totalDb)
    {
        (this.tracer, this.curves, this.totalDb) = (tracer, curves, totalDb);
        storeys = [.. tracer.Walls.ToArray().Select(walls => new StackTable(walls, curves)).Where(stacks => stacks.Count > 0)];
    }

    public PairLosses Among(IReadOnlyList<Position> places, int maximumThreads, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(places);

        var losses = new PairLosses(places.Count);
        int[] order = [.. Enumerable.Range(0, places.Count).OrderBy(i => places[i].Plan.X)];
        Position[] sorted = [.. order.Select(i => places[i])];
        int[][] layers = [.. storeys.Select(stacks => sorted.Select(place => stacks.LayerAt(place.Z)).ToArray())];
        int chunk = Math.Clamp(sorted.Length / FewestChunks, 1, LargestChunk);
        var options = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = maximumThreads };
        Parallel.For(
            0,
            (sorted.Length + chunk - 1) / chunk,
            options,
            () => new Workspace([.. storeys.Select((stacks, i) => new StoreySweep(stacks, curves, sorted, layers[i]))], new double[sorted.Length]),
            (index, _, workspace) =>
            {
                int first = index * chunk, end = Math.Min(sorted.Length, first + chunk);
                foreach (StoreySweep sweep in workspace.Sweeps) sweep.StartAt(sorted[first].Plan.X);
                for (int from = first; from < end; from++) SumFrom(from, sorted, order, workspace, losses);
                return workspace;
            },
            static _ => { });
        return losses;
    }

    private void SumFrom(int from, Position[] sorted, int[] order, Workspace workspace, PairLosses losses)
    {
        workspace.LossesDb.AsSpan(from).Clear();
        foreach (StoreySweep sweep in workspace.Sweeps) sweep.AddFrom(from, workspace.LossesDb);
        for (int to = from + 1; to < sorted.Length; to++)
        {
            var sum = new LossSum(curves) { OthersDb = workspace.LossesDb[to] };
            tracer.VisitOthers(new TracedPath(sorted[from], sorted[to]), ref sum);
            losses.Set(order[from], order[to], totalDb(sorted[from], sorted[to], sum));
        }
    }

    private sealed record Workspace(StoreySweep[] Sweeps, double[] LossesDb);
}
