using MeshSim.Cli.Tables;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Tables;

public sealed class LadderTableTests
{
    private static readonly Rung Bottom = new(0, [], new(1, 0, 5), true, [], new(1, 0, 5));
    private static readonly Rung First = new(1, [0], new(2, 1, 10), true, [0], new(2, 1, 10));

    [Fact]
    public void Where_both_ways_of_buying_end_up_alike_the_column_is_left_out_and_said_so()
    {
        Table table = LadderTable.Of(Ladder(Bottom, First, First with { Count = 2 }));
        table.Columns.Should().NotContain(column => column.Heading == "Bought");
        table.Rows.Should().HaveCount(3).And.OnlyContain(row => row.Length == table.Columns.Length);
        table.Notes.Should().ContainSingle().Which.Should().EndWith("Bought one by one, each as the best next one, they end up in the same outlets.");
    }

    [Fact]
    public void Where_they_part_each_line_tells_how_it_was_bought()
    {
        Rung parted = First with { Count = 2, Outlets = [], Best = new(2, 2, 10) };
        Table table = LadderTable.Of(Ladder(Bottom, First, parted));
        int bought = table.Columns.Select(column => column.Heading).ToList().IndexOf("Bought");
        table.Rows.Select(row => row[bought]).Should().Equal("either way", "either way", "at once", "one by one");
    }

    private static RepeaterLadder Ladder(params Rung[] rungs) =>
        new() { Network = Samples.Network.Name, Outlets = Samples.Home.Outlets, Devices = 2, Points = 10, Rungs = [.. rungs] };
}
