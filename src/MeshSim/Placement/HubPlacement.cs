using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>Where the coordinators of some networks should go, together in one hub box and each on its own.</summary>
public sealed record HubPlacement
{
    /// <summary>The networks whose coordinators are in the box, in the home's order.</summary>
    public required ImmutableArray<NetworkName> Networks { get; init; }

    /// <summary>What was asked.</summary>
    public required PlacementGoals Goals { get; init; }

    /// <summary>The states that must hold and were asked for, in the home's order; empty when none was.</summary>
    public required ImmutableArray<string> StatesHeld { get; init; }

    /// <summary>
    /// The best sites, the best first: fewest devices without a way everyday, then fewest that cannot have all that is asked, then
    /// least cost, then the strongest weakest route, then where the hub is now, then the home's order of outlets. Where the hub is now is always among them.
    /// </summary>
    public required ImmutableArray<HubSite> Sites { get; init; }

    /// <summary>
    /// Number of sites considered, where the hub is now included. Those not listed were found no better than the last but the present one, unless they
    /// are <see cref="SitesLeftOut"/>; only one whose cost is not proven may be better all the same.
    /// </summary>
    public required int SitesConsidered { get; init; }

    /// <summary>Number of sites that were not worked out, because there are too many, and might come before the last one listed. 0 in any house.</summary>
    public int SitesLeftOut { get; init; }

    /// <summary>Whether the sites are so many that they shared the work of one question.</summary>
    public bool SharesWork { get; init; }

    /// <summary>The sites that might be better than the best one; null when it is proven that none is.</summary>
    public OpenSites? Open { get; init; }

    /// <summary>Number of outlets that are no sites because a state that is not counted switches them off.</summary>
    public required int OutletsSwitchedOff { get; init; }

    /// <summary>The best way to place the sticks where they may stand apart; one group when together is as good.</summary>
    public required ImmutableArray<HubGroup> Apart { get; init; }

    /// <summary>The best site.</summary>
    public HubSite Best => Sites[0];

    /// <summary>Where the hub is now.</summary>
    public HubSite Present => Sites.First(site => site.Outlet is null);

    /// <summary>Whether it is proven that no site is better and nothing at the best one cheaper.</summary>
    public bool IsProven => Open is null && Best.IsProven;

    /// <summary>Whether the best site leaves no device unserved.</summary>
    public bool ServesAll => Best.Unserved == 0;

    /// <summary>What placing the sticks apart costs.</summary>
    public int ApartCost => Apart.Sum(group => group.Site.Cost);

    /// <summary>Whether fewer devices stay out of reach or unserved, or it costs less, when the sticks stand apart.</summary>
    public bool IsApartBetter =>
        Apart.Length > 1 && Apart.Aggregate(default(SiteScore), (sum, group) => sum + group.Site.Score).Rank.CompareTo(Best.Score.Rank) < 0;
}

/// <summary>Sticks that stand together.</summary>
/// <param name="Networks">Their networks.</param>
/// <param name="Site">Where, and what that costs for these networks.</param>
public sealed record HubGroup(ImmutableArray<NetworkName> Networks, HubSite Site);

/// <summary>The hub at one site.</summary>
/// <param name="Outlet">The outlet beside which it stands; null where it is now.</param>
/// <param name="Cost">Moving it, repeaters and switches given up for all of its networks, in the home's units.</param>
/// <param name="LowerBound">At this site nothing that serves as many devices costs less.</param>
/// <param name="Networks">What each network needs there.</param>
public sealed record HubSite(Outlet? Outlet, int Cost, int LowerBound, ImmutableArray<HubNetwork> Networks)
{
    /// <summary>Devices that cannot be served in every case asked for, whatever is plugged in.</summary>
    public int Unserved => Networks.Sum(network => network.Unserved.Length);

    /// <summary>Those of them that have no way everyday.</summary>
    public int OutOfReach => Networks.Sum(network => network.OutOfReach.Length);

    /// <summary>What it is ranked by first.</summary>
    internal SiteScore Score => new(OutOfReach, Unserved, Cost);

    /// <summary>Repeaters needed.</summary>
    public int Repeaters => Networks.Sum(network => network.Repeaters.Length);

    /// <summary>The weakest link of the weakest route that is strong enough; null when no device is reached.</summary>
    public Decibels? WeakestMargin => Networks.Min(network => network.WeakestMargin?.Value) is { } marginDb ? new(marginDb) : null;

    /// <summary>The states asked for in which one of the coordinators has no power at this site.</summary>
    public ImmutableArray<string> DarkIn => [.. Networks.SelectMany(network => network.DarkIn).Distinct(StringComparer.Ordinal)];

    /// <summary>Whether it is proven that nothing at this site is cheaper.</summary>
    public bool IsProven => Cost == LowerBound;
}

/// <summary>What one network needs with the hub at a site.</summary>
/// <param name="Network">The network.</param>
/// <param name="Repeaters">Where repeaters go, in the home's order.</param>
/// <param name="KeptOn">Mains devices that stay powered in states that would turn them off, in the home's order.</param>
/// <param name="Unserved">Devices that cannot be served in every case asked for, in the home's order.</param>
/// <param name="OutOfReach">Those of them that have no way everyday, in the home's order.</param>
/// <param name="WeakestMargin">The weakest link of the weakest everyday route of a device within reach; null when none is.</param>
/// <param name="Cost">Of the repeaters and switches.</param>
/// <param name="LowerBound">Nothing that serves as many devices costs less.</param>
/// <param name="Cuts">Number of cuts that the proof rests on.</param>
public sealed record HubNetwork(
    NetworkName Network,
    ImmutableArray<Outlet> Repeaters,
    ImmutableArray<DeviceId> KeptOn,
    ImmutableArray<DeviceId> Unserved,
    ImmutableArray<DeviceId> OutOfReach,
    Decibels? WeakestMargin,
    int Cost,
    int LowerBound,
    int Cuts)
{
    /// <summary>
    /// The states asked for in which its coordinator has no power at this site, the one planned for first, then in the home's order. The
    /// devices that have power then are unserved.
    /// </summary>
    public ImmutableArray<string> DarkIn { get; init; } = [];

    /// <summary>Searches that went into it, counted as in <see cref="WorkLimit.Searches"/>, and one for each node to set it up.</summary>
    internal long Searches { get; init; }
}
