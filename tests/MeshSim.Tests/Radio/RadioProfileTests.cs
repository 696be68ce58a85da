namespace MeshSim.Tests.Radio;

public sealed class RadioProfileTests
{
    private static readonly ReferenceTable Channels = ReferenceTable.Read("Radio/ieee802154-2450-channels.csv");

    public static TheoryData<int> ChannelRows => Channels.Rows(16);

    [Theory]
    [MemberData(nameof(ChannelRows))]
    public void Every_channel_has_its_printed_centre(int row) =>
        Channels.ShouldPrint(row, "centre_MHz", RadioSamples.OQpsk.Carrier(Channels.Whole(row, "channel")).Megahertz);

    [Theory]
    [InlineData(10)]
    [InlineData(27)]
    public void A_channel_that_the_profile_lacks_is_refused(int channel) =>
        FluentActions.Invoking(() => RadioSamples.OQpsk.Carrier(channel)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*11 to 26*");
}
