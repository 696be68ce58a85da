using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Tests.Placement;

/// <summary>The whole way from a home to its recommendation, against routing over the home with routers plugged in.</summary>
public sealed class RepeaterPlacementTests
{
    private const int Homes = 240;

    [Fact]
    public void No_smaller_set_of_outlets_serves_a_small_home()
    {
        var counts = new List<int>();
        for (int seed = 0; seed < Homes; seed++)
        {
            (Home home, RepeaterPlacement placement, PluggedInHome oracle) = Place(seed);
            placement.Unserved.Select(unserved => unserved.Device).Should().Equal(oracle.Unservable, "seed {0}", seed);
            placement.Repeaters.Should().HaveCount(oracle.Count, "seed {0}", seed);
            placement.IsProven.Should().BeTrue("seed {0}", seed);
            placement.OutletsConsidered.Should().Be(home.Outlets.Length);
            placement.ServesAll.Should().Be(oracle.Unservable.Length == 0);
            oracle.OutOfReach(SubsetOf(home, placement.Repeaters)).Should().Equal(oracle.Unservable, "seed {0}", seed);
            counts.Add(placement.Repeaters.Length);
        }

        counts.Should().Contain([0, 1, 2, 3], "the homes must ask for several repeaters");
        counts.Count(count => count > 0).Should().BeGreaterThan(Homes / 4);
    }

    [Fact]
    public void Each_repeater_serves_the_devices_that_routing_loses_without_it()
    {
        for (int seed = 0; seed < Homes; seed++)
        {
            (Home home, RepeaterPlacement placement, PluggedInHome oracle) = Place(seed);
            foreach (PlacedRepeater repeater in placement.Repeaters)
            {
                DeviceId[] lost = oracle.OutOfReach(SubsetOf(home, placement.Repeaters.Remove(repeater)));
                repeater.Serves.Should().Equal(lost.Except(oracle.Unservable), "seed {0}", seed).And.NotBeEmpty();
            }
        }
    }

    [Fact]
    public void Both_margins_of_a_repeater_are_those_of_links_that_count()
    {
        for (int seed = 0; seed < Homes; seed++)
        {
            (Home home, RepeaterPlacement placement, _) = Place(seed);
            double designMarginDb = CoverageStudy.Run(home, home.Networks[0], new StudyOptions()).DesignMargin.Value;
            foreach (PlacedRepeater repeater in placement.Repeaters)
            {
                repeater.UplinkMargin.Value.Should().BeGreaterThanOrEqualTo(designMarginDb);
                repeater.DownlinkMargin.Value.Should().BeGreaterThanOrEqualTo(designMarginDb);
            }

            // A shortfall is what a link lacks, so there is always some.
            foreach (UnservedDevice unserved in placement.Unserved)
                if (unserved.Shortfall is { } shortfall) shortfall.Value.Should().BePositive();
        }
    }

    private static (Home Home, RepeaterPlacement Placement, PluggedInHome Oracle) Place(int seed)
    {
        Home home = RandomHomes.Of(seed);
        NetworkCoverage coverage = CoverageStudy.Run(home, home.Networks[0], new StudyOptions());
        return (home, CoverageStudy.Repeaters(coverage, new() { Goals = PlacementGoals.OneWayEveryday }), new PluggedInHome(home, home.Networks[0]));
    }

    private static int SubsetOf(Home home, IEnumerable<PlacedRepeater> repeaters) =>
        ExhaustivePlacement.SubsetOf(repeaters.Select(repeater => home.Outlets.IndexOf(repeater.Outlet)));
}
