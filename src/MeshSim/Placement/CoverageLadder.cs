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

    /// <summary>
    /// The best outlet on top of those that are there, the first of equals. An outlet more takes nothing away, so each kind in turn decides among the
    /// outlets that are best in all kinds before it.
    /// </summary>
    private static (int[] Outlets, Coverage Best) BestNext(CoverageProblem problem, CoverageItem[] open, Coverage start, Rung last, int[] all)
    {
        ILookup<CoverageKind, CoverageItem> byKind = open.ToLookup(item => item.Kind);
        int[][] left = [.. all.Except(last.Nested).Select(outlet => (int[])[.. last.Nested.Append(outlet).Order()])];
        foreach (CoverageKind kind in Enum.GetValues<CoverageKind>())
        {
            CoverageItem[] items = [.. byKind[kind]];
            if (items.Length == 0 || left.Length <= 1) continue;
            int[] points = [.. left.Select(outlets => problem.Covered(outlets, items).Sum(item => item.Points))];
            int most = points.Max();
            left = [.. left.Where((_, i) => points[i] == most)];
        }

        if (left.Length == 0) return ([.. last.Nested], last.NestedBest);
        Coverage covered = CoverageSearch.Plus(start, CoverageProblem.Sum(problem.Covered(left[0], open)));
        return covered > last.NestedBest ? (left[0], covered) : ([.. last.Nested], last.NestedBest);
    }
}
