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

    private readonly int attempts;
    private readonly double access;
    private readonly TimeDistribution answered;

    /// <summary>The time that a number of transmissions without answer takes, by that number.</summary>
    private readonly ImmutableArray<TimeDistribution> lost;

    /// <summary>The time that a number of attempts without a free channel takes, by that number.</summary>
    private readonly ImmutableArray<TimeDistribution> givenUp;

    /// <summary>Works out the times of a kind of radio.</summary>
    /// <param name="radio">The kind of radio.</param>
    /// <param name="busy">Probability that a look finds the channel busy, within <see cref="BackOff.Busy"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability or a frame length is outside its range.</exception>
    public HopTime(RadioProfile radio, double busy)
    {
        MediumAccess medium = radio.Access;
        var backOff = new BackOff(medium, busy);
        double turnMicroseconds = medium.LookMicroseconds > 0 ? medium.TurnaroundMicroseconds : 0;
        TimeDistribution sent = backOff.Waiting.Then(TimeDistribution.Certain(turnMicroseconds + (1e3 * Airtime.Milliseconds(radio, radio.FrameOctets))));
        TimeDistribution retryWait = TimeDistribution.Certain(medium.RetryDelayMicroseconds)
            .Then(TimeDistribution.Uniform(medium.BackOffUnitMicroseconds, medium.RetryBackOffUnits));
        attempts = medium.Attempts;
        access = backOff.Access;
        answered = sent.Then(TimeDistribution.Certain(1e3 * AnswerMilliseconds(radio)));
        lost = Repeated(sent.Then(TimeDistribution.Certain(1e3 * PatienceMilliseconds(radio))).Then(retryWait), attempts);
        givenUp = access < 1 ? Repeated(backOff.GivenUp.Then(retryWait), attempts) : [TimeDistribution.Certain(0)];
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
        for (int refused = 0; refused < givenUp.Length; refused++)
        {
            for (int failed = 0; failed + refused < attempts && failed < shares.Length; failed++)
            {
                double orders = SpecialFunctions.Binomial(failed + refused, refused);
                double probability = orders * Math.Pow(1 - access, refused) * Math.Pow(access, failed + 1) * shares[failed];
                if (probability > Negligible) parts.Add((probability, givenUp[refused].Then(lost[failed]).Then(answered)));
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
