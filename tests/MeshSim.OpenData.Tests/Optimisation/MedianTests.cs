using MeshSim.OpenData.Tests.Optimisation.Medians;

namespace MeshSim.OpenData.Tests.Optimisation;

/// <summary>
/// The uncapacitated p-median instances of the OR-Library (J. E. Beasley, 1985 and 1990): every node is a client and a site, and serving
/// costs the length of the shortest way.
/// </summary>
public sealed class MedianTests
{
    private const string Folder = "pmed";
    private const int Instances = 40;

    // The hardest, pmed36, takes some five hundred.
    private const int Nodes = 10_000;

    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, Instances)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void The_sites_found_cost_the_published_optimum_and_are_proven(int number)
    {
        string name = FormattableString.Invariant($"pmed{number}");
        MedianProblem problem = Read(InstanceFiles.Of(Folder, name + ".txt"));
        int published = InstanceFiles.Table(InstanceFiles.Of(Folder, "pmedopt.txt"), ' ', name: 0, value: 1)[name];

        MedianSolution solution = MedianSearch.Solve(problem, Nodes);

        solution.Sites.Should().OnlyHaveUniqueItems().And.HaveCount(problem.Count);
        problem.CostOf(solution.Sites).Should().Be(published);
        solution.Cost.Should().Be(published);
        solution.LowerBound.Should().Be(published, "it must be proven");
    }

    [Fact]
    public void No_instance_is_left_out() =>
        InstanceFiles.NamesIn(Folder, "pmed*.txt").Except(["pmedopt"]).Should().HaveCount(Instances);

    /// <summary>Numbers of nodes, edges and sites to choose, then "end end length" per edge. Of edges given twice the last one counts.</summary>
    private static MedianProblem Read(string file)
    {
        int[] numbers = InstanceFiles.Numbers(file);
        int nodes = numbers[0];
        Dictionary<(int, int), int> lengths = [];
        foreach (int[] edge in numbers[3..].Chunk(3))
        {
            lengths[(edge[0] - 1, edge[1] - 1)] = edge[2];
            lengths[(edge[1] - 1, edge[0] - 1)] = edge[2];
        }

        List<(int Node, int Length)>[] neighbours = [.. Enumerable.Range(0, nodes).Select(_ => new List<(int, int)>())];
        foreach (((int from, int to), int length) in lengths) neighbours[from].Add((to, length));
        return new([.. Enumerable.Range(0, nodes).Select(node => ShortestWays(neighbours, node))], numbers[2]);
    }

    private static int[] ShortestWays(List<(int Node, int Length)>[] neighbours, int source)
    {
        int[] ways = new int[neighbours.Length];
        Array.Fill(ways, int.MaxValue);
        ways[source] = 0;
        PriorityQueue<int, int> queue = new([(source, 0)]);
        while (queue.TryDequeue(out int node, out int way))
        {
            if (way > ways[node]) continue;
            foreach ((int next, int length) in neighbours[node])
            {
                if (way + length >= ways[next]) continue;
                ways[next] = way + length;
                queue.Enqueue(next, way + length);
            }
        }

        return ways;
    }
}
