using MeshSim.Placement;

namespace MeshSim.OpenData.Tests.Optimisation;

/// <summary>
/// Weighted set cover from the OR-Library (J. E. Beasley, 1990), a row of which is a cut and a column of which is an outlet: the master
/// of the placement alone must reach the published optimum and prove it.
/// </summary>
public sealed class SetCoverTests
{
    private const string Folder = "scp";
    private const int Instances = 35;

    // More than any of them needs.
    private const int Nodes = 1_000_000;

    public static TheoryData<string> Names =>
    [
        .. Numbered("scp4", 10), .. Numbered("scp5", 10), .. Numbered("scp6", 5), .. Numbered("scpa", 5), .. Numbered("scpe", 5),
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_master_finds_and_proves_the_published_optimum(string name)
    {
        (int[] costs, int[][] rows) = Read(InstanceFiles.Of(Folder, name + ".txt"));
        int published = InstanceFiles.Table(InstanceFiles.Of(Folder, "optima.csv"), ',', name: 0, value: 1)[name];

        using HittingSetMaster master = new(costs, exactly: null, [.. costs.Select(_ => true)]);
        foreach (int[] row in rows) master.Add(Cut.One(row));
        MasterAnswer answer = master.Solve(below: null, Nodes);

        answer.Outlets.Should().NotBeNull();
        rows.Should().OnlyContain(row => row.Intersect(answer.Outlets!).Any(), "every row must be hit");
        answer.Outlets!.Sum(column => costs[column]).Should().Be(published);
        ((int)Math.Ceiling(answer.LowerBound - CutSearch.SolverTolerance)).Should().Be(published, "it must be proven");
    }

    [Fact]
    public void No_instance_is_left_out() =>
        InstanceFiles.NamesIn(Folder, "scp*.txt").Should().HaveCount(Instances).And.BeEquivalentTo(Names.Select(row => row.Data));

    private static IEnumerable<string> Numbered(string prefix, int count) =>
        Enumerable.Range(1, count).Select(number => FormattableString.Invariant($"{prefix}{number}"));

    /// <summary>Numbers of rows and columns, the costs of the columns, then per row how many columns hit it and which, from 1.</summary>
    private static (int[] Costs, int[][] Rows) Read(string file)
    {
        int[] numbers = InstanceFiles.Numbers(file);
        int[][] rows = new int[numbers[0]][];
        int[] costs = numbers[2..(2 + numbers[1])];
        int at = 2 + costs.Length;
        for (int row = 0; row < rows.Length; row++)
        {
            int count = numbers[at++];
            rows[row] = [.. numbers[at..(at + count)].Select(column => column - 1).Order()];
            at += count;
        }

        return (costs, rows);
    }
}
