using MeshSim.Quantities;

namespace MeshSim.Propagation.Recommendations;

/// <summary>What a building is used for, in the older form of ITU-R P.1238.</summary>
public enum BuildingUse
{
    /// <summary>Homes.</summary>
    Residential,

    /// <summary>Offices.</summary>
    Office,

    /// <summary>Shops.</summary>
    Commercial,
}

/// <summary>
/// Indoor loss by distance and floors alone, the older form of ITU-R P.1238 (to about revision 9): 20 log f + N log d +
/// L_f(n) − 28. Its −28 rounds the free-space constant 27.55, so at 1 m it lies 0.45 dB below free space; kept as printed.
/// </summary>
public static class P1238
{
    /// <summary>Accepted frequencies: those of the later revisions of this form (from memory).</summary>
    public static readonly ValidRange FrequencyMegahertz = new(300, 100_000, "MHz");

    /// <summary>Accepted distances: from 1 m, as the text says, to far beyond any house.</summary>
    public static readonly ValidRange DistanceMetres = new(1, 10_000, "m");

    /// <summary>Accepted number of floors between the ends.</summary>
    public static readonly ValidRange Floors = new(0, 100, "floors");

    /// <summary>Where the distance coefficients of <see cref="DistanceCoefficient"/> were published: 1.8 to 2 GHz.</summary>
    public static readonly ValidRange CoefficientMegahertz = new(1800, 2000, "MHz");

    /// <summary>The 2.4 GHz band, for which the residential coefficient (from memory) and the office one are the same.</summary>
    public static readonly ValidRange Band2400Megahertz = new(2400, 2500, "MHz");

    /// <summary>The loss, dB.</summary>
    /// <param name="distanceMetres">Within <see cref="DistanceMetres"/>.</param>
    /// <param name="frequencyMegahertz">Within <see cref="FrequencyMegahertz"/>.</param>
    /// <param name="distanceCoefficient">N, dB per decade of distance.</param>
    /// <param name="floorLossDb">L_f(n), dB.</param>
    /// <exception cref="ArgumentOutOfRangeException">Distance or frequency is out of range.</exception>
    public static double LossDb(double distanceMetres, double frequencyMegahertz, double distanceCoefficient, double floorLossDb)
    {
        DistanceMetres.Check(distanceMetres);
        FrequencyMegahertz.Check(frequencyMegahertz);

        return (20 * Math.Log10(frequencyMegahertz)) + (distanceCoefficient * Math.Log10(distanceMetres)) + floorLossDb - 28;  // Equation (1)
    }

    /// <summary>N at 1.8 to 2 GHz, dB per decade of distance.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such use.</exception>
    public static double DistanceCoefficient(BuildingUse use) => use switch
    {
        BuildingUse.Residential => 28,  // Table 2
        BuildingUse.Office => 30,  // Table 2
        BuildingUse.Commercial => 22,  // Table 2
        _ => throw new ArgumentOutOfRangeException(nameof(use), use, "no such use"),
    };

    /// <summary>L_f(n) at 1.8 to 2 GHz, dB; 0 without a floor.</summary>
    /// <param name="use">Kind of building.</param>
    /// <param name="floors">Number of floors between the ends, within <see cref="Floors"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such use, or a number out of range.</exception>
    public static double FloorLossDb(BuildingUse use, int floors)
    {
        Floors.Check(floors);
        if (floors == 0) return 0;
        return use switch
        {
            BuildingUse.Residential => 4 * floors,  // Table 3
            BuildingUse.Office => 15 + (4 * (floors - 1)),  // Table 3
            BuildingUse.Commercial => 6 + (3 * (floors - 1)),  // Table 3
            _ => throw new ArgumentOutOfRangeException(nameof(use), use, "no such use"),
        };
    }

    /// <summary>Whether N is used away from the bands for which it was published; for homes there is none below 1.8 GHz.</summary>
    public static bool IsCoefficientExtrapolated(Frequency frequency) =>
        !CoefficientMegahertz.Contains(frequency.Megahertz) && !Band2400Megahertz.Contains(frequency.Megahertz);

    /// <summary>Whether L_f is used away from the band for which it was published.</summary>
    public static bool IsFloorLossExtrapolated(Frequency frequency) => !CoefficientMegahertz.Contains(frequency.Megahertz);
}
