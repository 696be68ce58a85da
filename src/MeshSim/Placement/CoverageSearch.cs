namespace MeshSim.Placement;

/// <summary>Finds the most that a number of outlets can cover; cuts found for one number serve for the next.</summary>
internal sealed class CoverageSearch : IDisposable
{
    private static readonly CoverageKind[] Kinds = Enum.GetValues<CoverageKind>();

    private readonly CoverageProblem problem;
    private readonly CoverageItem[] open;
    private readonly Coverage start;
    private readonly WorkLimit limit;
    private readonly CoverageMaster master;
    private readonly HashSet<(CoverageItem, Cut)> known = [];

    /// <summary>Sets up.</summary>
    /// <param name="problem">What covers what.</param>
    /// <param name="open">What is not covered with nothing chosen and can be.</param>
    /// <param name="start">What is covered with nothing chosen.</param>
    /// <param name="limit">The work to put in.</param>
    public CoverageSearch(CoverageProblem problem, CoverageItem[] open, Coverage start, WorkLimit limit)
    {
        (this.problem, this.open, this.start, this.limit) = (problem, open, start, limit);
        master = new(problem.Graph.Problem.OutletCount, open);
        Learn([], open);
    }

    /// <summary>Two coverages of different things together.</summary>
    public static Coverage Plus(Coverage a, Coverage b) => new(a.Reached + b.Reached, a.TwoWays + b.TwoWays, a.Patches + b.Patches);

    /// <summary>The most that can be covered.</summary>
    /// <param name="count">How many outlets may be chosen.</param>
    /// <param name="begin">A choice to begin with.</param>
    public (int[] Outlets, Coverage Best, bool IsProven) Best(int count, (int[] Outlets, Coverage Best) begin)
    {
        (int[] outlets, Coverage best) = begin;
        bool isProven = true;
        master.Allow(count);
        foreach (CoverageKind kind in Kinds)
        {
            int rounds = limit.CoverageRounds;
            while (true)
            {
                if (rounds-- == 0 || master.Most(kind, limit.NodesPerRound) is not { } promised)
                {
                    isProven = false;
                    break;
                }

                HashSet<CoverageItem> covered = problem.Covered(promised.Outlets, open);
                Coverage offered = Plus(start, CoverageProblem.Sum(covered));
                if (offered > best) (outlets, best) = (promised.Outlets, offered);
                if (Of(best, kind) >= promised.Bound + Of(start, kind)) break;
                if (!Learn(promised.Outlets, open.Where(item => !covered.Contains(item))))
                {
                    isProven = false;
                    break;
                }
            }

            master.Require(kind, Of(best, kind) - Of(start, kind));
        }

        return (outlets, best, isProven);
    }

    /// <inheritdoc/>
    public void Dispose() => master.Dispose();

    private static int Of(Coverage coverage, CoverageKind kind) => kind switch
    {
        CoverageKind.Reached => coverage.Reached,
        CoverageKind.TwoWays => coverage.TwoWays,
        _ => coverage.Patches,
    };

    /// <summary>Takes in the cuts that a choice misses. False when all of them were known.</summary>
    private bool Learn(int[] outlets, IEnumerable<CoverageItem> missed)
    {
        bool any = false;
        foreach (CoverageItem item in missed)
        {
            foreach (Cut cut in problem.CutsMissedBy(outlets, item))
            {
                if (!known.Add((item, cut))) continue;
                master.Add(item, cut);
                any = true;
            }
        }

        return any;
    }
}
