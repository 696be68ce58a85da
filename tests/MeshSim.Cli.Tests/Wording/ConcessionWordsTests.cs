using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Placement.Concessions;
using MeshSim.Quantities;

namespace MeshSim.Cli.Tests.Wording;

public sealed class ConcessionWordsTests
{
    private static readonly Decibels Planned = new(6.4);

    [Theory]
    [InlineData(ConcessionKind.OneWay, "one way instead of two")]
    [InlineData(ConcessionKind.TwoAtAnOutlet, "two repeaters at hall")]
    [InlineData(ConcessionKind.WithoutState, "bedtime need not hold")]
    [InlineData(ConcessionKind.LessMargin, "2.0 dB less margin (4.4 dB, holds in 81.1 % of cases)")]
    [InlineData(ConcessionKind.LeastMargin, "2.0 dB less margin (4.4 dB, holds in 81.1 % of cases)")]
    [InlineData(ConcessionKind.MoreHops, "one more hop (5: more than this radio allows)")]
    [InlineData(ConcessionKind.OtherNetwork, "network meters for loft-sensor")]
    public void Each_concession_says_what_is_given_in(ConcessionKind kind, string words) => ConcessionWords.Of(Sample(kind), Planned).Should().Be(words);

    [Fact]
    public void Another_network_that_serves_nobody_says_so() =>
        ConcessionWords.Of(Sample(ConcessionKind.OtherNetwork) with { Moved = [] }, Planned).Should().Be("network meters for them: serves none");

    [Fact]
    public void Several_outlets_that_take_two_are_listed_like_devices()
    {
        Concession two = Sample(ConcessionKind.TwoAtAnOutlet);
        ConcessionWords.Of(two with { Doubled = [new("hall"), new("loft")] }, Planned).Should().Be("two repeaters each at hall, loft");
        ConcessionWords.Of(two with { Doubled = [new("a"), new("b"), new("c"), new("d"), new("e")] }, Planned).Should().Be("two repeaters each at a, b, c, d and 1 more");
    }

    [Fact]
    public void A_repeater_that_shares_the_outlet_of_a_router_is_not_called_two()
    {
        Concession beside = Sample(ConcessionKind.TwoAtAnOutlet) with { Doubled = [], Beside = [new("repeater-hall")] };
        ConcessionWords.Of(beside, Planned).Should().Be("one more repeater in the outlet of repeater-hall");
        ConcessionWords.Of(beside with { Doubled = [new("loft")], Beside = [new("a"), new("b")] }, Planned).Should().Be(
            "two repeaters at loft and one more repeater each in the outlets of a, b");
    }

    [Fact]
    public void Hops_within_the_radio_come_without_a_warning_and_fading_without_a_share()
    {
        ConcessionWords.Of(Sample(ConcessionKind.MoreHops) with { IsBeyondRadio = false }, Planned).Should().Be("one more hop (5)");
        ConcessionWords.Of(Sample(ConcessionKind.LessMargin) with { Availability = null }, Planned).Should().Be("2.0 dB less margin (4.4 dB)");
    }

    [Theory]
    [InlineData(1, null, "(no other link would do).")]
    [InlineData(2, null, "(1 other link lacks more).")]
    [InlineData(3, null, "(2 other links lack more).")]
    [InlineData(3, 6, "(2 other links lack more); the way there is takes 6 hops.")]
    public void An_obstacle_says_what_else_would_do(int links, int? hops, string words) =>
        ConcessionWords.Of(Short(default) with { LinksThatWouldDo = links, Hops = hops }).Should().EndWith(words);

    [Theory]
    [InlineData(null, "landing-bulb", "loft-sensor hangs on landing-bulb; nearest to a second way: outlet a – end device b, which lacks 2.0 dB (no other link would do).")]
    [InlineData("bedtime", null, "loft-sensor has no way in bedtime; nearest to one: outlet a – end device b, which lacks 2.0 dB (no other link would do).")]
    [InlineData(null, null, "loft-sensor has no way; nearest to one: outlet a – end device b, which lacks 2.0 dB (no other link would do).")]
    public void An_obstacle_says_on_what_a_device_hangs_or_when_it_has_no_way(string? state, string? lost, string words) =>
        ConcessionWords.Of(Short(new(state, lost))).Should().Be(words);

    [Fact]
    public void Without_a_link_that_is_what_is_said() =>
        ConcessionWords.Of(Short(default) with { Devices = [new("a"), new("b")], Link = null, LinksThatWouldDo = 0 }).Should().Be("a, b have no way; no level leads there.");

    [Fact]
    public void Many_obstacles_are_counted()
    {
        Infeasibility many = new() { Network = new("plugs"), Devices = [], Obstacles = [.. Enumerable.Repeat(Short(default), 10)], Concessions = [] };

        string[] told = [.. ConcessionWords.Obstacles(many)];
        told.Should().HaveCount(9);
        told[^1].Should().Be("2 more obstacles: --json has them all.");
    }

    private static Obstacle Short(PlacementCase when) => new(when, [new("loft-sensor")], new ShortLink("outlet a", "end device b", new(2)), 1, null);

    private static Concession Sample(ConcessionKind kind) => new()
    {
        Kind = kind,
        Doubled = [new("hall")],
        State = "bedtime",
        DesignMargin = new(4.4),
        Availability = 0.811,
        HopLimit = 5,
        IsBeyondRadio = true,
        Network = new("meters"),
        Moved = [new("loft-sensor")],
        Unserved = [],
        Repeaters = 1,
        Cost = 20,
        IsProven = true,
    };
}
