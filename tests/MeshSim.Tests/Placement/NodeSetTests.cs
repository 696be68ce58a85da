using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

/// <summary>Sets of nodes over several words, against sets of numbers.</summary>
public sealed class NodeSetTests
{
    private const int NodeCount = 150;

    private static readonly Gen<HashSet<int>> AnyNodes = Gen.Int[0, NodeCount - 1].HashSet[0, 40];

    [Fact]
    public void Sets_compare_as_sets_of_numbers_do() => Gen.Select(AnyNodes, AnyNodes, Gen.Bool).Sample((some, others, isPart) =>
    {
        if (isPart) others.UnionWith(some);
        NodeSet a = Of(some), b = Of(others);
        a.Count.Should().Be(some.Count);
        a.Nodes.Should().Equal(some.Order());
        a.Meets(b).Should().Be(some.Overlaps(others));
        a.IsWithin(b).Should().Be(some.IsSubsetOf(others));
    });

    [Fact]
    public void A_set_of_strong_nodes_forgets_who_was_in_it_before() =>
        Gen.Select(AnyNodes, Gen.Int[0, 9].Array[NodeCount], Gen.Int[0, 9]).Sample((before, values, least) =>
        {
            NodeSet nodes = Of(before);
            nodes.SetToAtLeast(least, [.. values.Select(value => (double)value)]);
            nodes.Nodes.Should().Equal(Enumerable.Range(0, NodeCount).Where(node => values[node] >= least));
        });

    private static NodeSet Of(IEnumerable<int> nodes)
    {
        NodeSet set = new(NodeCount);
        foreach (int node in nodes) set.Add(node);
        return set;
    }
}
