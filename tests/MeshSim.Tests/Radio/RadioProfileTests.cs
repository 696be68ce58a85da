namespace MeshSim.Tests.Radio;

public sealed class RadioProfileTests
{
    public static readonly ReproducedTable Channels = new(
        "Radio/ieee802154-2450-channels.csv",
        16,
        ["channel"],
        row => [row.Within("centre_MHz", RadioSamples.OQpsk.Carrier(row.Whole("channel")).Megahertz)]);

    public static TheoryData<int> ChannelPlaces => Channels.Places;

    [Theory]
    [MemberData(nameof(ChannelPlaces))]
    public void Every_channel_has_its_printed_centre(int place) => Channels.ShouldBeMetAt(place);

    [Theory]
    [InlineData(10)]
    [InlineData(27)]
    public void A_channel_that_the_profile_lacks_is_refused(int channel) =>
        FluentActions.Invoking(() => RadioSamples.OQpsk.Carrier(channel)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*11 to 26*");
}
