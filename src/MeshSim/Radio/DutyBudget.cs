using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>What a limit on the share of time on the air leaves each device, and what regular polling costs the coordinator of it.</summary>
public sealed record DutyBudget
{
    /// <summary>Accepted times between two polls of the same device.</summary>
    public static readonly ValidRange PollSeconds = new(0.1, 86_400, "s");

    /// <summary>The rule of the band in words.</summary>
    public required string Rule { get; init; }

    /// <summary>Largest share of time on the air, below 1.</summary>
    public required double DutyCycle { get; init; }

    /// <summary>The planning frame on the air, ms.</summary>
    public required double FrameMilliseconds { get; init; }

    /// <summary>An acknowledgement on the air, ms; 0 where none is sent.</summary>
    public required double AcknowledgementMilliseconds { get; init; }

    /// <summary>The most planning frames that a device may send in an hour when it sends nothing else.</summary>
    public required int FramesPerHour { get; init; }

    /// <summary>The budget of a kind of radio; null where no row of the band limits covers it or its row has no limit of time.</summary>
    /// <param name="radio">The kind of radio.</param>
    /// <param name="carrier">Its carrier.</param>
    /// <param name="limits">The band limits of its region.</param>
    public static DutyBudget? Of(RadioProfile radio, Frequency carrier, IEnumerable<BandLimit> limits)
    {
        if (BandCheck.Of(radio, carrier, radio.TransmitPower, limits).Row is not { DutyCycle: < 1 } row) return null;
        int octets = radio.Access.AcknowledgementOctets;
        return new()
        {
            Rule = row.Rule,
            DutyCycle = row.DutyCycle,
            FrameMilliseconds = Airtime.Milliseconds(radio, radio.FrameOctets),
            AcknowledgementMilliseconds = octets == 0 ? 0 : Airtime.Milliseconds(radio, octets),
            FramesPerHour = Airtime.FramesPerHour(radio, radio.FrameOctets, row.DutyCycle),
        };
    }

    /// <summary>
    /// Share of the coordinator's allowed time that polling takes: for each poll it sends one frame and acknowledges one answer.
    /// Retries are not counted, nor what routers spend on passing frames on.
    /// </summary>
    /// <param name="devices">How many devices it polls.</param>
    /// <param name="pollSeconds">Time between two polls of the same device, within <see cref="PollSeconds"/>.</param>
    /// <returns>Above 1 when the limit does not allow it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside its range, or the number is negative.</exception>
    public double PollingShare(int devices, double pollSeconds)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(devices);
        return devices * PollMilliseconds / (PollSeconds.Check(pollSeconds) * 1e3 * DutyCycle);
    }

    /// <summary>The shortest time between two polls of the same device that the limit allows, s.</summary>
    /// <param name="devices">How many devices are polled.</param>
    public double ShortestPollSeconds(int devices) => devices * PollMilliseconds / (1e3 * DutyCycle);

    private double PollMilliseconds => FrameMilliseconds + AcknowledgementMilliseconds;
}
