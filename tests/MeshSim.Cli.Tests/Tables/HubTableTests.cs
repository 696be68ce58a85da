using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Placement;

namespace MeshSim.Cli.Tests.Tables;

public sealed class HubTableTests
{
    private static readonly HubPlacement Hub = new()
    {
        Networks = [Samples.Network.Name],
        Goals = new() { HoldStates = true },
        StatesHeld = ["fuse"],
        SitesConsidered = 2,
        OutletsSwitchedOff = 3,
        Apart = [],
        Sites = [Site(Samples.Placement.Repeaters[0].Outlet, 60, []), Site(null, 0, ["fuse"])],
    };

    [Fact]
    public void A_site_that_a_state_leaves_without_power_is_named_below_the_table() =>
        HubTable.Of(Hub).Notes.Should().Contain("No power at the hub in fuse: (as now). No device has a way then.");

    [Fact]
    public void Outlets_that_are_no_sites_are_counted()
    {
        HubTable.Of(Hub).Notes.Should().Contain("3 outlets not considered: switched off in a state that need not hold here.");
        HubTable.Of(Hub with { OutletsSwitchedOff = 0 }).Notes.Should().NotContain(note => note.Contains("not considered"));
    }

    [Fact]
    public void The_answer_says_why_the_present_site_serves_nobody_then() =>
        HubWords.Answer(Hub).Should().StartWith("Move the hub to shed-wall")
            .And.Contain("no repeater, cost 0, 1 device with a way but not all that is asked, with no power there in fuse");

    [Fact]
    public void Sites_that_might_have_been_listed_are_counted_below_the_table()
    {
        HubTable.Of(Hub).Notes.Should().NotContain(note => note.Contains("too many", StringComparison.Ordinal));
        HubTable.Of(Hub with { SitesLeftOut = 277 }).Notes.Should().ContainSingle(note => note.StartsWith("277 sites might come before the last one listed", StringComparison.Ordinal));
    }

    private static HubSite Site(Outlet? outlet, int cost, string[] darkIn) => new(
        outlet, cost, cost, [new(Samples.Network.Name, [], [], darkIn.Length == 0 ? [] : [new("shed-sensor")], [], new(8), 0, 0, 0) { DarkIn = [.. darkIn] }]);
}
