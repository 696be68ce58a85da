using MeshSim.Cli.Tables;
using MeshSim.Placement.Concessions;
using MeshSim.Quantities;

namespace MeshSim.Cli.Tests.Tables;

public sealed class ConcessionTableTests
{
    private static readonly Decibels Planned = new(14);
    private static readonly Concession Weak = Margin(0.1, 0.505) with { IsAdvisable = false };

    [Fact]
    public void A_margin_that_is_none_to_plan_with_is_told_below_the_table_and_not_offered()
    {
        Table table = ConcessionTable.Of(Told(Margin(6.8, 0.872), Weak), Planned);

        table.Rows.Should().ContainSingle().Which[0].Should().Be("7.2 dB less margin (6.8 dB, holds in 87.2 % of cases)");
        table.Notes.Should().Equal(
            "Not advisable: 13.9 dB less margin (0.1 dB, holds in 50.5 % of cases) would leave out nobody, but below 70 % of cases a link is none to plan with.");
    }

    [Fact]
    public void What_helps_nobody_is_said_to_help_nobody_advisable_or_not()
    {
        Table table = ConcessionTable.Of(Told(Weak with { Unserved = [new("shed-sensor")] }), Planned);

        table.Rows.Should().BeEmpty();
        table.Notes.Should().Equal("Giving in on these would help nobody: 13.9 dB less margin (0.1 dB, holds in 50.5 % of cases).");
    }

    [Fact]
    public void Notes_on_what_is_offered_need_it_to_be_offered()
    {
        Concession two = Margin(6.8, 0.872) with { Kind = ConcessionKind.TwoAtAnOutlet, Doubled = [new("hall")], DesignMargin = null };
        ConcessionTable.Of(Told(two), Planned).Notes.Should().ContainSingle().Which.Should().StartWith("Two repeaters at an outlet share its fuse");
        ConcessionTable.Of(Told(Margin(6.8, 0.872)), Planned).Notes.Should().BeEmpty();
    }

    private static Infeasibility Told(params Concession[] concessions) =>
        new() { Network = new("plugs"), Devices = [new("shed-sensor")], Obstacles = [], Concessions = [.. concessions] };

    private static Concession Margin(double marginDb, double availability) => new()
    {
        Kind = ConcessionKind.LeastMargin,
        DesignMargin = new(marginDb),
        Availability = availability,
        Unserved = [],
        Repeaters = 3,
        Cost = 60,
        IsProven = true,
    };
}
