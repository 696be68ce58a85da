using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>What Wi-Fi leaves of each channel of a network.</summary>
internal static class ChannelsTable
{
    /// <summary>The table of a network's channels.</summary>
    public static Table Of(Network network, NetworkAir air) => new(
        [new("Channel", true), new("MHz", true), new("Worst dBm", true), new("Median dBm", true), new("No reliable way", true), new("")],
        [.. air.Channels.Select(channel => Row(network, air, channel))])
    {
        Notes =
        [
            "Worst, median: what the access points put into the channel at the device that has most of it and at the one in the "
            + "middle, averaged over time. The transmit mask of IEEE 802.11 is a ceiling: real ones lie below it away from their channel.",
        ],
    };

    private static ImmutableArray<string> Row(Network network, NetworkAir air, ChannelEvidence channel)
    {
        string[] words =
        [
            .. channel.Channel == air.BestChannel ? ["best"] : Array.Empty<string>(),
            .. channel.Channel == network.Channel ? ["in use"] : Array.Empty<string>(),
        ];
        return
        [
            Figures.Count(channel.Channel),
            Figures.Plain(network.Radio.Carrier(channel.Channel).Megahertz),
            Figures.Dbm(channel.Worst),
            Figures.Dbm(channel.Median),
            Figures.Count(channel.Unreached),
            string.Join(", ", words),
        ];
    }
}
