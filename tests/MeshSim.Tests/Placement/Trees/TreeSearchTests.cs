using CsCheck;
using MeshSim.Placement;
using MeshSim.Placement.Trees;

namespace MeshSim.Tests.Placement.Trees;

public sealed class TreeSearchTests
{
    private const int Networks = 400;

    [Fact]
    public void The_answer_is_the_best_of_all_choices_and_proven() =>
        Gen.Int[0, int.MaxValue].Select(seed => NetworkSample.Random(seed, isHopLimited: false)).Sample(
            network =>
            {
                if (NetworkSample.LeastCost(network) is not { } least) return;
                SearchResult result = new TreeSearch(network).Run(new WorkLimit());
                result.Outlets.Should().NotBeNull();
                network.IsServedBy(NetworkSample.Marked(network, result.Outlets!)).Should().BeTrue();
                result.Outlets!.Sum(network.NodeCost).Should().Be(least);
                result.LowerBound.Should().Be(least);
            },
            iter: Networks);

    [Fact]
    public void Within_a_hop_limit_what_it_finds_serves_and_its_bound_holds() =>
        Gen.Int[0, int.MaxValue].Select(seed => NetworkSample.Random(seed, isHopLimited: true)).Sample(
            network =>
            {
                if (NetworkSample.LeastCost(network) is not { } least) return;
                SearchResult result = new TreeSearch(network).Run(new WorkLimit());
                result.LowerBound.Should().BeLessThanOrEqualTo(least);
                if (result.Outlets is not { } sites) return;
                network.IsServedBy(NetworkSample.Marked(network, sites)).Should().BeTrue();
                sites.Sum(network.NodeCost).Should().BeGreaterThanOrEqualTo(least);
            },
            iter: Networks);

    [Fact]
    public void Three_devices_about_a_site_are_joined_over_it_when_that_is_cheaper_than_two_others()
    {
        // The coordinator and two end devices that pass frames on, nodes 0 to 2; a site that all three hear, node 3; one between each
        // pair, nodes 4 to 6, two units each. Half of each of the three would hit every cut for 3; no whole choice costs less than 4.
        int[][] neighbours = [[3, 4, 6], [3, 4, 5], [3, 5, 6], [0, 1, 2], [0, 1], [1, 2], [0, 2]];
        Solve(middle: 3).Should().Be(3);
        Solve(middle: 5).Should().Be(4);

        int Solve(int middle)
        {
            RouteNetwork network = new([0, 0, 0, middle, 2, 2, 2], [.. neighbours.Select(_ => true)], neighbours, 0, [1, 2], hopLimit: 7);
            SearchResult result = new TreeSearch(network).Run(new WorkLimit());
            result.LowerBound.Should().Be(result.Outlets!.Sum(network.NodeCost));
            return result.LowerBound;
        }
    }
}
