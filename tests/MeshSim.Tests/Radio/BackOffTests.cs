using MeshSim.Files;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class BackOffTests
{
    /// <summary>1e-10 of probability is dropped at each end, of times up to 40 ms; a dozen sums of them.</summary>
    private const double DroppedMicroseconds = 1e-4;

    private static readonly MediumAccess Catalogue = Catalogues.Radios.First(radio => radio.Name == "ieee802154-2450").Access;

    public static readonly ReproducedTable Access = new("Radio/csma-access.csv", 7, ["P_channel_busy"], CompareAccess);

    public static TheoryData<int> AccessPlaces => Access.Places;

    [Theory]
    [MemberData(nameof(AccessPlaces))]
    public void Access_and_waits_are_as_printed(int place) => Access.ShouldBeMetAt(place);

    [Fact]
    public void A_channel_that_is_always_busy_gives_no_access() => new BackOff(Catalogue, 1).Access.Should().Be(0);

    [Fact]
    public void An_impossible_share_is_refused() =>
        FluentActions.Invoking(() => new BackOff(Catalogue, 1.5)).Should().Throw<ArgumentOutOfRangeException>();

    private static IEnumerable<Comparison> CompareAccess(PublishedRow row)
    {
        var backOff = new BackOff(Catalogue, row.Number("P_channel_busy"));
        yield return row.Near("mean_access_delay_us_given_access", 1e3 * backOff.Waiting.MeanMilliseconds, DroppedMicroseconds, "us");
        yield return row.Near("mean_delay_us_at_failure", 1e3 * backOff.GivenUp.MeanMilliseconds, DroppedMicroseconds, "us");
        yield return row.Printed("P_access", backOff.Access);
        yield return row.Printed("P_access_failure", 1 - backOff.Access, scale: 1);
    }
}
