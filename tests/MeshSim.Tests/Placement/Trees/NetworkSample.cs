using MeshSim.Placement.Trees;

namespace MeshSim.Tests.Placement.Trees;

/// <summary>Small random networks, and what is best in them by trying every choice of sites.</summary>
internal static class NetworkSample
{
    /// <summary>The coordinator is node 0, then routers and devices, then sites of cost 1 to 9; nobody but these is paid for.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="isHopLimited">Whether the hop limit may hold something up.</param>
    public static RouteNetwork Random(int seed, bool isHopLimited)
    {
        var random = new Random(seed);
        int present = random.Next(3, 9), count = present + random.Next(2, 10);
        double density = 0.1 + (0.4 * random.NextDouble());
        List<int>[] neighbours = [.. Enumerable.Range(0, count).Select(_ => new List<int>())];
        for (int a = 0; a < count; a++)
        {
            for (int b = a + 1; b < count; b++)
            {
                if (random.NextDouble() >= density) continue;
                neighbours[a].Add(b);
                neighbours[b].Add(a);
            }
        }

        int[] costs = [.. Enumerable.Range(0, count).Select(node => node < present ? 0 : random.Next(1, 10))];
        bool[] relays = [.. Enumerable.Range(0, count).Select(node => node == 0 || node >= present || random.NextDouble() < 0.5)];
        int[] devices = [.. Enumerable.Range(1, present - 1).Where(_ => random.NextDouble() < 0.7)];
        return new(costs, relays, [.. neighbours.Select(list => list.ToArray())], 0, devices, isHopLimited ? random.Next(1, 6) : count);
    }

    /// <summary>What the least costly sites cost that reach every device; null when not even all together do.</summary>
    public static int? LeastCost(RouteNetwork network)
    {
        int[] sites = Sites(network);
        int? least = null;
        for (int subset = 0; subset < 1 << sites.Length; subset++)
        {
            int[] chosen = [.. sites.Where((_, index) => (subset >> index & 1) != 0)];
            int cost = chosen.Sum(network.NodeCost);
            if (cost < (least ?? int.MaxValue) && network.IsServedBy(Marked(network, chosen))) least = cost;
        }

        return least;
    }

    public static int[] Sites(RouteNetwork network) => [.. Enumerable.Range(0, network.NodeCount).Where(node => network.NodeCost(node) > 0)];

    public static bool[] Marked(RouteNetwork network, IEnumerable<int> chosen)
    {
        bool[] isChosen = new bool[network.NodeCount];
        foreach (int site in chosen) isChosen[site] = true;
        return isChosen;
    }

    public static bool[] AllOpen(RouteNetwork network)
    {
        bool[] isOpen = new bool[network.ArcCount];
        Array.Fill(isOpen, true);
        return isOpen;
    }
}
