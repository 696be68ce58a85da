using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Placement;
using MeshSim.Placement.Concessions;
using MeshSim.Quantities;
using MeshSim.Radio;
using MeshSim.Studies;
using MeshSim.Studies.Sites;
using MeshSim.Tests.Mesh;
using MeshSim.Tests.Placement;
using MeshSim.Tests.Radio;

namespace MeshSim.Tests.Studies;

/// <summary>Each concession against asking anew in a home, or for goals, in which it is made.</summary>
public sealed class ConcessionStudyTests
{
    private const int Homes = 40;
    private static readonly PlacementGoals Goals = PlacementGoals.Default;

    [Fact]
    public void Each_concession_comes_to_what_asking_anew_comes_to()
    {
        Dictionary<ConcessionKind, int> met = [];
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = WithSecondNetwork(HeldHomes.Of(seed));
            Infeasibility told = Tell(home, Goals);
            told.Devices.Should().Equal(InOrder(home, Place(home, home.Networks[0], Goals).Unserved), "seed {0}", seed);
            foreach (Concession concession in told.Concessions)
            {
                met[concession.Kind] = met.GetValueOrDefault(concession.Kind) + 1;
                if (concession.Kind == ConcessionKind.OtherNetwork) Exchanged(home, told, concession);
                else Anew(home, concession, seed);
            }
        }

