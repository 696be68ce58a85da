using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Placement;

/// <summary>
/// Ranks the sites of a hub. With the hub at a given site its networks ask nothing of each other, so each is solved on its own and the
/// costs add up; sites are tried in the order of their bounds until no further one can be among the best.
/// </summary>
internal sealed class HubAdvice
{
    /// <summary>Sites that are listed; more would be read by nobody.</summary>
    public const int SitesListed = 10;

    /// <summary>Sites that are tried at once, on as many threads as there are: always as many, so that the answer does not depend on these.</summary>
    private const int Batch = 8;

    private readonly ImmutableArray<Outlet> sites;
    private readonly ImmutableArray<SiteNetwork> networks;
    private readonly PlacementCosts costs;
    private readonly int?[] places;
    private readonly Dictionary<int, HubGroup> groups = [];

    /// <summary>Sets up.</summary>
    /// <param name="sites">Where the hub may go besides where it is.</param>
    /// <param name="networks">Its networks, surveyed for these sites.</param>
    /// <param name="costs">What things cost.</param>
    public HubAdvice(ImmutableArray<Outlet> sites, ImmutableArray<SiteNetwork> networks, PlacementCosts costs)
    {
        (this.sites, this.networks, this.costs) = (sites, networks, costs);
        places = [null, .. Enumerable.Range(0, sites.Length).Select(site => (int?)site)];
    }

    /// <summary>Number of sites, where the hub is now included.</summary>
    public int SiteCount => places.Length;

    /// <summary>The best sites for all networks together, the best first, and where the hub is now.</summary>
    public ImmutableArray<HubSite> Together()
    {
        ImmutableArray<HubSite> best = BestOf(networks, SitesListed);
        return best.Any(site => site.Outlet is null) ? best : best.Add(SiteAt(networks, null));
    }

    /// <summary>
    /// The best way to place the networks where they may stand apart: for each set of networks its best site, and of all ways to
    /// part the networks into such sets the best. Fewer groups win where they are as good.
    /// </summary>
    public ImmutableArray<HubGroup> Apart()
    {
        int all = (1 << networks.Length) - 1;
        var best = new (SiteScore Score, ImmutableArray<HubGroup> Groups)[all + 1];
        best[0] = (default, []);
        for (int set = 1; set <= all; set++)
        {
            // Each part with the set's first network in it, the whole set first.
            best[set] = (new(int.MaxValue, 0, 0), []);
            int first = set & -set;
            for (int part = set; part > 0; part = (part - 1) & set)
            {
                if ((part & first) == 0) continue;
                HubGroup group = GroupOf(part);
                (SiteScore score, ImmutableArray<HubGroup> others) = best[set ^ part];
                (SiteScore Score, ImmutableArray<HubGroup> Groups) candidate = (score + group.Site.Score, [group, .. others]);
                if ((candidate.Score.Rank, candidate.Groups.Length).CompareTo((best[set].Score.Rank, best[set].Groups.Length)) < 0) best[set] = candidate;
            }
        }

        return best[all].Groups;
    }

    private HubGroup GroupOf(int set)
    {
        ImmutableArray<SiteNetwork> members = [.. networks.Where((_, index) => (set >> index & 1) != 0)];
        return groups.TryGetValue(set, out HubGroup? known)
            ? known
            : groups[set] = new([.. members.Select(network => network.Name)], BestOf(members, listed: 1)[0]);
    }

    private ImmutableArray<HubSite> BestOf(ImmutableArray<SiteNetwork> members, int listed)
    {
        SiteScore[] bounds = OnAllThreads(places.Length, order => BoundAt(members, places[order]));
        int[] queue = [.. Enumerable.Range(0, places.Length).OrderBy(order => bounds[order].Rank).ThenBy(order => order)];
        List<(HubSite Site, int Order)> known = [];
        foreach (int[] batch in queue.Chunk(Batch))
        {
            if (known.Count >= listed && bounds[batch[0]].Rank.CompareTo(known[listed - 1].Site.Score.Rank) > 0) break;
            HubSite[] tried = OnAllThreads(batch.Length, index => SiteAt(members, places[batch[index]]));
            known = [.. known.Concat(tried.Zip(batch, (site, order) => (Site: site, Order: order))).OrderBy(site => site.Site.Score.Rank)
                .ThenByDescending(site => site.Site.WeakestMargin?.Value ?? double.NegativeInfinity).ThenBy(site => site.Order)];
        }

        return [.. known.Take(listed).Select(site => site.Site)];
    }

    private static T[] OnAllThreads<T>(int count, Func<int, T> work)
    {
        var results = new T[count];
        Parallel.For(0, count, index => results[index] = work(index));
        return results;
    }

    private SiteScore BoundAt(ImmutableArray<SiteNetwork> members, int? place) =>
        members.Select(network => network.BoundAt(place)).Aggregate(new SiteScore(0, 0, MoveTo(place)), (sum, bound) => sum + bound);

    private HubSite SiteAt(ImmutableArray<SiteNetwork> members, int? place)
    {
        ImmutableArray<HubNetwork> answers = [.. members.Select(network => network.Assess(place))];
        int move = MoveTo(place);
        return new(
            place is { } site ? sites[site] : null, move + answers.Sum(answer => answer.Cost), move + answers.Sum(answer => answer.LowerBound), answers);
    }

    private int MoveTo(int? place) => place is null ? 0 : costs.HubMove;
}
