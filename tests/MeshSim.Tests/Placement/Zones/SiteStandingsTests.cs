using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Placement.Zones;

namespace MeshSim.Tests.Placement.Zones;

/// <summary>What each outlet has to spare and what comes next, against trying everything.</summary>
public sealed class SiteStandingsTests
{
    private const int Homes = 150;

    /// <summary>The same difference of two margins, in another order.</summary>
    private const double OrderOfSumDb = 1e-9;

    private static readonly PlacementGoals Everything = PlacementGoals.Default;

    [Fact]
    public void In_random_homes_the_next_best_is_what_trying_everything_finds()
    {
        int stands = 0, others = 0, fails = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            (RepeaterPlacement placement, SurveyedPlacement surveyed) = PlacedHomes.Of(HeldHomes.Of(seed), seed % 2 == 0 ? Everything : new() { Ways = 1 });
            var standings = SiteStandings.Of(surveyed);
            standings.Select(standing => standing.Outlet).Should().Equal(placement.Repeaters.Select(repeater => repeater.Outlet));
            foreach ((SiteStanding standing, int choice) in standings.Zip(surveyed.Chosen))
            {
                Tried tried = new(surveyed, choice);
                standing.Spare!.Value.Value.Should().BeApproximately(tried.SpareDb(choice), OrderOfSumDb, "seed {0}", seed);
                (int Choice, double SpareDb)[] able = [.. tried.StandIns().OrderByDescending(entry => entry.SpareDb)];
                if (able.Length > 0)
                {
                    stands++;
                    standing.Next.Spare!.Value.Value.Should().BeApproximately(able[0].SpareDb, OrderOfSumDb, "seed {0}", seed);
                    standing.Next.CostChange.Should().Be(0);
                    continue;
                }

                standing.Next.InItsPlace.Should().BeNull("seed {0}", seed);
                standing.Next.IsProven.Should().BeTrue();
                tried.Without().Should().Be((standing.Next.CostChange, standing.Next.Fails.Length), "seed {0}", seed);
                if (standing.Next.Fails.IsEmpty) others++;
                else fails++;
            }
        }

