using CsCheck;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Mesh.Reliability;

namespace MeshSim.Tests.Mesh.Reliability;

public sealed class ReachWordsTests
{
    [Fact]
    public void Sixty_four_draws_at_once_reach_whom_each_draw_reaches_alone() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 14], Gen.Int[1, 6]).Sample(
            (seed, devices, hopLimit) =>
            {
                MeshGraph graph = MeshSamples.RandomGraph(seed, devices, hopLimit, isTied: false);
                Link[] links = [.. DrawnLinks.Of(graph)];
                var random = new SplitMix64((ulong)seed);
                ulong[] words = [.. links.Select(_ => random.Next())];
                var reach = new ReachWords(devices, graph.Relays, DrawnLinks.EndsOf(graph, links));
                reach.Spread(Spreading.In(graph), words);
                for (int draw = 0; draw < 64; draw++)
                {
                    int[] hops = HopCounts.Of(OfDraw(graph, links, words, draw));
                    for (int node = 0; node < devices; node++)
                        ((reach.Reached[node] >> draw & 1) == 1).Should().Be(hops[node] != HopCounts.Unreached);
                }
            },
            iter: 50);

    private static MeshGraph OfDraw(MeshGraph graph, Link[] links, ulong[] words, int draw) => new(
        MeshSamples.Network(graph.HopLimit),
        graph.Devices.Select((_, node) => MeshSamples.Device(node, node == 0 ? Role.Coordinator : graph.Relays(node) ? Role.Router : Role.EndDevice)),
        [.. links.Where((_, i) => (words[i] >> draw & 1) == 1).Select(link => link with { Margin = MeshSamples.DesignMargin })],
        MeshSamples.DesignMargin);
}
