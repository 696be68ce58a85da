
namespace MeshSim.Radio;

/// <summary>
/// How long something takes, as probabilities on whole steps of <see cref="StepMicroseconds"/>. Sums are exact convolutions on
/// that lattice; a time between two steps goes to the nearest.
/// </summary>
public sealed class TimeDistribution
{
    /// <summary>One symbol of IEEE 802.15.4 at 2450 MHz: every time of that standard is a whole number of these.</summary>
    public const double StepMicroseconds = 16;

    /// <summary>Probabilities at both ends that together stay below this are dropped: far below what a percentile or a mean shows.</summary>
    private const double Negligible = 1e-10;

    private readonly int first;
    private readonly double[] shares;

    private TimeDistribution(int first, double[] shares) => (this.first, this.shares) = Trimmed(first, shares);

    /// <summary>A time that is always the same.</summary>
    /// <param name="microseconds">The time, µs.</param>
    public static TimeDistribution Certain(double microseconds) => new(Step(microseconds), [1]);

    /// <summary>0, 1, 2 and so on steps of a unit, each as likely.</summary>
    /// <param name="unitMicroseconds">The unit, µs.</param>
    /// <param name="count">How many different times.</param>
    public static TimeDistribution Uniform(double unitMicroseconds, int count)
    {
        var counted = new double[Step(unitMicroseconds * (count - 1)) + 1];
        for (int i = 0; i < count; i++)
            counted[Step(unitMicroseconds * i)] += 1.0 / count;
        return new(0, counted);
    }

    /// <summary>One of several, each with its probability; the probabilities are divided by their sum.</summary>
    /// <param name="parts">At least one with a probability above 0.</param>
    public static TimeDistribution Mix(params IReadOnlyList<(double Probability, TimeDistribution Time)> parts)
    {
        double sum = parts.Sum(part => part.Probability);
        int start = parts.Min(part => part.Time.first), end = parts.Max(part => part.Time.first + part.Time.shares.Length);
        var mixed = new double[end - start];
        foreach ((double probability, TimeDistribution time) in parts)
            for (int i = 0; i < time.shares.Length; i++)
                mixed[time.first - start + i] += probability / sum * time.shares[i];
        return new(start, mixed);
    }

    /// <summary>One after the other, independent of each other.</summary>
    public TimeDistribution Then(TimeDistribution next)
    {
        var sums = new double[shares.Length + next.shares.Length - 1];
        (int Step, double Share)[] occupied = [.. next.shares.Index().Where(entry => entry.Item > 0)];
        for (int i = 0; i < shares.Length; i++)
        {
            if (shares[i] == 0) continue;
            foreach ((int step, double share) in occupied)
                sums[i + step] += shares[i] * share;
        }

        return new(first + next.first, sums);
    }

    /// <summary>The expected time, ms.</summary>
    public double MeanMilliseconds => Milliseconds(shares.Index().Sum(entry => entry.Item * (first + entry.Index)) / shares.Sum());

    /// <summary>The least time within which it happens with a probability, ms.</summary>
    /// <param name="probability">Within <see cref="NormalDistribution.Probability"/>.</param>
    public double QuantileMilliseconds(double probability)
    {
        double wanted = NormalDistribution.Probability.Check(probability) * shares.Sum(), sum = 0;
        int step = 0;
        while (step < shares.Length - 1 && (sum += shares[step]) < wanted)
            step++;
        return Milliseconds(first + step);
    }

    private static int Step(double microseconds) => (int)Math.Round(microseconds / StepMicroseconds, MidpointRounding.AwayFromZero);

    private static double Milliseconds(double steps) => steps * StepMicroseconds / 1e3;

    private static (int First, double[] Shares) Trimmed(int first, double[] shares)
    {
        int start = 0, end = shares.Length;
        for (double dropped = shares[start]; dropped < Negligible / 2 && start < end - 1; dropped += shares[start]) start++;
        for (double dropped = shares[end - 1]; dropped < Negligible / 2 && end - 1 > start; dropped += shares[end - 1]) end--;
        return (first + start, shares[start..end]);
    }
}
