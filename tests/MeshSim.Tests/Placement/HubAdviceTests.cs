using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Tests.Placement;

/// <summary>Sites of the hub against moving it there and trying every subset of the outlets by routing.</summary>
public sealed class HubAdviceTests
{
    private const int Homes = 60;

    [Fact]
    public void The_best_site_is_the_best_of_all_sites_and_subsets()
    {
        int moved = 0, tried = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = RandomHomes.Of(seed) with { Costs = new() { HubMove = 10 * (seed % 3) } };
            Network network = home.Networks[0];
            HubPlacement hub = HubStudy.Run(home, [network], [], new() { Goals = PlacementGoals.OneWayEveryday });
            var all = SitesOf(home).Select(site =>
            {
                PluggedInHome tryOut = new(site is null ? home : new MoveCoordinator(network.Coordinator, site).On(home), network);
                return (Site: site, Unserved: tryOut.Unservable.Length, Cost: (site is null ? 0 : home.Costs.HubMove) + (tryOut.Count * home.Costs.Repeater));
            }).ToList();
            tried += all.Count;

            hub.SitesConsidered.Should().Be(all.Count);
            (hub.Best.Unserved, hub.Best.Cost).Should().Be(all.Select(site => (site.Unserved, site.Cost)).Min(), "seed {0}", seed);
            foreach (HubSite site in hub.Sites)
            {
                site.IsProven.Should().BeTrue();
                site.OutOfReach.Should().Be(site.Unserved, "nothing but a way everyday was asked");
                (site.Unserved, site.Cost).Should().Be(all.Where(other => other.Site == site.Outlet).Select(other => (other.Unserved, other.Cost)).Single(), "seed {0}", seed);
            }

            moved += hub.Best.Outlet is null ? 0 : 1;
        }

