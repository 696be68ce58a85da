namespace MeshSim.Placement.Trees;

/// <summary>
/// The least costly sites over which every device is reached, sought as a tree whose arcs lead away from the coordinator: a site is
/// entered once, from one side. What is chosen are entries and not sites, so a site half chosen in one direction is not half chosen in
/// the other too, and the relaxed bound is far closer to the truth than that of the cuts of <see cref="CutSearch"/>.
/// </summary>
internal sealed class TreeSearch
{
    // Further pairs of cuts around the same device repeat what the pairs around other devices say.
    private const int PairsPerDevice = 3;

    private const int Ascents = 6;
    private const double WorthwhileStep = 1e-3;
    private const int RelaxationsWithoutStep = 5;

    private readonly RouteNetwork network;
    private readonly TreeBuilder builder;
    private readonly ShareFlow flow;
    private readonly bool[] isOpen;
    private readonly int[] costs;
    private readonly CutPool pool = new();
    private int[]? best;
    private int upper = int.MaxValue;
    private int lower;
    private int relaxationsLeft;

    /// <summary>Sets the search up.</summary>
    /// <param name="network">The network; every site together reaches every device.</param>
    public TreeSearch(RouteNetwork network)
    {
        this.network = network;
        builder = new(network);
        flow = new(network);
        costs = [.. Enumerable.Range(0, network.ArcCount).Select(network.Cost)];
        isOpen = new bool[network.ArcCount];
        Array.Fill(isOpen, true);
        Detours.Close(network, isOpen);
    }

    private bool IsDone => lower >= upper;

    /// <summary>Searches until the best is proven or the work is used up.</summary>
    /// <param name="limit">The work to put in.</param>
    /// <returns>The nodes of the best sites, and the bound.</returns>
    public SearchResult Run(WorkLimit limit)
    {
        relaxationsLeft = limit.Relaxations;
        Offer([.. costs.Select(cost => (double)cost)]);
        DualAscent ascent = Ascend();
        if (IsDone) return new(best, lower);

        using HittingSetMaster master = new(costs, exactly: null, [.. costs.Select((cost, arc) => cost > 0 && isOpen[arc])]);
        foreach (int[] cut in ascent.Cuts) Add(master, cut);
        Relax(master);
        for (int round = 0; round < limit.Rounds && !IsDone && SolveExactly(master, limit.NodesPerRound); round++)
            if (!IsDone) Relax(master);
        return new(best, lower);
    }

    /// <summary>Raises the bound without a linear program, builds trees of what it has paid up, and closes what neither can use.</summary>
    private DualAscent Ascend()
    {
        DualAscent ascent;
        int round = 0;
        do
        {
            ascent = new(network, isOpen);
            Raise(ascent.Bound);
            Offer([.. ascent.Unpaid.Select((unpaid, arc) => unpaid + (WorthwhileStep * costs[arc]))]);
        }
        while (!IsDone && ascent.Close(upper) && ++round < Ascents);
        return ascent;
    }

    /// <summary>Adds cuts that the relaxed answer misses until there are none or its bound stands still.</summary>
    private void Relax(HittingSetMaster master)
    {
        double lastCost = double.NegativeInfinity;
        for (int still = 0; still < RelaxationsWithoutStep && relaxationsLeft > 0; relaxationsLeft--)
        {
            if (master.Relax() is not { } relaxed)
            {
                lower = upper;
                return;
            }

            Raise(relaxed.Cost);
            if (!IsDone) Offer([.. costs.Select((cost, arc) => cost * (1 - relaxed.Shares[arc]))]);
            if (IsDone) return;
            Exclude(master, relaxed.Cost);
            if (!AddMissed(master, relaxed.Shares)) return;
            still = relaxed.Cost > lastCost + WorthwhileStep ? 0 : still + 1;
            lastCost = relaxed.Cost;
        }
    }

    /// <summary>False when nothing was learnt: the work given to it ended, or only a hop limit speaks against what it found.</summary>
    private bool SolveExactly(HittingSetMaster master, int nodes)
    {
        MasterAnswer answer = master.Solve(upper, nodes);
        Raise(answer.LowerBound);
        if (answer.Outlets is not { } arcs) return false;
        Keep([.. arcs.Select(network.Head).Distinct().Order()]);
        double[] shares = new double[costs.Length];
        foreach (int arc in arcs) shares[arc] = 1;
        return IsDone || AddMissed(master, shares);
    }

    private void Raise(double bound) =>
        lower = Math.Max(lower, double.IsPositiveInfinity(bound) ? upper : Math.Min(upper, (int)Math.Ceiling(bound - CutSearch.SolverTolerance)));

    private void Offer(double[] lengths)
    {
        if (builder.Build(isOpen, lengths) is { } sites) Keep(sites);
    }

    private void Keep(int[] sites)
    {
        int cost = sites.Sum(network.NodeCost);
        if (cost >= upper || !builder.Serves(sites)) return;
        (best, upper) = (sites, cost);
    }

    /// <summary>Closes each entry with which even the relaxed answer would cost no less than the best tree.</summary>
    private void Exclude(HittingSetMaster master, double cost)
    {
        double[] more = master.ReducedCosts();
        for (int arc = 0; arc < costs.Length; arc++)
        {
            if (costs[arc] == 0 || !isOpen[arc] || cost + more[arc] <= upper - 1 + CutSearch.SolverTolerance) continue;
            isOpen[arc] = false;
            master.Exclude(arc);
        }
    }

    private bool AddMissed(HittingSetMaster master, double[] shares)
    {
        bool any = false;
        foreach (int device in network.Devices)
            foreach (int[] cut in flow.CutsMissedBy(shares, isOpen, device, PairsPerDevice)) any |= Add(master, cut);
        return any;
    }

    private bool Add(HittingSetMaster master, int[] cut)
    {
        Cut one = Cut.One(cut);
        if (!pool.Add(one)) return false;
        master.Add(one);
        return true;
    }
}
