using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Placement;

/// <summary>Where a hub should go with all of its networks, and where they should where each may stand apart.</summary>
internal sealed class HubAdvice
{
    /// <summary>Sites that are listed; more would be read by nobody.</summary>
    public const int SitesListed = 10;

    private readonly ImmutableArray<Outlet> sites;
    private readonly ImmutableArray<SiteNetwork> networks;
    private readonly PlacementCosts costs;
    private readonly WorkLimit limit;
    private readonly Dictionary<int, HubGroup> groups = [];

    /// <summary>Sets up.</summary>
    /// <param name="sites">Where the hub may go besides where it is.</param>
    /// <param name="networks">Its networks, surveyed for these sites.</param>
    /// <param name="costs">What things cost.</param>
    /// <param name="limit">The work to put into each proof.</param>
    public HubAdvice(ImmutableArray<Outlet> sites, ImmutableArray<SiteNetwork> networks, PlacementCosts costs, WorkLimit limit) =>
        (this.sites, this.networks, this.costs, this.limit) = (sites, networks, costs, limit);

    /// <summary>Number of sites, where the hub is now included.</summary>
    public int SiteCount => sites.Length + 1;

    /// <summary>The sites for all networks together.</summary>
    public SiteRanking Together() => RankingOf(networks, SitesListed);

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
            : groups[set] = new([.. members.Select(network => network.Name)], RankingOf(members, listed: 1).Best[0]);
    }

    private SiteRanking RankingOf(ImmutableArray<SiteNetwork> members, int listed) => new(sites, members, costs, listed, limit);
}
