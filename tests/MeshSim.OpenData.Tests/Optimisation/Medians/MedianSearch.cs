namespace MeshSim.OpenData.Tests.Optimisation.Medians;

/// <summary>What was found.</summary>
/// <param name="Sites">The best sites, in order.</param>
/// <param name="Cost">What they cost.</param>
/// <param name="LowerBound">No sites cost less.</param>
internal sealed record MedianSolution(int[] Sites, long Cost, long LowerBound)
{
    /// <summary>Whether nothing better exists.</summary>
    public bool IsProven => Cost <= LowerBound;
}

/// <summary>
/// Solves the p-median to proven optimality: bounds from <see cref="MedianRelaxation"/>, sites from <see cref="MedianExchange"/> begun at
/// what the relaxation chooses, and where they differ a search that settles one site after the other.
/// </summary>
internal sealed class MedianSearch
{
    private const int FirstSteps = 1500;
    private const int StepsPerNode = 80;

    // Exchanging takes as long as some ten steps and finds the best sites early.
    private const int StepsPerExchange = 40;
    private const int StepsPerLateExchange = 1000;

    private readonly MedianProblem problem;
    private readonly MedianRelaxation relaxation;
    private readonly MedianExchange exchange;
    private int[] best;
    private long upper;
    private int steps;

    private MedianSearch(MedianProblem problem)
    {
        this.problem = problem;
        relaxation = new(problem, Consider);
        exchange = new(problem);
        best = exchange.Improve([.. Enumerable.Range(0, problem.Count)]);
        upper = problem.CostOf(best);
    }

    /// <summary>Solves a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="nodes">Nodes of the search tree after which to stop with what is known.</param>
    public static MedianSolution Solve(MedianProblem problem, int nodes) => new MedianSearch(problem).Run(nodes);

    private MedianSolution Run(int nodes)
    {
        PriorityQueue<(double[] Prices, SiteState[] States), (long Bound, int Made)> open = new();
        double[] prices = [.. Enumerable.Range(0, problem.ClientCount).Select(StartPrice)];
        int made = 0;
        Visit(prices, new SiteState[problem.SiteCount], 0, FirstSteps);
        for (int done = 1; done < nodes && open.TryPeek(out _, out (long Bound, int Made) next) && next.Bound < upper; done++)
        {
            (double[] parent, SiteState[] states) = open.Dequeue();
            Visit(parent, states, next.Bound, StepsPerNode);
        }

        long lower = open.TryPeek(out _, out (long Bound, int Made) left) ? Math.Min(left.Bound, upper) : upper;
        return new(best, upper, lower);

        void Visit(double[] start, SiteState[] states, long knownBound, int mostSteps)
        {
            (double bound, int[] chosen) = relaxation.Raise(start, states, () => upper, mostSteps);
            long whole = Math.Max(knownBound, (long)Math.Ceiling(bound - MedianRelaxation.Tolerance));
            if (whole >= upper || Branch(states, chosen) is not { } site) return;
            foreach (SiteState state in (SiteState[])[SiteState.Chosen, SiteState.Excluded])
            {
                SiteState[] child = [.. states];
                child[site] = state;
                open.Enqueue(([.. start], child), (whole, -made++));
            }
        }
    }

    /// <summary>The free site that the relaxation chose most often; null when nothing is left to choose.</summary>
    private int? Branch(SiteState[] states, int[] timesChosen)
    {
        int[] chosen = Those(SiteState.Chosen), free = Those(SiteState.Free);
        if (chosen.Length > problem.Count || chosen.Length + free.Length < problem.Count) return null;
        if (chosen.Length < problem.Count && chosen.Length + free.Length > problem.Count) return free.MaxBy(site => timesChosen[site]);
        Offer(chosen.Length == problem.Count ? chosen : [.. chosen.Concat(free).Order()]);
        return null;

        int[] Those(SiteState state) => [.. Enumerable.Range(0, states.Length).Where(site => states[site] == state)];
    }

    private void Consider(int[] chosen)
    {
        int every = steps < FirstSteps ? StepsPerExchange : StepsPerLateExchange;
        if (steps++ % every == 0) Offer(exchange.Improve(chosen));
    }

    private void Offer(int[] sites)
    {
        long cost = problem.CostOf(sites);
        if (cost >= upper) return;
        (best, upper) = (sites, cost);
    }

    /// <summary>What a client costs in the sites known first.</summary>
    private double StartPrice(int client)
    {
        ReadOnlySpan<int> costs = problem.CostsOf(client);
        int least = int.MaxValue;
        foreach (int site in best) least = Math.Min(least, costs[site]);
        return least;
    }
}
