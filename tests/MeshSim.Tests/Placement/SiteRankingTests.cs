using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Tests.Placement;

/// <summary>Sites that share little work against the same sites worked out whole.</summary>
public sealed class SiteRankingTests
{
    private const int Homes = 60;

    [Fact]
    public void No_bound_is_above_what_a_site_comes_to()
    {
        int tight = 0, loose = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = HeldHomes.Of(seed);
            Network network = home.Networks[0];
            StateGraphs graphs = new(home, network, ModelName.Detour);
            SiteNetwork sites = new(home, network, graphs, null, PlacementGoals.Default.Held(home, null), home.Outlets, PlacementGoals.Default);
            for (int site = 0; site < home.Outlets.Length; site++)
            {
                SiteBound bound = sites.BoundAt(site);
                HubNetwork solved = sites.Assess(site, new());
                solved.Cost.Should().Be(solved.LowerBound, "a small home is proven");
                (bound.Score.OutOfReach, bound.Score.Unserved).Should().Be((solved.OutOfReach.Length, solved.Unserved.Length), "seed {0}, site {1}", seed, site);
                bound.Score.Cost.Should().BeLessThanOrEqualTo(solved.Cost, "seed {0}, site {1}", seed, site);
                bound.RelaxedCost.Should().BeLessThanOrEqualTo(bound.Score.Cost + CutSearch.SolverTolerance);
                (tight, loose) = bound.Score.Cost == solved.Cost ? (tight + 1, loose) : (tight, loose + 1);
            }
        }

        tight.Should().BeGreaterThan(4 * loose, "a bound that is mostly below would choose badly");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    public void With_little_work_nothing_is_claimed_that_is_not_so(int searches)
    {
        // Every home is too large, and so many searches are all that its sites have together.
        WorkLimit little = new() { SitesSize = 0, Searches = searches };
        int proven = 0, open = 0, leftOut = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = WithManyOutlets(HeldHomes.Of(seed));
            HubPlacement whole = HubStudy.Run(home, home.Networks, [], new()), part = HubStudy.Run(home, home.Networks, [], new(), little);
            Rank(part.Best).CompareTo(Rank(whole.Best)).Should().BeGreaterThanOrEqualTo(0, "seed {0}", seed);
            part.Sites.Should().ContainSingle(site => site.Outlet == null);
            if (part.Open is not { } may)
            {
                Rank(part.Best).Should().Be(Rank(whole.Best), "seed {0}: no other was said to be better", seed);
                proven++;
            }
            else
            {
                may.Count.Should().BeInRange(1, part.SitesConsidered - 1);
                (may.OutOfReach, may.Unserved, may.Cost).CompareTo(Rank(part.Best)).Should().BeNegative("seed {0}", seed);
                (may.OutOfReach, may.Unserved, may.Cost).CompareTo(Rank(whole.Best)).Should().BeLessThanOrEqualTo(0, "seed {0}: that one is among them", seed);
                open++;
            }

            if (part.SitesLeftOut == 0 && part.Sites.All(site => site.IsProven)) part.Sites.Select(Rank).Should().Equal(whole.Sites.Select(Rank), "seed {0}", seed);
            leftOut += part.SitesLeftOut > 0 ? 1 : 0;
        }

        proven.Should().BePositive();
        open.Should().BePositive();
        leftOut.Should().BePositive();
    }

    [Fact]
    public void In_a_small_home_all_sites_are_worked_out_and_none_may_be_better()
    {
        for (int seed = 0; seed < Homes; seed++)
        {
            HubPlacement hub = HubStudy.Run(HeldHomes.Of(seed), HeldHomes.Of(seed).Networks, [], new());
            hub.IsProven.Should().BeTrue();
            hub.Open.Should().BeNull();
            hub.SitesLeftOut.Should().Be(0);
        }
    }

    /// <summary>Outlets in groups, so that there are more sites than are worked out at once.</summary>
    private static Home WithManyOutlets(Home home) =>
        home with { Outlets = [.. home.Outlets.SelectMany(outlet => Enumerable.Range(0, 4).Select(index => outlet with { Id = new(FormattableString.Invariant($"{outlet.Id}-{index}")) }))] };

    private static (int OutOfReach, int Unserved, int Cost) Rank(HubSite site) => (site.OutOfReach, site.Unserved, site.Cost);
}
