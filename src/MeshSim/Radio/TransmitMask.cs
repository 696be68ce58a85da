using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>
/// The most that a transmitter may radiate at each distance from its centre, relative to the middle of its band: corners joined
/// by straight lines in decibels over frequency, level beyond the last corner. A ceiling: real transmitters lie below it away
/// from their channel.
/// </summary>
public sealed class TransmitMask
{
    /// <summary>
    /// IEEE 802.11, OFDM in 20 MHz: 0 dBr to 9 MHz, −20 at 11, −28 at 20, −40 at 30 MHz (transcribed from a document of the
    /// standard's working group).
    /// </summary>
    public static readonly TransmitMask Ofdm20 = new((9, 0), (11, -20), (20, -28), (30, -40));

    /// <summary>
    /// IEEE 802.11, OFDM in 40 MHz: 0 dBr to 19 MHz, −20 at 21, −28 at 40, −40 at 60 MHz. Assumed: the mask of 20 MHz made twice
    /// as wide but for its edge, as remembered from the standard.
    /// </summary>
    public static readonly TransmitMask Ofdm40 = new((19, 0), (21, -20), (40, -28), (60, -40));

    private readonly ImmutableArray<(double OffsetMegahertz, double LevelDb)> corners;
    private readonly double totalMegahertz;

    /// <summary>A mask by its corners.</summary>
    /// <param name="corners">Distance from the centre, MHz, and level, dB; from the centre outwards. The first holds from the centre on.</param>
    /// <exception cref="ArgumentException">No corner, or the distances do not rise.</exception>
    public TransmitMask(params ImmutableArray<(double OffsetMegahertz, double LevelDb)> corners)
    {
        if (corners.IsEmpty || corners[0].OffsetMegahertz <= 0 || corners.Zip(corners.Skip(1)).Any(pair => pair.First.OffsetMegahertz >= pair.Second.OffsetMegahertz))
            throw new ArgumentException("corners must lead from the centre outwards", nameof(corners));
        this.corners = corners;
        totalMegahertz = 2 * FromCentre(corners[^1].OffsetMegahertz);
    }

    /// <summary>The mask of a channel width of IEEE 802.11.</summary>
    /// <param name="widthMegahertz">20 or 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another width.</exception>
    public static TransmitMask OfWidth(int widthMegahertz) => widthMegahertz switch
    {
        20 => Ofdm20,
        40 => Ofdm40,
        _ => throw new ArgumentOutOfRangeException(nameof(widthMegahertz), widthMegahertz, "must be 20 or 40 MHz"),
    };

    /// <summary>The level at a distance from the centre, on either side.</summary>
    /// <param name="offsetMegahertz">Distance, MHz.</param>
    public Decibels LevelAt(double offsetMegahertz)
    {
        double offset = Math.Abs(offsetMegahertz);
        if (offset <= corners[0].OffsetMegahertz) return new(corners[0].LevelDb);
        for (int i = 1; i < corners.Length; i++)
        {
            (double left, double leftDb) = corners[i - 1];
            (double right, double rightDb) = corners[i];
            if (offset <= right) return new(leftDb + ((rightDb - leftDb) * (offset - left) / (right - left)));
        }

        return new(corners[^1].LevelDb);
    }

    /// <summary>
    /// Share of the power between two distances from the centre, of all within the last corner: the integral of 10^(level/10) in
    /// closed form. Beyond the last corner the level is constant, so what lies there comes on top of the whole.
    /// </summary>
    /// <param name="fromMegahertz">Lower end, MHz from the centre, negative below it.</param>
    /// <param name="toMegahertz">Upper end, MHz from the centre.</param>
    public double Share(double fromMegahertz, double toMegahertz) => (Signed(toMegahertz) - Signed(fromMegahertz)) / totalMegahertz;

    /// <summary>Width of a flat band of 0 dBr that holds as much power, MHz.</summary>
    public double EquivalentMegahertz => totalMegahertz;

    private double Signed(double offsetMegahertz) => Math.Sign(offsetMegahertz) * FromCentre(Math.Abs(offsetMegahertz));

    /// <summary>The integral from the centre to a distance, in MHz at 0 dBr.</summary>
    private double FromCentre(double offset)
    {
        (double last, double lastDb) = corners[0];
        double sum = Math.Min(offset, last) * new Decibels(lastDb).PowerRatio;
        foreach ((double right, double rightDb) in corners.Skip(1))
        {
            if (offset <= last) return sum;
            sum += Piece(last, lastDb, right, rightDb, Math.Min(offset, right));
            (last, lastDb) = (right, rightDb);
        }

        return offset <= last ? sum : sum + ((offset - last) * new Decibels(lastDb).PowerRatio);
    }

    /// <summary>The integral of an exponential from a corner to a place before the next.</summary>
    private static double Piece(double left, double leftDb, double right, double rightDb, double end)
    {
        double slope = Math.Log(10) / 10 * (rightDb - leftDb) / (right - left);
        double start = new Decibels(leftDb).PowerRatio;
        return slope == 0 ? start * (end - left) : start * SmallDifferences.ExponentialMinusOne(slope * (end - left)) / slope;
    }
}
