using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Placement.Robustness;
using MeshSim.Studies;
using MeshSim.Studies.Sites;
using MeshSim.Tests.Architecture;
using MeshSim.Tests.Placement.Zones;

namespace MeshSim.Tests.Studies;

/// <summary>Sites of a hub in a house that is dearer than computed.</summary>
public sealed class HubStudyTests
{
    private const int Rows = 60;

    [Fact]
    public void In_the_open_the_pessimistic_site_is_the_best_one_of_a_home_of_a_larger_exponent()
    {
        int other = 0;
        for (int seed = 0; seed < Rows; seed++)
        {
            // Without walls and mountings the exponent is all that can be dearer.
            Random random = new(seed);
            Home home = PlacedHomes.Row(hopLimit: 4, Metres(random, 3, 220), Metres(random, 5, 220)) with { Costs = new() { HubMove = 10 * (seed % 3) } };
            Home dearer = home with { Parameters = home.Parameters with { Exponent = home.Parameters.Exponent + MarginUncertainties.ExponentDeviation } };
            StudyOptions options = new() { Goals = seed % 2 == 0 ? PlacementGoals.OneWayEveryday : PlacementGoals.Default };
            HubPlacement computed = HubStudy.Run(home, home.Networks, [], options), then = HubStudy.Run(dearer, home.Networks, [], options);

            PessimisticHub pessimistic = HubStudy.InPessimisticCase(home, computed, [], options)!;

            Rank(pessimistic.Best).Should().Be(Rank(then.Best), "seed {0}", seed);
            pessimistic.Best.Outlet.Should().Be(then.Best.Outlet, "seed {0}", seed);
            pessimistic.AsRecommended.Outlet.Should().Be(computed.Best.Outlet);
            pessimistic.IsOther.Should().Be(Rank(pessimistic.AsRecommended).CompareTo(Rank(then.Best)) > 0, "seed {0}", seed);
            other += pessimistic.IsOther ? 1 : 0;
        }

        other.Should().BeInRange(Rows / 10, Rows * 9 / 10);
    }

    [Fact]
    public void On_quay_terrace_each_site_needs_what_the_pessimistic_case_says_once_the_hub_is_there()
    {
        Home home = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;
        StudyOptions options = new();
        ImmutableArray<Network> plugs = [home.Networks[0]];
        HubPlacement hub = HubStudy.Run(home, plugs, [], options);
        foreach (HubSite site in hub.Sites)
        {
            HubSite dearer = HubStudy.InPessimisticCase(home, hub with { Sites = [site] }, [], options)!.AsRecommended;
            Home there = FollowedAdvice.WithHubAt(home, hub.Networks, site.Outlet);
            Network network = there.Networks[0];
            SurveyedPlacement placed = SurveyedPlacement.Of(
                there, network, new(there, network, options.Model), null, options.Goals, site.Networks[0].Repeaters, site.Networks[0].KeptOn)!;
            PessimisticPlacement once = PessimisticCase.Solve(placed);
            dearer.Networks[0].Repeaters.Should().Equal(once.Repeaters);
            dearer.Networks[0].KeptOn.Should().Equal(once.KeptOn);
            (dearer.Cost - site.Cost).Should().Be(once.CostChange);
            dearer.Networks[0].Unserved.Should().BeEquivalentTo(site.Networks[0].Unserved.Union(once.Fails.Select(fail => fail.Device)));
        }
    }

    [Fact]
    public void Where_the_sites_are_too_many_it_is_not_worked_out()
    {
        Home home = PlacedHomes.Row(hopLimit: 4, [150], [50, 100]);
        HubPlacement hub = HubStudy.Run(home, home.Networks, [], new(), new() { SitesSize = 0 });
        HubStudy.InPessimisticCase(home, hub, [], new()).Should().BeNull();
    }

    private static double[] Metres(Random random, int count, int most) => [.. Enumerable.Range(0, count).Select(_ => (double)random.Next(10, most))];

    private static (int OutOfReach, int Unserved, int Cost) Rank(HubSite site) => (site.OutOfReach, site.Unserved, site.Cost);
}
