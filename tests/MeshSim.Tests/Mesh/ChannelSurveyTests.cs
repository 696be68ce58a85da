using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;

namespace MeshSim.Tests.Mesh;

public sealed class ChannelSurveyTests
{
    private static readonly Network Net = MeshSamples.Network(hopLimit: 5);

    [Fact]
    public void Between_access_points_on_1_6_and_11_the_lowest_clear_channel_wins()
    {
        ImmutableArray<ChannelEvidence> channels = Of(
            InterferenceHomes.Row(3, [.. new[] { 1, 6, 11 }.Select(channel => InterferenceHomes.AccessPoint(channel, 4, name: FormattableString.Invariant($"on {channel}")))]));

        channels.Select(channel => channel.Channel).Should().Equal(Enumerable.Range(11, 16));
        channels.OrderBy(channel => channel.Worst).Take(4).Select(channel => channel.Channel).Should().BeEquivalentTo([15, 20, 25, 26]);

        // Channel 26 has only one neighbour, 18 MHz away; the others lie 12 and 13 MHz from two.
        ChannelSurvey.Best(channels).Channel.Should().Be(26);
    }

    [Fact]
    public void Alike_channels_go_to_the_lower_number()
    {
        ImmutableArray<ChannelEvidence> channels = Of(InterferenceHomes.Row(3, InterferenceHomes.AccessPoint(channel: 1, xMetres: 4)));
        ChannelSurvey.Best(channels).Channel.Should().Be(19, "the mask is level from 30 MHz on");
        ChannelSurvey.Least(channels).Select(channel => channel.Channel).Should().Equal(19, 20, 21, 22, 23, 24, 25, 26);
    }

    [Fact]
    public void A_channel_that_reaches_more_devices_beats_a_quieter_one()
    {
        ImmutableArray<ChannelEvidence> channels = [new(11, new(-90), new(-90), 2), new(12, new(-50), new(-70), 1), new(13, new(-60), new(-60), 1)];
        ChannelSurvey.Best(channels).Channel.Should().Be(13);
    }

    [Fact]
    public void Worst_and_median_are_means_over_time_at_the_devices()
    {
        // Devices at 0, 1 and 2 m, the access point at 4 m: 40, 30 and 20 dB away, on for 30 % of the time; the share is published.
        ChannelEvidence channel = Of(InterferenceHomes.Row(3, InterferenceHomes.AccessPoint(channel: 6, xMetres: 4))).Single(evidence => evidence.Channel == 18);
        double meanDbm = 20 - 9.76645225575 + (10 * Math.Log10(0.3));
        channel.Worst.Dbm.Should().BeApproximately(meanDbm - 20, 1e-9, "eleven decimals are printed");
        channel.Median.Dbm.Should().BeApproximately(meanDbm - 30, 1e-9);
    }

    [Fact]
    public void The_channel_in_use_has_the_links_that_were_computed()
    {
        Home home = InterferenceHomes.Row(6, InterferenceHomes.AccessPoint(channel: 6, xMetres: 4, busy: 0.9));
        Network net = Net with { Channel = 17 };
        ImmutableArray<Link> links = LinkTable.Compute(home, net, new InterferenceHomes.TenDecibelsPerMetre(), state: null);
        var graph = new MeshGraph(net, home.Devices, links, home.Parameters.DesignMargin);
        int unreached = Routing.ReachOf(graph).Count(reach => !reach.IsReached);

        Of(home, net).Single(channel => channel.Channel == 17).Unreached.Should().Be(unreached);
    }

    [Fact]
    public void Where_nobody_disturbs_or_there_is_no_choice_nothing_is_compared()
    {
        Of(InterferenceHomes.Row(3)).Should().BeEmpty();
        Of(InterferenceHomes.Row(3, InterferenceHomes.AccessPoint(6, 4)), Net with { Radio = Net.Radio with { LastChannel = 11 }, Channel = 11 }).Should().BeEmpty();
    }

    private static ImmutableArray<ChannelEvidence> Of(Home home, Network? network = null)
    {
        Network net = network ?? Net;
        var model = new InterferenceHomes.TenDecibelsPerMetre();
        return ChannelSurvey.Of(home, net, model, home.Devices, LinkTable.Compute(home, net, model, state: null));
    }
}
