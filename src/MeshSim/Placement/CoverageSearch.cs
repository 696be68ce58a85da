namespace MeshSim.Placement;

/// <summary>Finds the most that a number of outlets can cover; cuts found for one number serve for the next.</summary>
internal sealed class CoverageSearch : IDisposable
{
    private static readonly CoverageKind[] Kinds = Enum.GetValues<CoverageKind>();

    // Before its first node a master presolves, relaxes and rounds: as much as some nodes.
    private const int NodesBeforeFirst = 5;

    private readonly CoverageProblem problem;
    private readonly CoverageItem[] open;
    private readonly Coverage start;
    private readonly WorkLimit limit;
    private readonly HashSet<(CoverageItem, Cut)> known = [];

    // The floor has ten times as many items as there are devices: what is asked of devices is asked of a master without it.
    private readonly Share ofDevices;
    private readonly Share? ofFloor;

    /// <summary>Sets up.</summary>
    /// <param name="problem">What covers what.</param>
    /// <param name="open">What is not covered with nothing chosen and can be.</param>
    /// <param name="start">What is covered with nothing chosen.</param>
    /// <param name="limit">The work to put in.</param>
    public CoverageSearch(CoverageProblem problem, CoverageItem[] open, Coverage start, WorkLimit limit)
    {
        (this.problem, this.open, this.start, this.limit) = (problem, open, start, limit);
        int outlets = problem.Graph.Problem.OutletCount;
        CoverageItem[] devices = [.. open.Where(item => item.Kind != CoverageKind.Patch)];
        ofDevices = new(new(outlets, devices), limit.NodeEntries);
        long floor = open.Length - devices.Length;
        ofFloor = floor > 0 && floor * outlets <= limit.FloorSize ? new(new(outlets, open), limit.NodeEntries) : null;
        Learn([], devices);
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
        ofDevices.Master.Allow(count);
        ofFloor?.Master.Allow(count);
        foreach (CoverageKind kind in Kinds)
        {
            if (!Array.Exists(open, item => item.Kind == kind)) continue;
            CoverageItem[] asked = kind == CoverageKind.Patch ? open : [.. open.Where(item => item.Kind != CoverageKind.Patch)];
            isProven &= Improve(kind, asked, ref outlets, ref best);
            int required = Of(best, kind) - Of(start, kind);
            ofDevices.Master.Require(kind, required);
            ofFloor?.Master.Require(kind, required);
        }

        return (outlets, best, isProven);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        ofDevices.Master.Dispose();
        ofFloor?.Master.Dispose();
    }

    /// <summary>Looks for more of a kind. False when the work ended before it was proven that there is none.</summary>
    private bool Improve(CoverageKind kind, CoverageItem[] asked, ref int[] outlets, ref Coverage best)
    {
        Share? share = kind == CoverageKind.Patch ? ofFloor : ofDevices;
        for (int round = 0; round < limit.CoverageRounds; round++)
        {
            if (share?.Most(kind, limit.NodesPerRound) is not { } promised) return false;
            HashSet<CoverageItem> covered = problem.Covered(promised.Outlets, open);
            Coverage offered = Plus(start, CoverageProblem.Sum(covered));
            if (offered > best) (outlets, best) = (promised.Outlets, offered);
            if (Of(best, kind) >= promised.Bound + Of(start, kind)) return true;
            if (!Learn(promised.Outlets, asked.Where(item => !covered.Contains(item)))) return false;
        }

        return false;
    }

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
                if (item.Kind != CoverageKind.Patch) ofDevices.Master.Add(item, cut);
                ofFloor?.Master.Add(item, cut);
                any = true;
            }
        }

        return any;
    }

    /// <summary>A master with the work that is left for it.</summary>
    /// <param name="master">The master.</param>
    /// <param name="nodeEntries">Nodes of the search tree times entries of the cuts.</param>
    private sealed class Share(CoverageMaster master, long nodeEntries)
    {
        private long left = nodeEntries;

        public CoverageMaster Master => master;

        /// <summary>Whether not even the first node can be had any more.</summary>
        public bool IsSpent => left < NodesBeforeFirst * master.Entries;

        public (int[] Outlets, int Bound)? Most(CoverageKind kind, int nodesPerRound)
        {
            if (IsSpent) return null;
            long entries = Math.Max(1, master.Entries), nodes = Math.Clamp((left / entries) - NodesBeforeFirst, 1, nodesPerRound);
            (int[] Outlets, int Bound, long Nodes)? answer = master.Most(kind, (int)nodes);
            left -= ((answer?.Nodes ?? nodes) + NodesBeforeFirst) * entries;
            return answer is { } most ? (most.Outlets, most.Bound) : null;
        }
    }
}
