using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Quantities;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>What the air allows a network, in sentences.</summary>
internal static class AirWords
{
    /// <summary>How often each device is asked where the person says nothing else, s.</summary>
    public const double UsualPollSeconds = 60;

    /// <summary>The lead whose gain is told to those who have none, m: what is sold everywhere.</summary>
    private const double LeadToTryMetres = 1.5;

    /// <summary>One sentence or two for each thing that holds for the network; none when nothing does.</summary>
    /// <param name="coverage">Links and routes of the network.</param>
    /// <param name="air">What the air allows it.</param>
    /// <param name="pollSeconds">How often the polling that is costed asks each device, s.</param>
    public static IEnumerable<string> Of(NetworkCoverage coverage, NetworkAir air, double pollSeconds = UsualPollSeconds)
    {
        if (air.BestChannel is { } best) yield return Channel(coverage.Network.Channel, best, air);
        if (coverage.Network.HubNoise > Decibels.Zero) yield return Hub(coverage.Network);
        if (air.Duty is { } duty) yield return Time(duty) + Polling(duty, air.Polled, coverage.Network.Coordinator, pollSeconds);
    }

    private static string Channel(int inUse, int best, NetworkAir air) => ChannelSurvey.Least(air.Channels).Any(channel => channel.Channel == inUse)
        ? FormattableString.Invariant($"No channel is disturbed less by the home's access points than {inUse}, the one in use.")
        : FormattableString.Invariant($"Channel {best} is the least disturbed by the home's access points; {inUse} is in use.");

    private static string Hub(Network network)
    {
        string close = $"USB 3 storage beside {network.Coordinator} is assumed to raise its noise floor by {SharedHubNoise.CloseBy}";
        return network.LeadMetres > 0
            ? $"{close}; at the end of its lead of {Figures.Plain(network.LeadMetres)} m {network.HubNoise} are left."
            : $"{close}; a lead of {Figures.Plain(LeadToTryMetres)} m would leave {SharedHubNoise.Rise(LeadToTryMetres)} of that.";
    }

    private static string Time(DutyBudget duty) =>
        $"Each device may be on the air {Figures.Plain(duty.DutyCycle * 100)} % of the time ({duty.Rule}): "
        + $"{Figures.Count(duty.FramesPerHour)} frames of {Figures.Tenths(duty.FrameMilliseconds)} ms an hour.";

    private static string Polling(DutyBudget duty, int devices, DeviceId coordinator, double pollSeconds)
    {
        // Without acknowledgements nothing listens, so that nothing can be asked.
        if (devices == 0 || duty.AcknowledgementMilliseconds == 0) return "";
        return $" Asking {Figures.Counted(devices, "device")} every {Figures.Plain(pollSeconds)} s takes "
            + $"{Figures.Percent(duty.PollingShare(devices, pollSeconds))} % of what {coordinator} may send, acknowledgements counted; "
            + $"the limit allows every {Figures.Tenths(duty.ShortestPollSeconds(devices))} s.";
    }
}
