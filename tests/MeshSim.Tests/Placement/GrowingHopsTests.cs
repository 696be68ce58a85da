using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

public sealed class GrowingHopsTests
{
    [Fact]
    public void One_outlet_after_the_other_it_counts_what_a_new_search_counts() =>
        Gen.Select(ProblemSample.Any, Gen.Int[0, int.MaxValue]).Sample((sample, seed) =>
        {
            RepeaterProblem problem = sample.Problem();
            ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
            int[] order = [.. Enumerable.Range(0, sample.OutletCount)];
            new Random(seed).Shuffle(order);
            for (int source = 0; source < problem.DeviceCount; source++)
            {
                NodeSet passing = graph.NothingChosen();
                int[] hops = new int[problem.NodeCount];
                graph.CountHops(source, passing, hops);
                GrowingHops growing = new(graph);
                growing.Begin(hops);
                foreach (int node in order.Select(problem.NodeOf))
                {
                    passing.Add(node);
                    growing.Spread(node, passing);
                    graph.CountHops(source, passing, hops);
                    WithinLimit(growing.Hops).Should().Equal(WithinLimit(hops));
                }
            }

            // What lies beyond the hop limit need not be counted, but must not look near.
            IEnumerable<int?> WithinLimit(int[] counts) => counts.Select(count => count <= problem.HopLimit ? (int?)count : null);
        });
}
