using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>
/// The ladder: the best that 0, 1, 2, … repeaters can do everyday. First the most devices reached, among these the most with two ways,
/// among these the most floor. Each rung is a master over the cuts found so far, which never promises too little; what it promises
/// wrongly shows new cuts.
/// </summary>
public static class CoverageLadder
{
    /// <summary>Computes rungs from none up.</summary>
    /// <param name="everyday">The devices.</param>
    /// <param name="floor">The floor in patches; empty when it does not matter.</param>
    /// <param name="most">The highest number of repeaters, 0 or more. The ladder ends earlier where further ones add nothing.</param>
    /// <param name="limit">The work to put into each proof.</param>
    public static ImmutableArray<Rung> Climb(Situation everyday, ImmutableArray<FloorPatch> floor, int most, WorkLimit? limit = null)
    {
        ArgumentNullException.ThrowIfNull(everyday);
        ArgumentOutOfRangeException.ThrowIfNegative(most);
        CoverageProblem problem = new(everyday, floor);
        int[] all = [.. Enumerable.Range(0, everyday.Problem.OutletCount)];
        HashSet<CoverageItem> possible = problem.Covered(all, problem.Items());
        HashSet<CoverageItem> atOnce = problem.Covered([], possible);
        CoverageItem[] open = [.. problem.Items().Where(item => possible.Contains(item) && !atOnce.Contains(item))];
        Coverage start = CoverageProblem.Sum(atOnce), end = CoverageProblem.Sum(possible);

        List<Rung> rungs = [new(0, [], start, true, [], start)];
        using CoverageSearch search = new(problem, open, start, limit ?? new());
        while (rungs.Count <= most && rungs[^1].Best < end)
        {
            Rung last = rungs[^1];
            (int[] nested, Coverage nestedBest) = BestNext(problem, open, start, last, all);
            (int[] outlets, Coverage best, bool isProven) = search.Best(rungs.Count, nestedBest >= last.Best ? (nested, nestedBest) : ([.. last.Outlets], last.Best));
            rungs.Add(new(rungs.Count, [.. outlets], best, isProven, [.. nested], nestedBest));
        }

        return [.. rungs];
    }

    private static (int[] Outlets, Coverage Best) BestNext(CoverageProblem problem, CoverageItem[] open, Coverage start, Rung last, int[] all)
    {
        (int[] Outlets, Coverage Best) best = ([.. last.Nested], last.NestedBest);
        foreach (int outlet in all.Except(last.Nested))
        {
            int[] outlets = [.. last.Nested.Append(outlet).Order()];
            Coverage covered = CoverageSearch.Plus(start, CoverageProblem.Sum(problem.Covered(outlets, open)));
            if (covered > best.Best) best = (outlets, covered);
        }

        return best;
    }
}
