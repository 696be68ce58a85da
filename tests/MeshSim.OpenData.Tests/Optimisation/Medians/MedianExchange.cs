namespace MeshSim.OpenData.Tests.Optimisation.Medians;

/// <summary>
/// Exchanges a chosen site for another as long as that lowers the costs. Who is served best and second best is kept, so
/// one look at all clients tells what each exchange for a new site would bring. R. A. Whitaker, "A fast algorithm for the
/// greedy interchange for large-scale clustering and median location problems", INFOR 21 (1983), 95–108.
/// </summary>
internal sealed class MedianExchange
{
    private readonly MedianProblem problem;
    private readonly int[] first;
    private readonly int[] firstCosts;
    private readonly int[] secondCosts;
    private readonly long[] losses;

    /// <summary>Prepares for a problem.</summary>
    public MedianExchange(MedianProblem problem)
    {
        this.problem = problem;
        first = new int[problem.ClientCount];
        firstCosts = new int[problem.ClientCount];
        secondCosts = new int[problem.ClientCount];
        losses = new long[problem.Count];
    }

    /// <summary>The sites, in order, after which no single exchange helps.</summary>
    public int[] Improve(int[] start)
    {
        int[] sites = [.. start];
        Serve(sites);
        int unchanged = 0;
        for (int site = 0; unchanged < problem.SiteCount; site = (site + 1) % problem.SiteCount)
        {
            unchanged++;
            if (Array.IndexOf(sites, site) >= 0) continue;
            (long saving, int place) = BestExchange(site);
            if (saving <= 0) continue;
            sites[place] = site;
            Serve(sites);
            unchanged = 0;
        }

        Array.Sort(sites);
        return sites;
    }

    /// <summary>How much a new site saves at most, and in the place of which chosen one.</summary>
    private (long Saving, int Place) BestExchange(int site)
    {
        Array.Clear(losses);
        long gain = 0;
        for (int client = 0; client < first.Length; client++)
        {
            int cost = problem.CostsOf(client)[site];
            if (cost < firstCosts[client]) gain += firstCosts[client] - cost;
            else losses[first[client]] += Math.Min(secondCosts[client], cost) - firstCosts[client];
        }

        int place = 0;
        for (int other = 1; other < losses.Length; other++)
            if (losses[other] < losses[place]) place = other;
        return (gain - losses[place], place);
    }

    private void Serve(int[] sites)
    {
        for (int client = 0; client < first.Length; client++)
        {
            ReadOnlySpan<int> costs = problem.CostsOf(client);
            int best = 0, bestCost = int.MaxValue, secondCost = int.MaxValue;
            for (int place = 0; place < sites.Length; place++)
            {
                int cost = costs[sites[place]];
                if (cost < bestCost) (best, bestCost, secondCost) = (place, cost, bestCost);
                else if (cost < secondCost) secondCost = cost;
            }

            (first[client], firstCosts[client], secondCosts[client]) = (best, bestCost, secondCost);
        }
    }
}
