namespace MeshSim.Placement;

/// <summary>Costs that a choice must come to exactly.</summary>
/// <param name="Costs">Per outlet what choosing it costs.</param>
/// <param name="Total">What the choice must cost.</param>
internal sealed record ExactCost(int[] Costs, int Total)
{
    /// <summary>Whether some outlets cost just that.</summary>
    public bool IsKeptBy(int[] outlets) => outlets.Sum(outlet => Costs[outlet]) == Total;
}

/// <summary>What a search found.</summary>
/// <param name="Outlets">The best outlets that meet all goals, in order; null when none were found.</param>
/// <param name="LowerBound">Nothing that meets all goals costs less.</param>
/// <param name="Done">The work that went into it.</param>
internal sealed record SearchResult(int[]? Outlets, int LowerBound, WorkDone Done = default);

/// <summary>
/// The least costly outlets that meet some goals: the least costly set that hits all cuts found so far is a lower bound; where it
/// fails a goal it shows a cut that it misses. When it fails none it is the answer.
/// </summary>
internal sealed class CutSearch : IDisposable
{
    // The solvers keep their constraints to 1e-6 or better and costs are whole: a bound of 2.000001 must not become 3. Too large a
    // value here would only weaken a bound, never falsify one.
    public const double SolverTolerance = 1e-5;

    // A cut missed by less does not move the relaxed bound enough to pay for its row; the bound stands still below such steps.
    private const double WorthwhileStep = 1e-3;
    private const int RelaxationsWithoutStep = 5;

    // The relaxed master gets the cuts it misses most: all of them make it slower, not stronger (measured).
    private const int CutsPerRelaxation = 50;

    // Where losses must be survived there are tens of thousands of pairs to look at; the first few hundred that are missed do.
    private const int CutsLookedAt = 4 * CutsPerRelaxation;

    // Replacing pairs is worth much when a choice is poor and nothing when it is the best: more than this part of all searches is better spent on the bound.
    private const int PartForExchanges = 4;

    // Before its first node an exact master presolves, relaxes and rounds: as much as some nodes.
    private const int NodesBeforeFirst = 5;

    private readonly IReadOnlyList<IPlacementGoal> goals;
    private readonly int[] costs;
    private readonly ExactCost? exactly;
    private readonly CutPool pool;
    private readonly HittingSetMaster master;
    private int[]? best;
    private int[]? lastOffered;
    private int upper;
    private readonly ReachGraph[] graphs;
    private WorkLimit limit = new();
    private int relaxations;
    private long nodeEntries;
    private long exchangeSearches;
    private long searchesBefore;
    private int lower;

    /// <summary>Sets the search up.</summary>
    /// <param name="goals">What to meet; every outlet together meets them.</param>
    /// <param name="costs">Per outlet what it costs, 0 or more.</param>
    /// <param name="exactly">Other costs that must be kept to, the least with which the goals are met; null for none.</param>
    /// <param name="below">Only what costs less is of interest; null for no limit.</param>
    /// <param name="pool">Cuts that hold for these goals; those found are added.</param>
    public CutSearch(IReadOnlyList<IPlacementGoal> goals, int[] costs, ExactCost? exactly, int? below, CutPool pool)
    {
        this.goals = goals;
        this.costs = costs;
        this.exactly = exactly;
        this.pool = pool;
        graphs = [.. goals.Select(goal => goal.Graph).Distinct()];
        upper = below ?? int.MaxValue;
        Candidates = WithoutReplaced();
        master = new HittingSetMaster(costs, exactly, Candidates);
        foreach (Cut cut in pool.Cuts) master.Add(cut);
    }

    /// <summary>Per outlet whether it may be chosen.</summary>
    public IReadOnlyList<bool> Candidates { get; }

    private bool IsDone => lower >= upper;

    private bool IsSpent => relaxations >= limit.Relaxations || Searches >= limit.Searches || nodeEntries >= limit.NodeEntries;

    private long Searches => graphs.Sum(graph => graph.Searches) - searchesBefore;

    /// <summary>Searches until the best is proven or the work is used up.</summary>
    /// <param name="knownBound">A lower bound known beforehand.</param>
    /// <param name="work">The work to put in.</param>
    public SearchResult Run(int knownBound, WorkLimit work)
    {
        lower = knownBound;
        limit = work;
        searchesBefore = Searches;
        NodeSet nothing = goals[0].Graph.NothingChosen();
        foreach (Cut cut in goals.SelectMany(goal => goal.CutsMissedBy(nothing))) Add(cut);
        Offer(HowOftenCut());
        Relax();
        for (int round = 0; round < limit.Rounds && !IsDone && !IsSpent && SolveExactly(); round++)
            if (!IsDone) Relax();

        return new(best, lower, new(relaxations, Searches, nodeEntries));
    }

    /// <inheritdoc/>
    public void Dispose() => master.Dispose();

    /// <summary>Adds cuts that the relaxed answer misses until its bound stands still.</summary>
    private void Relax()
    {
        double lastCost = double.NegativeInfinity;
        for (int still = 0; still < RelaxationsWithoutStep && !IsSpent; relaxations++)
        {
            if (master.Relax() is not { } relaxed)
            {
                lower = upper;
                return;
            }

            Raise(relaxed.Cost);
            if (!IsDone) Offer(relaxed.Shares);
            if (IsDone || !AddMissed(relaxed.Shares)) return;
            still = relaxed.Cost > lastCost + WorthwhileStep ? 0 : still + 1;
            lastCost = relaxed.Cost;
        }
    }

