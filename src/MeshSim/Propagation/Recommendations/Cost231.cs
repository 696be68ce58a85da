using MeshSim.Quantities;

namespace MeshSim.Propagation.Recommendations;

/// <summary>
/// Multi-wall model of the COST 231 final report (1999), chapter 4: free space, walls by category, and a floor term that grows
/// less than the number of floors. The constant L_C is 0: the 37 dB sometimes added belong to another form, in which they
/// replace free space at 1 m.
/// </summary>
public static class Cost231
{
    /// <summary>The b of the floor term.</summary>
    public const double FloorExponentB = 0.46;

    /// <summary>Walls thinner than this are light.</summary>
    public const double LightBelowMetres = 0.10;

    /// <summary>Loss of a light wall (plasterboard, thin block) at 1800 MHz, dB.</summary>
    public const double LightWall1800Db = 3.4;

    /// <summary>Loss of a heavy wall (concrete, brick) at 1800 MHz, dB. No other frequency has a published value.</summary>
    public const double HeavyWall1800Db = 6.9;

    /// <summary>Loss between two storeys at 1800 MHz, dB.</summary>
    public const double Floor1800Db = 18.3;

    /// <summary>Loss of a light wall at 900 MHz, dB.</summary>
    public const double LightWall900Db = 1.9;

    /// <summary>Loss between two storeys at 900 MHz, dB.</summary>
    public const double Floor900Db = 14.8;

    /// <summary>Number of floors for which the floor term is used.</summary>
    public static readonly ValidRange Floors = new(0, 100, "floors");

    /// <summary>Where the 900 MHz values count as measured: that cellular band and its rim. Assumed.</summary>
    public static readonly ValidRange Around900Megahertz = new(850, 960, "MHz");

    /// <summary>Where the 1800 MHz values count as measured: that cellular band. Assumed.</summary>
    public static readonly ValidRange Around1800Megahertz = new(1710, 1880, "MHz");

    // Halfway between the two published frequencies on a logarithmic scale.
    private static readonly double NearestChangesAtMegahertz = Math.Sqrt(900.0 * 1800.0);

    /// <summary>Loss of all floors together, dB: k^((k+2)/(k+1) − b) · L_f; 0 without a floor.</summary>
    /// <param name="floors">Number of floors gone through.</param>
    /// <param name="floorLossDb">Loss of one, dB.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of <see cref="Floors"/>.</exception>
    public static double FloorTermDb(int floors, double floorLossDb) => FloorShare(floors) * floors * floorLossDb;

    /// <summary>
    /// By what the loss of each of k floors is multiplied so that they sum to the floor term: k^((k+2)/(k+1) − b − 1). With
    /// unequal floors the term then takes the mean of their losses.
    /// </summary>
    /// <param name="floors">Number of floors gone through.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of <see cref="Floors"/>.</exception>
    public static double FloorShare(int floors)
    {
        Floors.Check(floors);
        if (floors == 0) return 0;  // The printed term would be 0^1.54; no floor costs nothing.

        double exponent = ((floors + 2.0) / (floors + 1.0)) - FloorExponentB;
        return Math.Pow(floors, exponent - 1);  // Section 4.7, multi-wall model
    }

    /// <summary>The multi-wall loss, dB.</summary>
    /// <param name="distanceMetres">Within <see cref="FreeSpace.DistanceMetres"/>.</param>
    /// <param name="frequencyMegahertz">Within <see cref="FreeSpace.FrequencyMegahertz"/>.</param>
    /// <param name="lightWallsDb">Sum over light walls, dB.</param>
    /// <param name="heavyWallsDb">Sum over heavy walls, dB.</param>
    /// <param name="floors">Number of floors gone through.</param>
    /// <param name="floorLossDb">Loss of one floor, dB.</param>
    /// <exception cref="ArgumentOutOfRangeException">Distance, frequency or number of floors is out of range.</exception>
    public static double MultiWallLossDb(
        double distanceMetres, double frequencyMegahertz, double lightWallsDb, double heavyWallsDb, int floors, double floorLossDb) =>
        FreeSpace.LossDb(distanceMetres, frequencyMegahertz) + lightWallsDb + heavyWallsDb + FloorTermDb(floors, floorLossDb);  // Section 4.7

    /// <summary>The category losses to use at a frequency: for each the published value of the nearest frequency.</summary>
    /// <param name="frequency">The carrier.</param>
    public static Cost231Losses LossesAt(Frequency frequency)
    {
        bool near900 = Around900Megahertz.Contains(frequency.Megahertz), near1800 = Around1800Megahertz.Contains(frequency.Megahertz);
        bool is900Nearest = frequency.Megahertz < NearestChangesAtMegahertz;
        bool isExtrapolated = !near900 && !near1800;
        return new(
            new(is900Nearest ? LightWall900Db : LightWall1800Db, isExtrapolated),
            new(HeavyWall1800Db, !near1800),
            new(is900Nearest ? Floor900Db : Floor1800Db, isExtrapolated));
    }
}

/// <summary>A category loss and whether it is used away from the frequency for which it was published.</summary>
/// <param name="LossDb">The loss, dB.</param>
/// <param name="IsExtrapolated">Whether the carrier lies outside the band for which it was published.</param>
public readonly record struct Cost231Loss(double LossDb, bool IsExtrapolated);

/// <summary>The three category losses of COST 231 multi-wall at one frequency.</summary>
/// <param name="Light">One light wall.</param>
/// <param name="Heavy">One heavy wall.</param>
/// <param name="Floor">One floor.</param>
public readonly record struct Cost231Losses(Cost231Loss Light, Cost231Loss Heavy, Cost231Loss Floor);
