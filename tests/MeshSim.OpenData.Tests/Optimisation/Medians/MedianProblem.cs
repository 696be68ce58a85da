namespace MeshSim.OpenData.Tests.Optimisation.Medians;

/// <summary>
/// Choose a number of sites so that the costs of all clients, each served by its cheapest chosen site, sum to the least.
/// S. L. Hakimi, "Optimum locations of switching centers and the absolute centers and medians of a graph", Operations Research 12
/// (1964), 450–459: the p-median.
/// </summary>
internal sealed class MedianProblem
{
    private readonly int[][] costs;
    private readonly int[][] cheapestFirst;

    /// <summary>Sets the problem up.</summary>
    /// <param name="costs">Per client and site what serving costs, 0 or more.</param>
    /// <param name="count">How many sites to choose.</param>
    /// <exception cref="ArgumentException">There is no client, or not every one has a cost for each site.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are not that many sites, or a cost is below zero.</exception>
    public MedianProblem(int[][] costs, int count)
    {
        if (costs.Length == 0) throw new ArgumentException("there must be a client", nameof(costs));
        SiteCount = costs[0].Length;
        if (Array.Exists(costs, row => row.Length != SiteCount)) throw new ArgumentException("each client must have a cost per site", nameof(costs));
        if (Array.Exists(costs, row => Array.Exists(row, cost => cost < 0)))
            throw new ArgumentOutOfRangeException(nameof(costs), "costs must be 0 or more");
        if (count < 1 || count > SiteCount) throw new ArgumentOutOfRangeException(nameof(count), count, "must be 1 to the number of sites");

        this.costs = costs;
        Count = count;
        cheapestFirst = [.. costs.Select(CheapestFirst)];
    }

    /// <summary>Number of clients.</summary>
    public int ClientCount => costs.Length;

    /// <summary>Number of sites to choose from.</summary>
    public int SiteCount { get; }

    /// <summary>How many sites to choose.</summary>
    public int Count { get; }

    /// <summary>What serving a client from each site costs.</summary>
    public ReadOnlySpan<int> CostsOf(int client) => costs[client];

    /// <summary>The sites, the cheapest for a client first.</summary>
    public ReadOnlySpan<int> CheapestFor(int client) => cheapestFirst[client];

    /// <summary>The costs of all clients over some sites.</summary>
    public long CostOf(int[] sites)
    {
        long sum = 0;
        foreach (int[] row in costs)
        {
            int least = int.MaxValue;
            foreach (int site in sites) least = Math.Min(least, row[site]);
            sum += least;
        }

        return sum;
    }

    private static int[] CheapestFirst(int[] row)
    {
        int[] keys = [.. row], sites = [.. Enumerable.Range(0, row.Length)];
        long[] order = [.. sites.Select(site => ((long)keys[site] << 32) + site)];
        Array.Sort(order, sites);
        return sites;
    }
}
