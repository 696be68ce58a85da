using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Tests.Placement;

/// <summary>The hub in homes whose states turn its circuit off: every site is tried with every subset of outlets, and routing judges.</summary>
public sealed class PoweredPlacesTests
{
    private const int Homes = 60;

    private static readonly StudyOptions Held = new() { Goals = new() { Ways = 1 } };

    [Fact]
    public void The_best_site_is_the_best_of_all_sites_in_all_states()
    {
        int movedAway = 0, darkSites = 0, bestIsDark = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = TrippedHomes.Of(seed);
            Network network = home.Networks[0];
            HubPlacement hub = HubStudy.Run(home, [network], [], Held);
            var all = home.Outlets.Prepend<Outlet?>(null).Select(site =>
            {
                Home there = site is null ? home : new MoveCoordinator(network.Coordinator, site).On(home);
                HeldHomeTrial tried = new(there);
                return (Site: site, OutOfReach: tried.OutOfReachEveryday, tried.Unserved, Cost: (site is null ? 0 : home.Costs.HubMove) + tried.Cost, DarkIn: DarkIn(there));
            }).ToList();

            hub.SitesConsidered.Should().Be(all.Count);
            (hub.Best.OutOfReach, hub.Best.Unserved, hub.Best.Cost).Should().Be(all.Select(site => (site.OutOfReach, site.Unserved.Length, site.Cost)).Min(), "seed {0}", seed);
            foreach (HubSite site in hub.Sites)
            {
                var tried = all.Single(other => other.Site == site.Outlet);
                site.IsProven.Should().BeTrue();
                site.Networks[0].Unserved.Select(device => device.Value).Should().Equal(tried.Unserved, "seed {0}", seed);
                site.Cost.Should().Be(tried.Cost, "seed {0}", seed);
                site.DarkIn.Should().Equal(tried.DarkIn, "seed {0}", seed);
            }

            movedAway += !hub.Present.DarkIn.IsEmpty && hub.Best.DarkIn.IsEmpty ? 1 : 0;
            bestIsDark += hub.Best.DarkIn.IsEmpty ? 0 : 1;
            darkSites += all.Count(site => site.DarkIn.Length > 0);
        }

        movedAway.Should().BeGreaterThan(Homes / 4);
        bestIsDark.Should().BePositive();
        darkSites.Should().BeGreaterThan(2 * Homes);
    }

    [Fact]
    public void What_a_site_needs_is_what_repeaters_say_once_the_hub_is_there()
    {
        StudyOptions options = new() { Goals = new() { Ways = 2, HoldStates = true } };
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = TrippedHomes.Of(seed);
            Network network = home.Networks[0];
            foreach (HubSite site in HubStudy.Run(home, [network], [], options).Sites)
            {
                Home there = site.Outlet is { } outlet ? new MoveCoordinator(network.Coordinator, outlet).On(home) : home;
                RepeaterPlacement placement = CoverageStudy.Repeaters(CoverageStudy.Run(there, network, new()), options);
                HubNetwork needed = site.Networks.Single();
                needed.Repeaters.Should().Equal(placement.Repeaters.Select(repeater => repeater.Outlet), "seed {0}", seed);
                needed.KeptOn.Should().Equal(placement.KeptOn.Select(kept => kept.Device), "seed {0}", seed);
                needed.Unserved.Should().BeEquivalentTo(placement.Unserved.Select(unserved => unserved.Device).Distinct(), "seed {0}", seed);
                needed.DarkIn.Should().Equal(placement.CoordinatorOff.Select(outage => outage.State), "seed {0}", seed);
                needed.Cost.Should().Be(placement.Cost, "seed {0}", seed);
            }
        }
    }

    [Fact]
    public void A_hub_that_the_state_planned_for_turns_off_is_moved_to_where_it_is_fed()
    {
        int moved = 0;
        for (int seed = 0; seed < Homes; seed += 4)
        {
            Home home = TrippedHomes.Of(seed);
            StudyOptions options = new() { State = home.States[0], Goals = PlacementGoals.OneWayEveryday };
            HubPlacement hub = HubStudy.Run(home, home.Networks, [], options);
            hub.Present.DarkIn.Should().Equal("front trips");
            hub.Present.Networks[0].Unserved.Should().Equal(home.Devices.Skip(1).Where(device => device.Circuit != "front").Select(device => device.Id));
            hub.Sites.Should().NotContain(site => site.Outlet != null && (site.DarkIn.Length > 0 || site.Outlet.Circuit != null));
            moved += hub.Best.Outlet is null ? 0 : 1;
        }

        moved.Should().BePositive();
    }

    [Fact]
    public void Losing_everybody_in_two_states_counts_each_device_once()
    {
        Home home = TrippedHomes.Of(0) with { Outlets = [] };
        ImmutableArray<State> states = [home.States[0], home.States[0] with { Name = "front trips again" }];
        HubPlacement hub = HubStudy.Run(home with { States = states }, home.Networks, [], Held);
        hub.Best.DarkIn.Should().Equal("front trips", "front trips again");
        hub.Best.Networks[0].Unserved.Should().OnlyHaveUniqueItems();
    }

    private static string[] DarkIn(Home home) => [.. home.States.Where(state => state.TurnsOff(home.Devices[0])).Select(state => state.Name)];
}
