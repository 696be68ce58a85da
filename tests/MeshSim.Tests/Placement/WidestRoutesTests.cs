using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

public sealed class WidestRoutesTests
{
    [Fact]
    public void The_weakest_link_of_each_route_is_as_strong_as_any_route_allows() =>
        Gen.Select(ProblemSample.Any, Gen.Int[0, 255]).Sample((sample, subset) =>
        {
            int[] chosen = [.. Enumerable.Range(0, sample.OutletCount).Where(outlet => (subset >> outlet & 1) != 0)];
            double[] strongestDb = new ExhaustivePlacement(sample).StrongestRoutesDb(ExhaustivePlacement.SubsetOf(chosen));
            RepeaterProblem problem = sample.Problem();
            WidestRoutes routes = new(problem, chosen, new NodeSet(problem.NodeCount));
            for (int device = 1; device < sample.Relays.Length; device++)
            {
                routes.MarginOf(device).Value.Should().Be(strongestDb[device]);
                IReadOnlyList<int> route = routes.RouteTo(device);
                route[0].Should().Be(0);
                route[^1].Should().Be(device);
                route.Should().OnlyHaveUniqueItems();
                (route.Count - 1).Should().BeInRange(1, sample.HopLimit);
                route.Zip(route.Skip(1), (a, b) => problem.Margin(a, b).Value).Min().Should().Be(strongestDb[device]);
                route.SkipLast(1).Should().OnlyContain(node => problem.CanRelay(node));
            }
        });
}
