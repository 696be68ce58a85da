using MeshSim.Placement;
using MeshSim.Placement.Trees;

namespace MeshSim.OpenData.Tests.Optimisation;

/// <summary>
/// Minimum Steiner trees in graphs, sets B and C of J. E. Beasley (OR-Library, 1990) in the form of SteinLib (T. Koch, A. Martin, S. Voß,
/// 2000). Every edge of the graph becomes a site of the edge's weight between its two ends; the ends are routers that are there anyway;
/// the first terminal is the coordinator and the others are the devices to reach.
/// </summary>
public sealed class SteinerTreeTests
{
    private const int InstancesOfB = 18, InstancesOfC = 20;

    public static TheoryData<string> Names => [.. Numbered('b', InstancesOfB), .. Numbered('c', InstancesOfC)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_sites_found_cost_the_published_optimum_and_are_proven(string name)
    {
        RouteNetwork network = Read(InstanceFiles.Of(FolderOf(name), name + ".stp"));
        int published = InstanceFiles.Table(InstanceFiles.Of("steinlib-optima.csv"), ',', name: 1, value: 5)[name + ".stp"];

        SearchResult result = new TreeSearch(network).Run(new WorkLimit());

        result.Outlets.Should().NotBeNull();
        bool[] isChosen = new bool[network.NodeCount];
        foreach (int site in result.Outlets!) isChosen[site] = true;
        network.IsServedBy(isChosen).Should().BeTrue();
        result.Outlets!.Sum(network.NodeCost).Should().Be(published);
        result.LowerBound.Should().Be(published, "it must be proven");
    }

    [Theory]
    [InlineData('b', InstancesOfB)]
    [InlineData('c', InstancesOfC)]
    public void No_instance_is_left_out(char set, int count)
    {
        string[] names = InstanceFiles.NamesIn(FolderOf(Numbered(set, 1).First()), "*.stp");
        names.Should().HaveCount(count).And.Equal(Numbered(set, count));
    }

    private static string FolderOf(string name) => "steinlib-" + name[0];

    private static IEnumerable<string> Numbered(char set, int count) =>
        Enumerable.Range(1, count).Select(number => FormattableString.Invariant($"{set}{number:00}"));

    /// <summary>Lines "E end end weight" and "T terminal" among others, nodes from 1.</summary>
    private static RouteNetwork Read(string file)
    {
        string[][] lines = [.. File.ReadLines(file).Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
        int[][] edges = [.. Numbers("E")], terminals = [.. Numbers("T")];
        int nodes = Numbers("Nodes").Single()[0];
        int[] costs = [.. Enumerable.Repeat(0, nodes), .. edges.Select(edge => edge[2])];
        List<int>[] neighbours = [.. costs.Select(_ => new List<int>())];
        for (int site = nodes; site < costs.Length; site++)
        {
            foreach (int end in edges[site - nodes][..2])
            {
                neighbours[site].Add(end - 1);
                neighbours[end - 1].Add(site);
            }
        }

        int[] wanted = [.. terminals.Select(terminal => terminal[0] - 1)];
        return new(costs, [.. costs.Select(_ => true)], [.. neighbours.Select(list => list.ToArray())], wanted[0], wanted[1..], hopLimit: int.MaxValue);

        IEnumerable<int[]> Numbers(string kind) =>
            lines.Where(line => line.Length > 1 && line[0] == kind).Select(line => line[1..].Select(InstanceFiles.Number).ToArray());
    }
}
