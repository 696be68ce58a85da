using System.Collections.Immutable;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>What the air allows one network, as JSON. What does not hold for it is null or empty.</summary>
internal sealed record AirJson(
    int Channel, int? BestChannel, ImmutableArray<ChannelJson> Channels, double CoordinatorNoiseRiseDb, DutyJson? Duty)
{
    /// <summary>The record of a network's air.</summary>
    public static AirJson Of(NetworkCoverage coverage, NetworkAir air, double pollSeconds) => new(
        coverage.Network.Channel,
        air.BestChannel,
        [.. air.Channels.Select(ChannelJson.Of)],
        coverage.Network.HubNoise.Value,
        DutyJson.Of(air, pollSeconds));
}

/// <summary>What Wi-Fi leaves of one channel.</summary>
internal sealed record ChannelJson(int Channel, double WorstInterferenceDbm, double MedianInterferenceDbm, int Unreachable)
{
    /// <summary>The record of a channel's evidence.</summary>
    public static ChannelJson Of(ChannelEvidence channel) => new(channel.Channel, channel.Worst.Dbm, channel.Median.Dbm, channel.Unreached);
}

/// <summary>What a duty-cycle limit leaves.</summary>
internal sealed record DutyJson(
    string Rule,
    double DutyCycle,
    double FrameMilliseconds,
    double AcknowledgementMilliseconds,
    int FramesPerHour,
    int DevicesPolled,
    double PollSeconds,
    double PollingShare,
    double ShortestPollSeconds)
{
    /// <summary>The record of a network's budget; null where there is no limit.</summary>
    public static DutyJson? Of(NetworkAir air, double pollSeconds) => air.Duty is not { } duty ? null : new(
        duty.Rule,
        duty.DutyCycle,
        duty.FrameMilliseconds,
        duty.AcknowledgementMilliseconds,
        duty.FramesPerHour,
        air.Polled,
        pollSeconds,
        duty.PollingShare(air.Polled, pollSeconds),
        duty.ShortestPollSeconds(air.Polled));
}
