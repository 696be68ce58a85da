using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>How much of what a Wi-Fi access point (IEEE 802.11 at 2.4 GHz) radiates gets into the channel of another radio.</summary>
public static class WifiOverlap
{
    /// <summary>Accepted channels.</summary>
    public static readonly ValidRange Channels = new(1, 14, "");

    /// <summary>Carriers that a 2.4 GHz access point disturbs at all: the band with its edges.</summary>
    public static readonly ValidRange DisturbedMegahertz = new(2400, 2500, "MHz");

    /// <summary>
    /// In a channel of 40 MHz the second half lies above the first up to this channel and below it from the next on. Assumed: a
    /// home folder names the first half alone, and with thirteen channels both have their place then.
    /// </summary>
    public const int LastChannelWithUpperHalf = 7;

    /// <summary>What lies farther from the carrier than this counts as the second channel beside it, as shares of the channel step.</summary>
    private const double AdjacentSteps = 1.5;

    /// <summary>The middle of what an access point occupies: 2407 + 5 n MHz (channel 14: 2484), moved by 10 MHz when it is 40 MHz wide.</summary>
    /// <param name="channel">Number of the channel, or of its first half, within <see cref="Channels"/>.</param>
    /// <param name="widthMegahertz">20 or 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such channel.</exception>
    public static Frequency Centre(int channel, int widthMegahertz)
    {
        double ofHalf = (int)Channels.Check(channel) == 14 ? 2484 : 2407 + (5 * channel);
        if (widthMegahertz == 20) return new(ofHalf);
        return new(channel <= LastChannelWithUpperHalf ? ofHalf + 10 : ofHalf - 10);
    }

    /// <summary>
    /// Share of an access point's power that a receiver takes for its own channel: what the transmit mask puts within the noise
    /// bandwidth, and of what lies beside that, the part that the receiver's selectivity lets through where it is stated.
    /// </summary>
    /// <param name="channel">The access point's channel, within <see cref="Channels"/>.</param>
    /// <param name="widthMegahertz">Its width, 20 or 40.</param>
    /// <param name="radio">The receiver.</param>
    /// <param name="carrier">Its carrier.</param>
    /// <returns>0 where the carrier is outside <see cref="DisturbedMegahertz"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such channel or width.</exception>
    public static double Share(int channel, int widthMegahertz, RadioProfile radio, Frequency carrier)
    {
        TransmitMask mask = TransmitMask.OfWidth(widthMegahertz);
        double offset = carrier.Megahertz - Centre(channel, widthMegahertz).Megahertz;
        if (!DisturbedMegahertz.Contains(carrier.Megahertz)) return 0;

        double half = radio.NoiseBandwidthKilohertz / 2e3, edge = Math.Max(half, AdjacentSteps * radio.ChannelStepMegahertz);
        double within = mask.Share(offset - half, offset + half);
        double beside = mask.Share(offset - edge, offset + edge) - within;
        double beyond = Math.Max(0, 1 - within - beside);
        return within + (beside * Passed(radio.AdjacentRejection)) + (beyond * Passed(radio.AlternateRejection));
    }

    private static double Passed(Decibels? rejection) => rejection is { } stated ? (-stated).PowerRatio : 0;
}
