using CsCheck;
using MeshSim.Placement.Trees;

namespace MeshSim.Tests.Placement.Trees;

public sealed class DualAscentTests
{
    private const int Networks = 400;

    [Fact]
    public void Its_bound_holds_and_its_charges_stay_within_the_costs() =>
        Gen.Int[0, int.MaxValue].Select(seed => NetworkSample.Random(seed, isHopLimited: false)).Sample(
            network =>
            {
                if (NetworkSample.LeastCost(network) is not { } least) return;
                DualAscent ascent = new(network, NetworkSample.AllOpen(network));
                ascent.Bound.Should().BeInRange(0, least);
                for (int arc = 0; arc < network.ArcCount; arc++) ascent.Unpaid[arc].Should().BeInRange(0, network.Cost(arc));
                foreach (int[] cut in ascent.Cuts)
                {
                    bool[] isLeft = NetworkSample.AllOpen(network);
                    foreach (int arc in cut) isLeft[arc] = false;
                    ReachesAll(network, isLeft).Should().BeFalse("without the cut a device is cut off");
                }
            },
            iter: Networks);

    [Fact]
    public void What_it_closes_is_in_no_cheaper_tree() =>
        Gen.Int[0, int.MaxValue].Select(seed => NetworkSample.Random(seed, isHopLimited: false)).Sample(
            network =>
            {
                if (NetworkSample.LeastCost(network) is not { } least) return;
                bool[] isOpen = NetworkSample.AllOpen(network);
                new DualAscent(network, isOpen).Close(upper: least + 1);
                int[] sites = NetworkSample.Sites(network);
                ReachesAll(network, isOpen).Should().BeTrue("a tree of the least cost is below the limit");
                int again = Enumerable.Range(0, 1 << sites.Length)
                    .Select(subset => sites.Where((_, index) => (subset >> index & 1) != 0).ToHashSet())
                    .Where(chosen => ReachesAll(network, [.. isOpen.Select((open, arc) => open && Paid(network.Head(arc), chosen))]))
                    .Min(chosen => chosen.Sum(network.NodeCost));
                again.Should().Be(least);

                bool Paid(int node, HashSet<int> chosen) => network.NodeCost(node) == 0 || chosen.Contains(node);
            },
            iter: Networks / 4);

    [Fact]
    public void One_site_on_the_only_way_is_paid_once()
    {
        // Coordinator, site of cost 5, two devices that hear nothing else.
        RouteNetwork network = new([0, 5, 0, 0], [true, true, false, false], [[1], [0, 2, 3], [1], [1]], 0, [2, 3], hopLimit: 4);
        DualAscent ascent = new(network, NetworkSample.AllOpen(network));
        ascent.Bound.Should().Be(5);
        ascent.Cuts.Should().ContainSingle();
    }

    /// <summary>Whether every device is reached along open arcs.</summary>
    private static bool ReachesAll(RouteNetwork network, bool[] isOpen)
    {
        HashSet<int> reached = [network.Coordinator];
        Stack<int> next = new([network.Coordinator]);
        while (next.TryPop(out int node))
        {
            (int first, int end) = network.ArcsFrom(node);
            for (int arc = first; arc < end; arc++)
                if (isOpen[arc] && reached.Add(network.Head(arc))) next.Push(network.Head(arc));
        }

        return Array.TrueForAll(network.Devices, reached.Contains);
    }
}
