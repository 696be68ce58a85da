using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;

namespace MeshSim.Placement.Concessions;

/// <summary>Why not everything that was asked of one network can be had, and what giving in on one point would change.</summary>
public sealed record Infeasibility
{
    /// <summary>The network.</summary>
    public required NetworkName Network { get; init; }

    /// <summary>The devices that cannot have all that was asked, whatever is plugged in, in the home's order.</summary>
    public required ImmutableArray<DeviceId> Devices { get; init; }

    /// <summary>
    /// What stands in the way, as few devices and links as possible: everyday, then states, then losses. A device without a way everyday is not named
    /// again.
    /// </summary>
    public required ImmutableArray<Obstacle> Obstacles { get; init; }

    /// <summary>
    /// A margin at which a link holds in a smaller share of cases is none to plan with. Assumed; planning of television over the air calls
    /// a place acceptable where 70 % of spots are served and good where 95 % are (from memory: ETSI TR 101 190).
    /// </summary>
    public const double LeastAvailability = 0.7;

    /// <summary>
    /// What giving in on one point would change, each really solved: those that are advisable first, then fewest devices left, then least
    /// cost, then the order of <see cref="ConcessionKind"/>.
    /// </summary>
    public required ImmutableArray<Concession> Concessions { get; init; }

    /// <summary>The order in which concessions are told.</summary>
    internal static ImmutableArray<Concession> BestFirst(IEnumerable<Concession> concessions) =>
    [
        .. concessions.OrderByDescending(concession => concession.IsAdvisable)
            .ThenBy(concession => concession.Unserved.Length).ThenBy(concession => concession.Cost).ThenBy(concession => concession.Kind),
    ];
}

/// <summary>
/// Devices that the same link keeps from what was asked, with a repeater in every outlet. One link is always enough, because every
/// device could hear the coordinator itself.
/// </summary>
/// <param name="Case">When; the default is everyday.</param>
/// <param name="Devices">The devices, in the home's order.</param>
/// <param name="Link">Of the links of which any one would bring the devices into reach, the one that lacks least; null when no level leads there.</param>
/// <param name="LinksThatWouldDo">Number of such links: all of them are missing, and whatever is done must mend one.</param>
/// <param name="Hops">How many links the way there is takes, more than the hop limit; null where there is none.</param>
public sealed record Obstacle(PlacementCase Case, ImmutableArray<DeviceId> Devices, ShortLink? Link, int LinksThatWouldDo, int? Hops);

/// <summary>A link below the design margin.</summary>
/// <param name="From">The end nearer to the coordinator, in words.</param>
/// <param name="To">The other end, in words.</param>
/// <param name="Shortfall">What it lacks.</param>
public readonly record struct ShortLink(string From, string To, Decibels Shortfall);

/// <summary>On what to give in.</summary>
public enum ConcessionKind
{
    /// <summary>One way to each device instead of two.</summary>
    OneWay,

    /// <summary>Two repeaters, or a repeater and a router, at one outlet, in a double outlet or an adaptor: the loss of one leaves the other.</summary>
    TwoAtAnOutlet,

    /// <summary>A state need not hold.</summary>
    WithoutState,

    /// <summary>Links count with 2 dB less margin.</summary>
    LessMargin,

    /// <summary>Links count with just as much less margin as serves every device.</summary>
    LeastMargin,

    /// <summary>One more link in a row.</summary>
    MoreHops,

    /// <summary>Devices in another network of the home, where that serves them.</summary>
    OtherNetwork,
}

/// <summary>What giving in on one point comes to.</summary>
public sealed record Concession
{
    /// <summary>On what.</summary>
    public required ConcessionKind Kind { get; init; }

    /// <summary>The outlets that take two repeaters, in the home's order; empty otherwise.</summary>
    public ImmutableArray<OutletId> Doubled { get; init; } = [];

    /// <summary>The routers that share their outlet with a repeater, in the home's order; empty otherwise.</summary>
    public ImmutableArray<DeviceId> Beside { get; init; } = [];

    /// <summary>The state given up; null otherwise.</summary>
    public string? State { get; init; }

    /// <summary>The margin that a link must then have; null where it stays.</summary>
    public Decibels? DesignMargin { get; init; }

    /// <summary>The share of cases in which a link of that margin holds; null where it stays or fading is planned for as well.</summary>
    public double? Availability { get; init; }

    /// <summary>Whether links of that margin hold often enough to plan with, <see cref="Infeasibility.LeastAvailability"/>; true where it stays.</summary>
    public bool IsAdvisable { get; init; } = true;

    /// <summary>The hop limit then; null where it stays.</summary>
    public int? HopLimit { get; init; }

    /// <summary>Whether that is more than the network's radio allows.</summary>
    public bool IsBeyondRadio { get; init; }

    /// <summary>The other network; null otherwise.</summary>
    public NetworkName? Network { get; init; }

    /// <summary>Who would be served in the other network, in the home's order; empty otherwise.</summary>
    public ImmutableArray<DeviceId> Moved { get; init; } = [];

    /// <summary>Who still cannot have what is then asked, in the home's order.</summary>
    public required ImmutableArray<DeviceId> Unserved { get; init; }

    /// <summary>Repeaters then, in the other network only those beyond what it needs anyway.</summary>
    public required int Repeaters { get; init; }

    /// <summary>Devices kept powered then, counted alike.</summary>
    public int KeptOn { get; init; }

    /// <summary>What that costs, in the home's units.</summary>
    public required int Cost { get; init; }

    /// <summary>Whether it is proven that nothing cheaper does the same.</summary>
    public required bool IsProven { get; init; }
}
