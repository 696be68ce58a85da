using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>
/// The random waits of unslotted CSMA-CA (IEEE 802.15.4): wait, look, and if the channel is busy wait again from twice as many
/// steps, up to a number of looks. Each look finds the channel busy with the same probability.
/// </summary>
public sealed class BackOff
{
    /// <summary>Accepted probabilities that a look finds the channel busy.</summary>
    public static readonly ValidRange Busy = new(0, 1, "(share of looks)");

    /// <summary>Works out the waits of a kind of radio.</summary>
    /// <param name="access">How it gets a frame across.</param>
    /// <param name="busy">Probability that a look finds the channel busy, within <see cref="Busy"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside its range.</exception>
    public BackOff(MediumAccess access, double busy)
    {
        Busy.Check(busy);
        int looks = Math.Max(1, access.Looks), units = access.BackOffUnits;
        var ends = new List<(double Probability, TimeDistribution Time)>();
        TimeDistribution waited = TimeDistribution.Certain(0), look = TimeDistribution.Certain(access.LookMicroseconds);
        double reached = 1;
        for (int i = 0; i < looks; i++)
        {
            waited = waited.Then(TimeDistribution.Uniform(access.BackOffUnitMicroseconds, units)).Then(look);
            ends.Add((reached * (1 - busy), waited));
            reached *= busy;
            units = Math.Min(2 * units, access.MostBackOffUnits);
        }

        Access = 1 - reached;
        GivenUp = waited;
        Waiting = Access > 0 ? TimeDistribution.Mix(ends) : waited;
    }

    /// <summary>Probability that a look within the allowed number finds the channel free.</summary>
    public double Access { get; }

    /// <summary>Time from the wish to send to sending, given that it comes to that.</summary>
    public TimeDistribution Waiting { get; }

    /// <summary>Time from the wish to send to giving up, given that it comes to that.</summary>
    public TimeDistribution GivenUp { get; }
}
