using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Placement.Robustness;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Tests.Wording;

public sealed class HubReviewWordsTests
{
    private static readonly PessimisticPlacement Same = new()
    {
        Repeaters = [],
        KeptOn = [],
        CostChange = 0,
        Fails = [],
        LostAsRecommended = [],
        IsSame = true,
        IsProven = true,
    };

    [Fact]
    public void Networks_of_which_the_same_is_said_are_named_together() =>
        Told(null, Same, Same).Should().ContainSingle().Which.Should().StartWith("plugs and lights: If exponent");

    [Fact]
    public void That_sites_are_not_compared_anew_is_said_where_something_changes()
    {
        const string Open = "All of that with the hub at the best site; whether another site would then be better is not worked out for so many.";
        Told(null, Same, Same with { LostAsRecommended = [new("lamp")] }).Should().HaveCount(3).And.EndWith(Open);
        Told(null, Same, Same with { IsSame = false, Repeaters = Samples.Home.Outlets }).Should().HaveCount(3).And.EndWith(Open);
    }

    [Fact]
    public void A_site_that_is_better_then_is_told_with_what_either_takes()
    {
        HubSite shed = Site(Samples.Home.Outlets[0], 60), present = Site(null, 80);
        string told = Told(new(shed, present), Same, Same).Last();
        told.Should().StartWith("In that case the hub is better at shed-wall").And.Contain("no repeater, cost 60.")
            .And.EndWith("At the site recommended here it is then no repeater, cost 80.");
        Told(new(shed, shed), Same, Same with { LostAsRecommended = [new("lamp")] }).Last().Should().Be("No other site of the hub is better in that case.");
        Told(new(shed, shed), Same, Same).Should().ContainSingle("nothing changes");
    }

    private static HubSite Site(Outlet? outlet, int cost) => new(outlet, cost, cost, [new(Samples.Network.Name, [], [], [], [], new(8), 0, 0, 0)]);

    private static IEnumerable<string> Told(PessimisticHub? sites, PessimisticPlacement plugs, PessimisticPlacement lights) => HubReviewWords.Pessimistic(new()
    {
        Zone = new() { Spare = [], Parts = [] },
        Networks = [new(Samples.Network.Name, null, null, plugs), new(new("lights"), null, null, lights)],
        Sites = sites,
    });
}
