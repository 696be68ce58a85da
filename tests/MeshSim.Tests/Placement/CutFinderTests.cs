using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

public sealed class CutFinderTests
{
    [Fact]
    public void Without_its_cut_a_device_is_cut_off_and_any_one_of_it_brings_it_back() =>
        Gen.Select(ProblemSample.Any, Gen.Int[0, 255], Gen.Int[0, int.MaxValue]).Sample((sample, subset, seed) =>
        {
            ExhaustivePlacement oracle = new(sample);
            RepeaterProblem problem = sample.Problem();
            ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
            int[] order = [.. Enumerable.Range(0, sample.OutletCount)];
            int[] chosen = [.. order.Where(outlet => (subset >> outlet & 1) != 0)];
            int everything = ExhaustivePlacement.SubsetOf(order);
            new Random(seed).Shuffle(order);
            CutFinder finder = new(graph);
            for (int device = 1; device < sample.Relays.Length; device++)
            {
                int[]? cut = finder.Grow(device, graph.Chosen(chosen), order);
                (cut is null).Should().Be(oracle.ServesDevice(device, ExhaustivePlacement.SubsetOf(chosen)));
                if (cut is null) continue;

                int rest = everything & ~ExhaustivePlacement.SubsetOf(cut);
                cut.Should().BeInAscendingOrder().And.NotIntersectWith(chosen);
                oracle.ServesDevice(device, rest).Should().BeFalse();
                Array.TrueForAll(cut, outlet => oracle.ServesDevice(device, rest | (1 << outlet))).Should().BeTrue();
            }
        });
}
