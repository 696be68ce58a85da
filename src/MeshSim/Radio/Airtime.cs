using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>How long a frame occupies the air.</summary>
public static class Airtime
{
    /// <summary>Accepted shares of time on the air.</summary>
    public static readonly ValidRange DutyCycle = new(0, 1, "(share of time)");

    /// <summary>An hour, the time over which duty cycles are counted.</summary>
    public const double MillisecondsPerHour = 3_600_000;

    /// <summary>Eight bits for each octet before and in the payload, at the profile's bit rate, ms.</summary>
    /// <param name="radio">The kind of radio.</param>
    /// <param name="frameOctets">Physical-layer payload, within <see cref="PacketErrorRate.Octets"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frame length is outside its range.</exception>
    public static double Milliseconds(RadioProfile radio, int frameOctets) =>
        8 * (radio.OverheadOctets + PacketErrorRate.Octets.Check(frameOctets)) / radio.BitRateKilobitsPerSecond;

    /// <summary>The most whole frames of a length that one device may send in an hour under a duty-cycle limit.</summary>
    /// <param name="radio">The kind of radio.</param>
    /// <param name="frameOctets">Physical-layer payload, within <see cref="PacketErrorRate.Octets"/>.</param>
    /// <param name="dutyCycle">Largest share of time on the air, within <see cref="DutyCycle"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static int FramesPerHour(RadioProfile radio, int frameOctets, double dutyCycle) =>
        (int)Math.Floor(DutyCycle.Check(dutyCycle) * MillisecondsPerHour / Milliseconds(radio, frameOctets));
}
