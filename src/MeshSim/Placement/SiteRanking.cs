using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Placement;

/// <summary>
/// Ranks the sites of some networks that stand together. With the hub at a given site its networks ask nothing of each other, so each is solved on its
/// own and the costs add up; sites are worked out in the order of their bounds until no further one can be among the best, or, where there are
/// more than can be afforded, the work is used up.
/// </summary>
internal sealed class SiteRanking
{
    /// <summary>Sites that are worked out at once, on as many threads as there are: always as many, so that the answer does not depend on these.</summary>
    private const int Batch = 8;

    /// <summary>Where all sites share the work of one question, at least so many get some of it.</summary>
    private const int SitesSharing = 24;

    /// <summary>The place of the hub as it is among all places; the sites follow.</summary>
    private const int InPlace = 0;

    private readonly ImmutableArray<Outlet> sites;
    private readonly ImmutableArray<SiteNetwork> networks;
    private readonly PlacementCosts costs;
    private readonly int listed;
    private readonly SiteBound[] bounds;
    private readonly Dictionary<int, HubSite> workedOut = [];
    private (HubSite Site, int Place)[] ranked = [];
    private long searches;

    /// <summary>Ranks the sites.</summary>
    /// <param name="sites">Where the hub may go besides where it is.</param>
    /// <param name="networks">The networks that stand there.</param>
    /// <param name="costs">What things cost.</param>
    /// <param name="listed">How many of the best are wanted.</param>
    /// <param name="limit">The work to put into each proof.</param>
    public SiteRanking(ImmutableArray<Outlet> sites, ImmutableArray<SiteNetwork> networks, PlacementCosts costs, int listed, WorkLimit limit)
    {
        (this.sites, this.networks, this.costs, this.listed) = (sites, networks, costs, listed);
        bounds = OnAllThreads(sites.Length + 1, BoundAt);
        int[] queue = [.. Enumerable.Range(1, sites.Length).OrderBy(place => bounds[place].Score.Rank).ThenBy(place => bounds[place].RelaxedCost).ThenBy(place => place)];
        SharesWork = Size > limit.SitesSize;
        WorkLimit each = SharesWork ? limit.SharedBy(SitesSharing) with { TreeRelaxations = 0 } : limit;
        foreach ((int Place, WorkLimit Limit)[] batch in queue.Select(place => (place, each)).Prepend((InPlace, limit)).Chunk(Batch))
        {
            bool isSpent = SharesWork && ranked.Length > 0 && searches >= limit.Searches;
            if (isSpent || !MayBeListed(batch[0].Place)) break;
            WorkOut(batch);
        }

        if (SharesWork) WorkOut([(ranked[0].Place, limit)]);
        LeftOut = queue.Count(place => !workedOut.ContainsKey(place) && MayBeListed(place));
        Open = OpenSites.Of([.. Enumerable.Range(0, bounds.Length).Where(place => place != ranked[0].Place).Select(LeastAt).Where(MayBeBest)]);
    }

    /// <summary>The best sites, the best first; where the hub is now is the last if it is not among these.</summary>
    public ImmutableArray<HubSite> Best => [.. ranked.Where((entry, index) => index < listed || entry.Place == InPlace).Select(entry => entry.Site)];

    /// <summary>Whether the sites are so many that they share the work of one question.</summary>
    public bool SharesWork { get; }

    /// <summary>The sites that might be better than the best one found; null when there are none.</summary>
    public OpenSites? Open { get; }

    /// <summary>Number of sites that were not worked out and might come before the last of the best.</summary>
    public int LeftOut { get; }

    /// <summary>The hub at a site, with the work of a whole question.</summary>
    /// <param name="outlet">The outlet; null where the hub is now.</param>
    /// <param name="limit">The work.</param>
    public HubSite At(Outlet? outlet, WorkLimit limit) => SiteAt(outlet is null ? InPlace : sites.IndexOf(outlet) + 1, limit);

    private long Size => bounds.Length * networks.Sum(network => (long)network.NodeCount * network.NodeCount);

    private bool MayBeListed(int place) => ranked.Length < listed || bounds[place].Score.Rank.CompareTo(ranked[listed - 1].Site.Score.Rank) <= 0;

    private SiteScore LeastAt(int place) => workedOut.TryGetValue(place, out HubSite? site) ? site.Score with { Cost = site.LowerBound } : bounds[place].Score;

    private bool MayBeBest(SiteScore score) => score.Rank.CompareTo(ranked[0].Site.Score.Rank) < 0;

    private void WorkOut((int Place, WorkLimit Limit)[] batch)
    {
        HubSite[] answers = OnAllThreads(batch.Length, index => SiteAt(batch[index].Place, batch[index].Limit));
        for (int index = 0; index < batch.Length; index++)
        {
            workedOut[batch[index].Place] = answers[index];
            if (batch[index].Place != InPlace) searches += answers[index].Networks.Sum(network => network.Searches);
        }

        ranked =
        [
            .. workedOut.Select(entry => (Site: entry.Value, Place: entry.Key)).OrderBy(entry => entry.Site.Score.Rank)
                .ThenByDescending(entry => entry.Site.WeakestMargin?.Value ?? double.NegativeInfinity).ThenBy(entry => entry.Place),
        ];
    }

    private SiteBound BoundAt(int place) =>
        networks.Select(network => network.BoundAt(SiteOf(place))).Aggregate(new SiteBound(new(0, 0, MoveTo(place)), MoveTo(place)), (sum, bound) => sum + bound);

    private HubSite SiteAt(int place, WorkLimit limit)
    {
        ImmutableArray<HubNetwork> answers = [.. networks.Select(network => network.Assess(SiteOf(place), limit))];
        return new(
            SiteOf(place) is { } site ? sites[site] : null,
            MoveTo(place) + answers.Sum(answer => answer.Cost),
            MoveTo(place) + answers.Sum(answer => answer.LowerBound),
            answers);
    }

    private int MoveTo(int place) => place == InPlace ? 0 : costs.HubMove;

    private static int? SiteOf(int place) => place == InPlace ? null : place - 1;

    private static T[] OnAllThreads<T>(int count, Func<int, T> work)
    {
        // A question may take seconds, and the pool would meanwhile add thread after thread beyond the processors there are.
        var results = new T[count];
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, index => results[index] = work(index));
        return results;
    }
}
