using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Wording;

public sealed class HubWordsTests
{
    private static readonly HubSite Present = new(null, 0, 0, [new(Samples.Network.Name, [], [], [], [], new(20), 0, 0, 0)]);

    private static readonly HubPlacement Hub = new()
    {
        Networks = [Samples.Network.Name],
        Goals = PlacementGoals.Default,
        StatesHeld = [],
        Sites = [Present],
        SitesConsidered = 3,
        OutletsSwitchedOff = 0,
        Apart = [new([Samples.Network.Name], Present)],
    };

    [Fact]
    public void The_best_of_several_sites_is_said_to_be_that() =>
        HubWords.Answer(Hub).Should().Be("Leave the hub where it is: no repeater, cost 0 (no other of 3 sites is better).");

    [Fact]
    public void Of_sites_that_were_not_all_compared_no_more_is_said_than_is_proven() =>
        HubWords.Answer(Hub with { SitesConsidered = 601, SitesLeftOut = 512 })
            .Should().Be("Leave the hub where it is: no repeater, cost 0 (none of 601 sites serves more devices, or as many for less).");

    [Fact]
    public void A_lone_site_is_not_called_the_best_of_several() =>
        HubWords.Answer(Hub with { SitesConsidered = 1 }).Should().Be("Leave the hub where it is: no repeater, cost 0 (there is no other site to try).");

    [Fact]
    public void Sites_that_may_be_better_are_counted_with_what_they_cost_at_least() =>
        HubWords.Answer(Hub with { Sites = [Present with { Cost = 80, LowerBound = 80 }], SitesConsidered = 601, Open = new(45, 0, 0, 60) })
            .Should().Be("Leave the hub where it is: no repeater, cost 80 (45 of 601 sites may be better, but none costs less than 60).");

    [Fact]
    public void A_cost_that_is_not_proven_to_be_the_least_is_said_to_be_that_or_less() =>
        HubWords.Answer(Hub with { Sites = [Present with { Cost = 80, LowerBound = 60 }] })
            .Should().Be("Leave the hub where it is: no repeater, cost 80 or less (no other of 3 sites is better).");

    [Fact]
    public void Sites_that_may_serve_more_are_counted_with_whom_they_leave_out_at_least()
    {
        HubSite without = Present with { Networks = [Present.Networks[0] with { OutOfReach = [new("a"), new("b")], Unserved = [new("a"), new("b"), new("c")] }] };
        HubPlacement hub = Hub with { Sites = [without] };
        HubWords.Answer(hub with { Open = new(2, 1, 1, 0) }).Should().EndWith("(2 of 3 sites may be better, but none leaves fewer than 1 device without a way).");
        HubWords.Answer(hub with { Open = new(2, 2, 2, 0) }).Should().EndWith("(2 of 3 sites may be better, but none leaves fewer than 2 devices without all that is asked).");
    }

    [Fact]
    public void Whom_the_best_site_leaves_out_is_named_network_by_network()
    {
        HubNetwork plugs = Present.Networks[0] with { OutOfReach = [new("a")], Unserved = [new("a"), new("b"), new("c")] };
        HubSite here = Present with { Networks = [plugs, plugs with { Network = new("lights"), OutOfReach = [], Unserved = [new("d")] }] };
        HubWords.Left(Hub with { Sites = [here] }).Should().Equal(
            "No way with the hub where it is: plugs: a.",
            "Not all that is asked with the hub where it is: plugs: b and c; lights: d.",
            "repeaters tells why, and what giving in would help.");
        HubWords.Left(Hub with { Sites = [here with { Outlet = Samples.Home.Outlets[0] }, Present] }).Should().HaveCount(3)
            .And.EndWith("repeaters tells why, and what giving in would help, when run on what --apply writes.");
        HubWords.Left(Hub).Should().BeEmpty();
    }

    [Fact]
    public void Two_ways_are_asked_of_a_mesh() => Basis(Topology.Mesh).Should().Contain("Asked for: two ways to each device");

    [Fact]
    public void In_a_star_there_is_one_way_to_ask_for() => Basis(Topology.Star).Should().Contain("Asked for: a way to each device");

    private static string Basis(Topology topology)
    {
        Network network = Samples.Network with { Radio = Samples.Network.Radio with { Topology = topology } };
        return HubWords.Basis(Samples.Home with { Networks = [network] }, new StudyOptions(), Hub);
    }
}
