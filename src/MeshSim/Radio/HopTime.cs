using System.Collections.Immutable;
using MathNet.Numerics;

namespace MeshSim.Radio;

/// <summary>
/// How long one link takes to carry a frame that arrives: random wait and look, the frame, turnaround and acknowledgement; and
/// for each attempt that was lost before, the frame and the wait for an acknowledgement that did not come.
/// </summary>
/// <remarks>An attempt is also lost when every look finds the channel busy: then it costs the waits alone.</remarks>
public sealed class HopTime
{
    /// <summary>Less likely courses are left out: far below what a percentile or a mean shows.</summary>
    private const double Negligible = 1e-12;

    private readonly int _attempts;
    private readonly double _access;
    private readonly TimeDistribution _answered;

    /// <summary>The time that a number of transmissions without answer takes, by that number.</summary>
    private readonly ImmutableArray<TimeDistribution> _lost;

    /// <summary>The time that a number of attempts without a free channel takes, by that number.</summary>
    private readonly ImmutableArray<TimeDistribution> _givenUp;

    /// <summary>Works out the times of a kind of radio.</summary>
    /// <param name="radio">The kind of radio.</param>
    /// <param name="busy">Probability that a look finds the channel busy, within <see cref="BackOff.Busy"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability or a frame length is outside its range.</exception>
    public HopTime(RadioProfile radio, double busy)
    {
        MediumAccess access = radio.Access;
        var backOff = new BackOff(access, busy);
        double turnMicroseconds = access.LookMicroseconds > 0 ? access.TurnaroundMicroseconds : 0;
        TimeDistribution sent = backOff.Waiting.Then(TimeDistribution.Certain(turnMicroseconds + (1e3 * Airtime.Milliseconds(radio, radio.FrameOctets))));
        TimeDistribution retryWait = TimeDistribution.Certain(access.RetryDelayMicroseconds)
            .Then(TimeDistribution.Uniform(access.BackOffUnitMicroseconds, access.RetryBackOffUnits));
        _attempts = access.Attempts;
        _access = backOff.Access;
        _answered = sent.Then(TimeDistribution.Certain(1e3 * AnswerMilliseconds(radio)));
        _lost = Repeated(sent.Then(TimeDistribution.Certain(1e3 * PatienceMilliseconds(radio))).Then(retryWait), _attempts);
        _givenUp = _access < 1 ? Repeated(backOff.GivenUp.Then(retryWait), _attempts) : [TimeDistribution.Certain(0)];
    }

    /// <summary>Turnaround and acknowledgement, ms; 0 where none is sent.</summary>
    /// <param name="radio">The kind of radio.</param>
    public static double AnswerMilliseconds(RadioProfile radio) =>
        radio.Access.AcknowledgementOctets == 0
            ? 0
            : (radio.Access.TurnaroundMicroseconds / 1e3) + Airtime.Milliseconds(radio, radio.Access.AcknowledgementOctets);

    /// <summary>How long a sender waits for an acknowledgement after its frame, ms; 0 where none is sent.</summary>
    /// <param name="radio">The kind of radio.</param>
    public static double PatienceMilliseconds(RadioProfile radio) =>
        radio.Access.AcknowledgementOctets == 0 ? 0 : AnswerMilliseconds(radio) + (radio.Access.PatienceMicroseconds / 1e3);

    /// <summary>What arrives within the radio's attempts, and how long that takes.</summary>
    /// <param name="shares">Share of frames that arrive with each transmission, <see cref="AttemptShares.At"/>.</param>
    /// <returns>The share of frames that arrive, and the time, given that a frame does; null when none does.</returns>
    /// <remarks>
    /// Of m lost transmissions and g attempts without a free channel before the one that arrives, any may come first: there are
    /// (m + g)! / (m! g!) orders, all as likely.
    /// </remarks>
    public (double Arriving, TimeDistribution? Time) Of(ImmutableArray<double> shares)
    {
        var parts = new List<(double Probability, TimeDistribution Time)>();
        for (int givenUp = 0; givenUp < _givenUp.Length; givenUp++)
        {
            for (int lost = 0; lost + givenUp < _attempts && lost < shares.Length; lost++)
            {
                double orders = SpecialFunctions.Binomial(lost + givenUp, givenUp);
                double probability = orders * Math.Pow(1 - _access, givenUp) * Math.Pow(_access, lost + 1) * shares[lost];
                if (probability > Negligible) parts.Add((probability, _givenUp[givenUp].Then(_lost[lost]).Then(_answered)));
            }
        }

        return parts.Count == 0
            ? (0, null)
            : (Math.Min(1, parts.Sum(part => part.Probability)), TimeDistribution.Mix(parts));
    }

    private static ImmutableArray<TimeDistribution> Repeated(TimeDistribution once, int attempts)
    {
        var times = ImmutableArray.CreateBuilder<TimeDistribution>(attempts);
        TimeDistribution sum = TimeDistribution.Certain(0);
        for (int i = 0; i < attempts; i++, sum = sum.Then(once))
            times.Add(sum);
        return times.ToImmutable();
    }
}
