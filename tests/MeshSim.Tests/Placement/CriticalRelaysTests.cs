using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

public sealed class CriticalRelaysTests
{
    [Fact]
    public void A_relay_is_critical_just_when_a_node_is_farther_without_it() =>
        ProblemSample.Any.Sample(sample =>
        {
            RepeaterProblem problem = sample.Problem();
            ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
            NodeSet all = graph.EverythingChosen();
            CriticalRelays critical = new(graph);
            critical.Find(all);
            int[] hops = [.. critical.Hops];
            int[] without = new int[problem.NodeCount];
            for (int node = 1; node < problem.NodeCount; node++)
            {
                if (hops[node] >= ReachGraph.Unreached) continue;
                List<int> farther = [];
                for (int relay = 1; relay < problem.NodeCount; relay++)
                {
                    if (relay == node || !problem.CanRelay(relay)) continue;
                    NodeSet rest = all.Copy();
                    rest.Remove(relay);
                    graph.CountHops(0, rest, without);
                    if (without[node] > hops[node]) farther.Add(relay);
                }

                critical.On(node).Should().BeEquivalentTo(farther).And.OnlyHaveUniqueItems();
            }
        });
}