    /// <summary>False when the work given to it ended without an answer: asking again would end there again.</summary>
    private bool SolveExactly()
    {
        long nodes = Math.Clamp((limit.NodeEntries - nodeEntries) / Math.Max(1, master.Entries), 1, limit.NodesPerRound);
        MasterAnswer answer = master.Solve(upper == int.MaxValue ? null : upper, (int)nodes);
        nodeEntries += (answer.Nodes + NodesBeforeFirst) * master.Entries;
        Raise(answer.LowerBound);
        if (answer.Outlets is not { } outlets) return false;

        NodeSet chosen = goals[0].Graph.Chosen(outlets);
        foreach (Cut cut in goals.SelectMany(goal => goal.CutsMissedBy(chosen))) Add(cut);
        double[] shares = new double[costs.Length];
        foreach (int outlet in outlets) shares[outlet] = 1;
        Offer(shares);
        return true;
    }

    private void Raise(double bound) =>
        lower = double.IsPositiveInfinity(bound) ? upper : Math.Max(lower, Math.Min(upper, (int)Math.Ceiling(bound - SolverTolerance)));

    /// <summary>A first guess: the outlets in most of the cuts found so far are worth most, so that there is an answer before any proof.</summary>
    private double[] HowOftenCut()
    {
        double[] shares = new double[costs.Length];
        foreach (int outlet in pool.Cuts.SelectMany(cut => cut.Outlets)) shares[outlet]++;
        return shares;
    }

    /// <summary>Makes a choice that meets the goals out of shares, the smallest share being given up first.</summary>
    private void Offer(double[] shares)
    {
        int[] order = [.. Enumerable.Range(0, costs.Length).OrderBy(outlet => shares[outlet]).ThenByDescending(outlet => costs[outlet])];
        int[] outlets = ChosenSets.Thin(goals, order);
        if (Cost(outlets) > upper || (lastOffered is { } last && last.AsSpan().SequenceEqual(outlets))) return;
        lastOffered = outlets;
        Keep(outlets);
        if (exactly is null && !IsDone) Exchange(outlets);
    }

    private void Exchange(int[] outlets)
    {
        long begin = Searches, until = Math.Min(limit.Searches, begin + Math.Min(limit.SearchesPerExchange, (limit.Searches / PartForExchanges) - exchangeSearches));
        Keep(ChosenSets.ReplacePairs(goals, costs, outlets, () => Searches >= until));
        exchangeSearches += Searches - begin;
    }

    private void Keep(int[] outlets)
    {
        if (exactly?.IsKeptBy(outlets) == false || Cost(outlets) >= upper) return;
        best = outlets;
        upper = Cost(outlets);
    }

    private int Cost(int[] outlets) => outlets.Sum(outlet => costs[outlet]);

    private bool AddMissed(double[] shares)
    {
        int[] byShare = [.. Enumerable.Range(0, shares.Length).OrderByDescending(outlet => shares[outlet])];
        (Cut Cut, double By)[] missed =
        [
            .. goals.SelectMany(goal => goal.CutsMissedBy(shares, byShare))
                .Select(cut => (Cut: cut, By: cut.MissedBy(shares)))
                .Where(missed => missed.By > WorthwhileStep)
                .Take(CutsLookedAt)
                .OrderByDescending(missed => missed.By)
                .ThenBy(missed => missed.Cut.Outlets.Length)
                .Take(CutsPerRelaxation),
        ];
        bool any = false;
        foreach ((Cut cut, _) in missed) any |= Add(cut);
        return any;
    }

    private bool Add(Cut cut)
    {
        if (!pool.Add(cut)) return false;
        master.Add(cut);
        return true;
    }

    /// <summary>
    /// Leaves out each outlet in whose place another one, still in and no dearer, can do in every goal; where the loss of an outlet
    /// must be survived, two others, so that one is left when the other is lost. One after the other from the last, so that of equal
    /// ones the first stays.
    /// </summary>
    private bool[] WithoutReplaced()
    {
        bool[] isIn = new bool[costs.Length];
        Array.Fill(isIn, true);
        RepeaterProblem problem = goals[0].Graph.Problem;
        int wanted = goals.Any(goal => goal.LosesOutlets) ? 2 : 1;
        for (int outlet = costs.Length - 1; outlet >= 0; outlet--)
        {
            NodeSet standIns = StandInsFor(outlet);
            int found = 0;
            for (int other = 0; other < costs.Length && found < wanted; other++)
                if (other != outlet && isIn[other] && costs[other] <= costs[outlet] && standIns.Contains(problem.NodeOf(other))) found++;
            isIn[outlet] = found < wanted;
        }

        return isIn;
    }

    /// <summary>The nodes that can do in place of an outlet in every goal.</summary>
    private NodeSet StandInsFor(int outlet)
    {
        NodeSet inAll = goals[0].StandInsFor(outlet).Copy();
        for (int goal = 1; goal < goals.Count; goal++) inAll.KeepOnly(goals[goal].StandInsFor(outlet));
        return inAll;
    }
}