        moved.Should().BeGreaterThan(Homes / 10);
        tried.Should().BeGreaterThan(5 * Homes);
    }

    [Fact]
    public void What_a_site_needs_is_what_repeaters_say_once_the_hub_is_there()
    {
        PlacementGoals goals = PlacementGoals.Default;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = HeldHomes.Of(seed);
            Network network = home.Networks[0];
            foreach (HubSite site in HubStudy.Run(home, [network], [], new() { Goals = goals }).Sites)
            {
                Home there = site.Outlet is { } outlet ? new MoveCoordinator(network.Coordinator, outlet).On(home) : home;
                RepeaterPlacement placement = CoverageStudy.Repeaters(CoverageStudy.Run(there, network, new()), new() { Goals = goals });
                HubNetwork needed = site.Networks.Should().ContainSingle().Subject;
                needed.Repeaters.Should().Equal(placement.Repeaters.Select(repeater => repeater.Outlet), "seed {0}", seed);
                needed.KeptOn.Should().Equal(placement.KeptOn.Select(kept => kept.Device), "seed {0}", seed);
                needed.Unserved.Should().BeEquivalentTo(placement.Unserved.Select(unserved => unserved.Device).Distinct(), "seed {0}", seed);
                needed.OutOfReach.Should().BeEquivalentTo(placement.Unserved.Where(unserved => unserved.Case == default).Select(unserved => unserved.Device), "seed {0}", seed);
                needed.Cost.Should().Be(placement.Cost, "seed {0}", seed);
            }
        }
    }

    [Fact]
    public void Sites_come_best_first_and_the_present_one_is_among_them()
    {
        for (int seed = 0; seed < Homes; seed++)
        {
            HubPlacement hub = HubStudy.Run(RandomHomes.Of(seed), RandomHomes.Of(seed).Networks, [], new());
            hub.Sites.SkipLast(1).Select(site => (site.OutOfReach, site.Unserved, site.Cost)).Should().BeInAscendingOrder("seed {0}", seed);
            hub.Sites.Should().ContainSingle(site => site.Outlet == null);
            hub.Present.Cost.Should().Be(hub.Present.Repeaters * 20);
        }
    }

    [Fact]
    public void Two_networks_together_pay_one_move_and_apart_never_cost_more()
    {
        int apartBetter = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = WithSecondNetwork(RandomHomes.Of(seed), seed);
            HubPlacement both = HubStudy.Run(home, home.Networks, [], new());
            HubPlacement[] alone = [.. home.Networks.Select(network => HubStudy.Run(home, [network], [], new()))];
            foreach (HubSite site in both.Sites)
            {
                int parts = site.Networks.Sum(network => network.Cost);
                site.Cost.Should().Be(parts + (site.Outlet is null ? 0 : home.Costs.HubMove));
            }

            var apart = (both.Apart.Sum(group => group.Site.OutOfReach), both.Apart.Sum(group => group.Site.Unserved), both.ApartCost);
            var each = (alone.Sum(hub => hub.Best.OutOfReach), alone.Sum(hub => hub.Best.Unserved), alone.Sum(hub => hub.Best.Cost));
            apart.Should().Be(new[] { each, (both.Best.OutOfReach, both.Best.Unserved, both.Best.Cost) }.Min(), "seed {0}", seed);
            apartBetter += both.IsApartBetter ? 1 : 0;
        }

        apartBetter.Should().BePositive();
    }

    [Fact]
    public async Task Several_at_once_get_the_same_answer()
    {
        Home home = HeldHomes.Of(7);
        StudyOptions options = new() { Goals = PlacementGoals.Default };
        HubPlacement alone = HubStudy.Run(home, home.Networks, [], options);
        HubPlacement[] together = await Task.WhenAll(
            Enumerable.Range(0, 4).Select(_ => Task.Run(() => HubStudy.Run(home, home.Networks, [], options), TestContext.Current.CancellationToken)));
        together.Should().AllSatisfy(hub => hub.Should().BeEquivalentTo(alone));
    }

    [Fact]
    public void Only_outlets_of_the_rooms_named_are_sites()
    {
        Home home = RandomHomes.Of(1);
        ImmutableArray<Outlet> outlets = [.. home.Outlets.Select((outlet, i) => outlet with { Room = new(i % 2 == 0 ? "left" : "right") })];
        HubSites.In(home with { Outlets = outlets }, [new("left")], []).Should().Equal(outlets.Where((_, i) => i % 2 == 0));
        HubSites.In(home with { Outlets = outlets }, [], []).Should().Equal(outlets);
    }

    [Fact]
    public void An_outlet_that_a_state_switches_off_is_no_site()
    {
        Home home = RandomHomes.Of(1);
        Outlet switched = home.Outlets[0] with { Circuit = "ring" };
        Home changed = home with { Outlets = home.Outlets.SetItem(0, switched), States = [new() { Name = "fuse", CircuitsOff = ["ring"] }] };
        HubSites.In(changed, [], []).Should().Equal(home.Outlets.Skip(1));
    }

    [Fact]
    public void An_outlet_that_only_a_counted_state_switches_off_is_a_site()
    {
        Home home = RandomHomes.Of(1);
        ImmutableArray<Outlet> outlets = [home.Outlets[0] with { Circuit = "ring" }, home.Outlets[1] with { Circuit = "garden" }];
        State fuse = new() { Name = "fuse", CircuitsOff = ["ring"] }, winter = new() { Name = "winter", CircuitsOff = ["garden"] };
        Home changed = home with { Outlets = outlets, States = [fuse, winter] };
        HubSites.In(changed, [], [fuse]).Should().Equal(outlets[0]);
        HubSites.In(changed, [], [fuse, winter]).Should().Equal(outlets);
    }

    private static IEnumerable<Outlet?> SitesOf(Home home) => home.Outlets.Prepend(null);

    private static Home WithSecondNetwork(Home home, int seed)
    {
        Home other = RandomHomes.Of(seed + Homes);
        Network second = home.Networks[0] with { Name = new("second"), Coordinator = new("second-d00") };
        return home with
        {
            Costs = new() { HubMove = 5 },
            Networks = [home.Networks[0], second],
            Devices =
            [
                .. home.Devices,
                .. other.Devices.Select(
                    device =>
                        device with
                        {
                            Id = new($"second-{device.Id}"),
                            Network = second.Name,
                            Point = home.Devices[device.Id.Value.Length % home.Devices.Length].Point with { X = device.Point.X },
                        }),
            ],
        };
    }
}
