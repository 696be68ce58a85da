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
    [InlineData(ConcessionKind.WithoutState, "bedtime need not hold")]
    [InlineData(ConcessionKind.LessMargin, "2.0 dB less margin (4.4 dB, holds in 81.1 % of cases)")]
    [InlineData(ConcessionKind.LeastMargin, "2.0 dB less margin (4.4 dB, holds in 81.1 % of cases), the least that serves all")]
    [InlineData(ConcessionKind.MoreHops, "5 hops, one more: more than this radio allows")]
    [InlineData(ConcessionKind.OtherNetwork, "network meters for loft-sensor, if there is such a device to buy")]
    public void Each_concession_says_what_is_given_in(ConcessionKind kind, string words) => ConcessionWords.Of(Sample(kind), Planned).Should().Be(words);

    [Fact]
    public void Another_network_that_serves_nobody_says_so() =>
        ConcessionWords.Of(Sample(ConcessionKind.OtherNetwork) with { Moved = [] }, Planned).Should().Be("network meters for them: serves none");

    [Fact]
    public void Hops_within_the_radio_come_without_a_warning_and_fading_without_a_share()
    {
        ConcessionWords.Of(Sample(ConcessionKind.MoreHops) with { IsBeyondRadio = false }, Planned).Should().Be("5 hops, one more");
        ConcessionWords.Of(Sample(ConcessionKind.LessMargin) with { Availability = null }, Planned).Should().Be("2.0 dB less margin (4.4 dB)");
    }

    [Theory]
    [InlineData(0, null, "nothing would do")]
    [InlineData(1, null, "no other would do")]
    [InlineData(3, null, "2 more that would do")]
    [InlineData(3, 6, "2 more that would do; the way there is takes 6 hops")]
    public void An_obstacle_says_what_else_would_do(int links, int? hops, string words) =>
        ConcessionWords.Else(new Obstacle(default(PlacementCase), [], null, links, hops)).Should().Be(words);

    [Fact]
    public void The_link_names_both_ends_or_that_there_is_none()
    {
        ConcessionWords.Link(new(default, [], new ShortLink("outlet a", "end device b", new(2)), 1, null)).Should().Be("outlet a – end device b");
        ConcessionWords.Link(new(default, [], null, 0, null)).Should().Be("none: no level leads there");
    }

    private static Concession Sample(ConcessionKind kind) => new()
    {
        Kind = kind,
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