        met.Keys.Should().BeEquivalentTo(Enum.GetValues<ConcessionKind>(), "each kind must occur");
    }

    [Fact]
    public void Second_outlets_beside_those_that_take_two_are_all_that_is_missing()
    {
        int offered = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = HeldHomes.Of(seed);
            Infeasibility told = Tell(home, Goals);
            bool hangs = told.Obstacles.Any(obstacle => obstacle.Case.IsRepeaterLost);
            Concession? two = told.Concessions.FirstOrDefault(concession => concession.Kind == ConcessionKind.TwoAtAnOutlet);
            (two is not null).Should().Be(hangs, "seed {0}: it is offered where somebody hangs on a repeater", seed);
            if (two is null) continue;

            Home changed = WithSecondOutlets(home, home.Outlets.Where(outlet => two.Doubled.Contains(outlet.Id)));
            RepeaterPlacement placement = Place(changed, changed.Networks[0], Goals);
            placement.Cost.Should().Be(two.Cost, "seed {0}", seed);
            placement.Unserved.Should().NotContain(unserved => unserved.Case.IsRepeaterLost, "seed {0}", seed);
            told.Concessions.Where(concession => concession != two).Should().OnlyContain(concession => concession.Doubled.IsEmpty);
            offered++;
        }

        offered.Should().BeGreaterThan(Homes / 8);
    }

    [Fact]
    public void Once_repeaters_are_plugged_in_one_more_beside_those_that_somebody_hangs_on_is_offered()
    {
        int offered = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = HeldHomes.Of(seed);
            Home applied = Applied(home, Place(home, home.Networks[0], Goals));
            Infeasibility told = Tell(applied, Goals);
            Concession? two = told.Concessions.FirstOrDefault(concession => concession.Kind == ConcessionKind.TwoAtAnOutlet);
            string[] hungOn =
            [
                .. told.Obstacles.Select(obstacle => obstacle.Case.Lost).OfType<string>()
                    .Where(lost => lost.StartsWith("repeater-", StringComparison.Ordinal)).Distinct().Order(StringComparer.Ordinal),
            ];
            (two?.Beside ?? []).Select(device => device.Value).Should().Equal(hungOn, "seed {0}", seed);
            if (hungOn.Length == 0) continue;

            // Another repeater in each of these outlets, and in each that takes two another outlet: that, and what it costs, is all.
            RepeaterPlacement beside = Place(applied, applied.Networks[0], Goals) with { Repeaters = [.. two!.Beside.Select(InTheSameOutlet)], KeptOn = [] };
            Home changed = WithSecondOutlets(Applied(applied, beside), home.Outlets.Where(outlet => two.Doubled.Contains(outlet.Id)));
            RepeaterPlacement placement = Place(changed, changed.Networks[0], Goals);
            placement.Cost.Should().Be(two.Cost - (two.Beside.Length * home.Costs.Repeater), "seed {0}", seed);
            placement.Unserved.Select(unserved => unserved.Case.Lost).Should().NotContain(hungOn, "seed {0}", seed);
            InOrder(applied, placement.Unserved).Should().Equal(two.Unserved, "seed {0}", seed);
            offered++;

            PlacedRepeater InTheSameOutlet(DeviceId device) =>
                new() { Outlet = home.Outlets.First(outlet => device.Value == $"repeater-{outlet.Id}"), Serves = [], UplinkMargin = default, DownlinkMargin = default };
        }

        offered.Should().BeGreaterThan(Homes / 8);
    }

    [Fact]
    public void The_best_comes_first()
    {
        for (int seed = 0; seed < Homes; seed++)
        {
            ImmutableArray<Concession> concessions = Tell(HeldHomes.Of(seed), Goals).Concessions;
            concessions.Select(concession => (!concession.IsAdvisable, concession.Unserved.Length, concession.Cost, concession.Kind)).Should().BeInAscendingOrder("seed {0}", seed);
        }
    }

    [Fact]
    public void A_margin_at_which_links_hold_too_seldom_is_not_advisable()
    {
        Dictionary<bool, int> met = [];
        for (int seed = 0; seed < Homes; seed++)
        {
            foreach (Concession concession in Tell(HeldHomes.Of(seed), Goals).Concessions)
            {
                concession.IsAdvisable.Should().Be(concession.Availability is not { } share || share >= Infeasibility.LeastAvailability, "seed {0} {1}", seed, concession.Kind);
                if (concession.Kind == ConcessionKind.LeastMargin) met[concession.IsAdvisable] = met.GetValueOrDefault(concession.IsAdvisable) + 1;
            }
        }

        met.Keys.Should().BeEquivalentTo([true, false], "both must occur");
    }

    [Fact]
    public void Fading_that_is_planned_for_asks_for_more_margin_before_it_is_advisable()
    {
        (int advisable, int refused) = (0, 0);
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = HeldHomes.Of(seed), faded = home with { Parameters = home.Parameters with { Fading = Fading.Rayleigh } };
            Decibels least = FadingMargin.Suzuki(faded.Parameters.Shadowing, Infeasibility.LeastAvailability);
            least.Should().BeGreaterThan(FadingMargin.LogNormal(faded.Parameters.Shadowing, Infeasibility.LeastAvailability));
            foreach (Concession concession in Tell(faded, Goals).Concessions.Where(concession => concession.DesignMargin is not null))
            {
                concession.Availability.Should().BeNull();
                concession.IsAdvisable.Should().Be(concession.DesignMargin >= least, "seed {0} {1}", seed, concession.Kind);
                if (concession.IsAdvisable) advisable++;
                else refused++;
            }
        }

        Math.Min(advisable, refused).Should().BePositive();
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void The_least_margin_leaves_nobody_out(int ways)
    {
        int offered = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Infeasibility told = Tell(RandomHomes.Of(seed), PlacementGoals.OneWayEveryday with { Ways = ways });
            foreach (Concession concession in told.Concessions.Where(concession => concession.Kind == ConcessionKind.LeastMargin))
            {
                concession.Unserved.Should().BeEmpty("seed {0}", seed);
                concession.DesignMargin!.Value.Value.Should().BePositive();
                offered++;
            }
        }

        offered.Should().BePositive();
    }

    [Fact]
    public void Where_everything_can_be_had_there_is_nothing_to_give_in_on()
    {
        int served = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = RandomHomes.Of(seed);
            if (!Place(home, home.Networks[0], PlacementGoals.OneWayEveryday).ServesAll) continue;
            Infeasibility told = Tell(home, PlacementGoals.OneWayEveryday);
            told.Devices.Should().BeEmpty();
            told.Obstacles.Should().BeEmpty();
            told.Concessions.Should().BeEmpty();
            served++;
        }

        served.Should().BePositive();
    }

    [Fact]
    public void Without_power_at_the_coordinator_nothing_is_told()
    {
        Home home = RandomHomes.Of(1);
        State off = new() { Name = "off", DevicesOff = [home.Networks[0].Coordinator] };
        Home withState = home with { States = [off] };
        StudyOptions options = new() { State = off };
        ConcessionStudy.Run(CoverageStudy.Run(withState, withState.Networks[0], options), options).Should().BeNull();
    }

    private static void Anew(Home home, Concession concession, int seed)
    {
        Network network = home.Networks[0];
        PlacementGoals goals = concession.Kind == ConcessionKind.OneWay ? Goals with { Ways = 1 } : Goals;
        Home changed = concession.Kind switch
        {
            ConcessionKind.MoreHops => home with { Networks = home.Networks.SetItem(0, network with { HopLimit = concession.HopLimit!.Value }) },
            ConcessionKind.TwoAtAnOutlet => WithSecondOutlets(home, home.Outlets),
            ConcessionKind.WithoutState => home with { States = [.. home.States.Where(state => state.Name != concession.State)] },
            ConcessionKind.LessMargin => home with { Parameters = home.Parameters with { Availability = concession.Availability!.Value } },

            // A hair below: the margin itself is that of a link, and an availability is rounded on the way there and back.
            ConcessionKind.LeastMargin => home with { Parameters = home.Parameters with { Availability = concession.Availability!.Value - 1e-9 } },
            _ => home,
        };
        RepeaterPlacement placement = Place(changed, changed.Networks[0], goals);
        concession.Unserved.Should().Equal(InOrder(home, placement.Unserved), "seed {0} {1}", seed, concession.Kind);
        concession.Cost.Should().Be(placement.Cost, "seed {0} {1}", seed, concession.Kind);
        concession.IsProven.Should().Be(placement.IsProven);
    }

    /// <summary>A second outlet at the same place, on the same circuit, beside some.</summary>
    private static Home WithSecondOutlets(Home home, IEnumerable<Outlet> outlets) =>
        home with { Outlets = [.. home.Outlets, .. outlets.Select(outlet => outlet with { Id = new($"{outlet.Id} too") })] };

    /// <summary>The advice followed. What is plugged in stands in the open: in a random home a mounting of that name may cost something.</summary>
    private static Home Applied(Home home, RepeaterPlacement placement)
    {
        Home applied = FollowedAdvice.With(home, [placement]);
        return applied with { Devices = [.. applied.Devices.Select(device => device.Kind == "repeater" ? device with { Mounting = MeshSamples.Surface } : device)] };
    }

    private static void Exchanged(Home home, Infeasibility told, Concession concession)
    {
        Network other = home.Networks[1];
        concession.Network.Should().Be(other.Name);
        concession.Moved.Should().BeSubsetOf(told.Devices);
        Home changed = concession.Moved.Aggregate(home, (before, device) => new ChangeNetwork(device, other).On(before));
        RepeaterPlacement left = Place(changed, home.Networks[0], Goals), taken = Place(changed, other, Goals), before = Place(home, other, Goals);
        concession.Cost.Should().Be(left.Cost + taken.Cost - before.Cost);
        concession.Repeaters.Should().Be(left.Repeaters.Length + taken.Repeaters.Length - before.Repeaters.Length);
        concession.Unserved.Should().BeEquivalentTo(
            left.Unserved.Concat(taken.Unserved).Select(unserved => unserved.Device).Except(before.Unserved.Select(unserved => unserved.Device)));
    }

    private static Infeasibility Tell(Home home, PlacementGoals goals)
    {
        StudyOptions options = new() { Goals = goals };
        return ConcessionStudy.Run(CoverageStudy.Run(home, home.Networks[0], options), options)!;
    }

    private static RepeaterPlacement Place(Home home, Network network, PlacementGoals goals) =>
        CoverageStudy.Repeaters(CoverageStudy.Run(home, network, new()), new() { Goals = goals });

    private static IEnumerable<DeviceId> InOrder(Home home, ImmutableArray<UnservedDevice> unserved) =>
        home.Devices.Select(device => device.Id).Where(id => unserved.Any(entry => entry.Device == id));

    /// <summary>The same with a network below 1 GHz whose coordinator stands beside that of the first.</summary>
    private static Home WithSecondNetwork(Home home)
    {
        Network second = MeshSamples.Network(hopLimit: 4) with
        {
            Name = new("below"),
            Radio = RadioSamples.OQpsk with { FirstCarrier = new(868), ChannelStepMegahertz = 0.1, TransmitPower = new(-5) },
            Coordinator = new("hub"),
        };
        Device hub = home.Devices[0] with { Id = new("hub"), Network = second.Name, Circuit = null };
        return home with { Networks = [home.Networks[0], second], Devices = home.Devices.Add(hub) };
    }
}
