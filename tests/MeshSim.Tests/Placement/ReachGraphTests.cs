using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

public sealed class ReachGraphTests
{
    [Fact]
    public void Hops_are_within_the_limit_exactly_where_a_route_is() =>
        Gen.Select(ProblemSample.Any, Gen.Int[0, 255]).Sample((sample, subset) =>
        {
            RepeaterProblem problem = sample.Problem();
            ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
            int[] hops = new int[problem.NodeCount];
            graph.CountHops(0, graph.Chosen(Enumerable.Range(0, sample.OutletCount).Where(outlet => (subset >> outlet & 1) != 0)), hops);
            for (int limit = 1; limit <= sample.NodeCount; limit++)
            {
                double[] strongestDb = new ExhaustivePlacement(sample with { HopLimit = limit }).StrongestRoutesDb(subset);
                hops.Select(count => count <= limit).Should().Equal(strongestDb.Select(marginDb => marginDb >= sample.DesignMarginDb));
            }
        });

    [Fact]
    public void More_than_a_word_of_nodes_is_walked_in_a_line()
    {
        // 200 routers in a row: the bits of four words, and as many hops as routers.
        const int Routers = 200;
        RepeaterProblem problem = new([.. Enumerable.Repeat(true, Routers)], 0, 0, Routers, new(0), (a, b) => new(b == a + 1 ? 1 : -1));
        ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
        int[] hops = new int[Routers];
        graph.CountHops(0, graph.NothingChosen(), hops);
        hops.Should().Equal(Enumerable.Range(0, Routers));
    }

    [Fact]
    public void Who_hears_everything_that_another_hears_can_stand_in_for_it()
    {
        // 1 hears 0 and 2; 3 hears 0, 1 and 2; 2 hears 1 and 3.
        (int, int)[] links = [(0, 1), (1, 2), (0, 3), (1, 3), (2, 3)];
        RepeaterProblem problem = new([true, true, true, true], 0, 0, 3, new(0), (a, b) => new(links.Contains((a, b)) ? 1 : -1));
        ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
        graph.HearsAllOf(3, 1).Should().BeTrue();
        graph.HearsAllOf(1, 3).Should().BeTrue();
        graph.HearsAllOf(2, 1).Should().BeFalse("it does not hear 0");
        graph.HearsAllOf(0, 2).Should().BeTrue();
    }
}
