namespace MeshSim.Placement;

/// <summary>What a search found.</summary>
/// <param name="Outlets">The best outlets that meet all goals, in order; null when none were found.</param>
/// <param name="LowerBound">Nothing that meets all goals costs less.</param>
internal sealed record SearchResult(int[]? Outlets, int LowerBound);

/// <summary>
/// The least costly outlets that meet some goals: the least costly set that hits all cuts found so far is a lower bound; where it
/// fails a goal it shows a cut that it misses. When it fails none it is the answer.
/// </summary>
internal sealed class CutSearch : IDisposable
{
    // The solvers keep their constraints to 1e-6 or better and costs are whole: a bound of 2.000001 must not become 3. Too large a
    // value here would only weaken a bound, never falsify one.
    private const double SolverTolerance = 1e-5;

    // A cut missed by less does not move the relaxed bound enough to pay for its row; the bound stands still below such steps.
    private const double WorthwhileStep = 1e-3;
    private const int RelaxationsWithoutStep = 5;

    // The relaxed master gets the cuts it misses most: all of them make it slower, not stronger (measured).
    private const int CutsPerRelaxation = 50;

    private readonly IReadOnlyList<ReachGoal> goals;
    private readonly int[] costs;
    private readonly int? size;
    private readonly CutPool pool;
    private readonly HittingSetMaster master;
    private int[]? best;
    private int upper;
    private int lower;

    /// <summary>Sets the search up.</summary>
    /// <param name="goals">What to meet; every outlet together meets them.</param>
    /// <param name="costs">Per outlet what it costs, 0 or more.</param>
    /// <param name="size">How many outlets to choose, the fewest that meet the goals; null leaves it open.</param>
    /// <param name="below">Only what costs less is of interest; null for no limit.</param>
    /// <param name="pool">Cuts that hold for these goals; those found are added.</param>
    public CutSearch(IReadOnlyList<ReachGoal> goals, int[] costs, int? size, int? below, CutPool pool)
    {
        this.goals = goals;
        this.costs = costs;
        this.size = size;
        this.pool = pool;
        upper = below ?? int.MaxValue;
        master = new HittingSetMaster(costs, size, Candidates());
        foreach (int[] cut in pool.Cuts) master.Add(cut);
    }

    private bool IsDone => lower >= upper;

    /// <summary>Searches until the best is proven or the work is used up.</summary>
    /// <param name="knownBound">A lower bound known beforehand.</param>
    /// <param name="limit">The work to put in.</param>
    public SearchResult Run(int knownBound, WorkLimit limit)
    {
        lower = knownBound;
        NodeSet nothing = goals[0].Graph.NothingChosen();
        foreach (int[] cut in MissedBy(goal => goal.CutsMissedBy(nothing))) Add(cut);
        Relax();
        for (int round = 0; round < limit.Rounds && !IsDone && SolveExactly(limit.NodesPerRound); round++)
            if (!IsDone) Relax();

        return new(best, lower);
    }

    /// <inheritdoc/>
    public void Dispose() => master.Dispose();

    /// <summary>Adds cuts that the relaxed answer misses until its bound stands still.</summary>
    private void Relax()
    {
        double lastCost = double.NegativeInfinity;
        for (int still = 0; still < RelaxationsWithoutStep;)
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
    private bool SolveExactly(int nodes)
    {
        MasterAnswer answer = master.Solve(upper == int.MaxValue ? null : upper, nodes);
        Raise(answer.LowerBound);
        if (answer.Outlets is not { } outlets) return false;

        NodeSet chosen = goals[0].Graph.Chosen(outlets);
        foreach (int[] cut in MissedBy(goal => goal.CutsMissedBy(chosen))) Add(cut);
        double[] shares = new double[costs.Length];
        foreach (int outlet in outlets) shares[outlet] = 1;
        Offer(shares);
        return true;
    }

    private void Raise(double bound) =>
        lower = double.IsPositiveInfinity(bound) ? upper : Math.Max(lower, Math.Min(upper, (int)Math.Ceiling(bound - SolverTolerance)));

    /// <summary>Makes a choice that meets the goals out of shares, the smallest share being given up first.</summary>
    private void Offer(double[] shares)
    {
        int[] order = [.. Enumerable.Range(0, costs.Length).OrderBy(outlet => shares[outlet]).ThenByDescending(outlet => costs[outlet])];
        int[] outlets = ChosenSets.Thin(goals, order);
        if (Cost(outlets) > upper) return;
        Keep(size is null ? ChosenSets.ReplacePairs(goals, outlets) : outlets);
    }

    private void Keep(int[] outlets)
    {
        if ((size is { } wanted && outlets.Length != wanted) || Cost(outlets) >= upper) return;
        best = outlets;
        upper = Cost(outlets);
    }

    private int Cost(int[] outlets) => outlets.Sum(outlet => costs[outlet]);

    private bool AddMissed(double[] shares)
    {
        int[][] missed =
        [
            .. MissedBy(goal => goal.CutsMissedBy(shares))
                .Select(cut => (Cut: cut, Sum: cut.Sum(outlet => shares[outlet])))
                .Where(missed => missed.Sum < 1 - WorthwhileStep)
                .OrderBy(missed => missed.Sum)
                .ThenBy(missed => missed.Cut.Length)
                .Take(CutsPerRelaxation)
                .Select(missed => missed.Cut),
        ];
        bool any = false;
        foreach (int[] cut in missed) any |= Add(cut);
        return any;
    }

    private bool Add(int[] cut)
    {
        if (!pool.Add(cut)) return false;
        master.Add(cut);
        return true;
    }

    private IEnumerable<int[]> MissedBy(Func<ReachGoal, IEnumerable<int[]>> cuts) => goals.SelectMany(cuts);

    /// <summary>
    /// Leaves out each outlet in whose place another one, still in and no dearer, can do in every goal; where the loss of an outlet
    /// must be survived, two others, so that one is left when the other is lost. One after the other from the last, so that of equal
    /// ones the first stays.
    /// </summary>
    private bool[] Candidates()
    {
        bool[] isIn = new bool[costs.Length];
        Array.Fill(isIn, true);
        ReachGoal[] withAllOutlets = [.. goals.Where(goal => !goal.LosesOutlet)];
        int wanted = withAllOutlets.Length == goals.Count ? 1 : 2;
        for (int outlet = costs.Length - 1; outlet >= 0; outlet--)
        {
            int found = 0;
            for (int other = 0; other < costs.Length && found < wanted; other++)
                if (other != outlet && isIn[other] && costs[other] <= costs[outlet] && Replaces(other, outlet)) found++;
            isIn[outlet] = found < wanted;
        }

        return isIn;

        bool Replaces(int other, int outlet) => Array.TrueForAll(withAllOutlets, goal => goal.CanReplace(other, outlet));
    }
}
