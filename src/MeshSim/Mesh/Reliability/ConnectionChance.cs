using MeshSim.Devices;

namespace MeshSim.Mesh.Reliability;

/// <summary>How often a device is connected to the coordinator when shadowing is drawn again and again.</summary>
/// <param name="Device">The device.</param>
/// <param name="Connected">Draws in which it has a route within the hop limit.</param>
/// <param name="Draws">Draws in all.</param>
public sealed record ConnectionChance(DeviceId Device, int Connected, int Draws)
{
    /// <summary>The normal quantile of the two-sided 95 % level, Q⁻¹(0.025).</summary>
    private const double Quantile = 1.959963984540054;

    /// <summary>The estimate, 0 to 1.</summary>
    public double Probability => (double)Connected / Draws;

    /// <summary>
    /// Where the probability lies with 95 % confidence, by the score interval of E. B. Wilson (J. Am. Stat. Assoc. 22, 1927): also
    /// right where all draws or none connect.
    /// </summary>
    public (double Low, double High) Interval
    {
        get
        {
            double square = Quantile * Quantile;
            double middle = (Connected + (square / 2)) / (Draws + square);
            double half = Quantile / (Draws + square) * Math.Sqrt(((double)Connected * (Draws - Connected) / Draws) + (square / 4));
            return (Connected == 0 ? 0 : middle - half, Connected == Draws ? 1 : middle + half);
        }
    }
}