        new[] { stands, others, fails }.Should().OnlyContain(count => count > 3, "all kinds of answers must occur");
    }

    [Fact]
    public void A_site_in_a_row_can_lose_what_its_weaker_link_has_to_spare()
    {
        // The device at 200 m hears neither the coordinator nor anything but what lies between.
        Home home = PlacedHomes.Row(hopLimit: 3, deviceMetres: [200], outletMetres: [100, 110]);
        (_, SurveyedPlacement surveyed) = PlacedHomes.Of(home, PlacementGoals.OneWayEveryday);
        SiteStanding standing = SiteStandings.Of(surveyed).Single();
        standing.Outlet.Id.Value.Should().Be("o0");
        standing.Next.InItsPlace!.Id.Value.Should().Be("o1");
        (standing.Spare! - standing.Next.Spare!)!.Value.Value.Should().BeApproximately(20 * Math.Log10(1.1), OrderOfSumDb, "the link of 110 m is weaker than that of 100 m");
    }

    [Fact]
    public void An_outlet_that_alone_reaches_a_device_leaves_it_unserved_and_says_what_lacks()
    {
        Home home = PlacedHomes.Row(hopLimit: 3, deviceMetres: [200], outletMetres: [100, 20]);
        (_, SurveyedPlacement surveyed) = PlacedHomes.Of(home, PlacementGoals.OneWayEveryday);
        NextBest next = SiteStandings.Of(surveyed).Single().Next;
        next.InItsPlace.Should().BeNull();
        next.Fails.Single().Shortfall!.Value.Value.Should().BePositive();
        next.CostChange.Should().Be(-home.Costs.Repeater);
    }

    /// <summary>Everything tried, with nothing but counting hops.</summary>
    private sealed class Tried(SurveyedPlacement placement, int choice)
    {
        private readonly (Demand Demand, ReachGraph Graph)[] cases = [.. placement.Cases()];
        private readonly RepeaterSurvey survey = placement.Survey;

        public IEnumerable<(int Choice, double SpareDb)> StandIns() =>
            from other in Enumerable.Range(0, survey.Outlets.Length)
            where !placement.Chosen.Contains(other)
            let spareDb = SpareDb(other)
            where spareDb >= 0
            select (other, spareDb);

        /// <summary>The greatest amount by which all links of an outlet in place of the chosen one may be weaker.</summary>
        public double SpareDb(int other)
        {
            int node = survey.Problem.NodeOf(other);
            double designDb = survey.Problem.DesignMargin.Value;
            double[] candidates =
            [
                .. survey.Situations.SelectMany(situation => Enumerable.Range(0, survey.Problem.NodeCount).Select(to => situation.Problem.Margin(node, to).Value))
                    .Where(marginDb => marginDb >= designDb).Distinct().OrderDescending(),
            ];
            foreach (double leastDb in candidates)
                if (Holds(other, leastDb)) return leastDb - designDb;
            return double.NegativeInfinity;
        }

        /// <summary>By how much the cheapest choice without the outlet costs more, and how much more cannot be had.</summary>
        public (int CostChange, int Fails) Without()
        {
            int[] costs = [.. survey.CostsOf(placement.Home.Costs)];
            int[] rest = [.. Enumerable.Range(0, costs.Length).Where(other => other != choice)];
            HashSet<UnmetDemand> all = Missed(Demands(null), [.. rest, choice]), missed = Missed(Demands(choice), rest);
            HashSet<int> dark = [.. missed.Where(unmet => unmet is { Situation: 0, Lost: null }).Select(unmet => unmet.Device)];
            int cost = Subsets(rest).Where(subset => Missed(Demands(choice), subset).SetEquals(missed)).Min(subset => subset.Sum(other => costs[other]));
            int fails = missed.Count(unmet => !all.Contains(unmet) && (unmet.Lost is null || !dark.Contains(unmet.Device)));
            return (cost - placement.Chosen.Sum(other => costs[other]), fails);
        }

        private bool Holds(int other, double leastDb)
        {
            int node = survey.Problem.NodeOf(other), site = survey.Problem.NodeOf(choice);
            foreach ((Demand demand, _) in cases)
            {
                if (demand.Lost == site) continue;
                RepeaterProblem old = demand.Problem;
                RepeaterProblem problem = new(old.Relays, old.Coordinator, old.OutletCount, old.HopLimit, old.DesignMargin, (a, b) =>
                    (a == node || b == node) && old.Margin(a, b).Value < leastDb ? new(double.NegativeInfinity) : old.Margin(a, b));
                ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
                Demand moved = demand with { Problem = problem };
                if (moved.Reached(graph, graph.Chosen(placement.Chosen.Remove(choice).Add(other))).Length < demand.Devices.Length) return false;
            }

            return true;
        }

        private Demand[] Demands(int? without)
        {
            int? site = without is { } gone ? survey.Problem.NodeOf(gone) : null;
            return
            [
                .. Demand.Of(
                    [.. survey.Situations.Select(situation => site is { } node ? situation with { WithoutPower = [.. situation.WithoutPower, node] } : situation)],
                    placement.Ways),
            ];
        }

        private static HashSet<UnmetDemand> Missed(Demand[] demands, int[] chosen)
        {
            HashSet<UnmetDemand> missed = [];
            foreach (Demand demand in demands)
            {
                ReachGraph graph = demand.Problem.LinksAtLeast(demand.Problem.DesignMargin);
                foreach (int device in demand.Reached(graph, graph.Chosen(chosen), isReached: false)) missed.Add(new(device, demand.Situation, demand.Lost));
            }

            return missed;
        }

        private static IEnumerable<int[]> Subsets(int[] of) =>
            Enumerable.Range(0, 1 << of.Length).Select(bits => of.Where((_, index) => (bits >> index & 1) != 0).ToArray());
    }
}
