using MeshSim.Quantities;

namespace MeshSim.Propagation;

/// <summary>
/// The way round: besides the straight way through all walls, some power reaches the other end through doorways, along corridors
/// and off the furniture. The powers of both ways add, so walls together cost no more than the way round does. Ours; the
/// figure is from measured flats and offices.
/// </summary>
public static class Detour
{
    /// <summary>What the way round costs beyond the air alone where the home says nothing, dB.</summary>
    public const double UsualDb = 25;

    /// <summary>Accepted costs of the way round: below, walls would hardly matter; above, the way round.</summary>
    public static readonly ValidRange ExtraDb = new(5, 60, "dB on the way round");

    /// <summary>What walls cost once power may go round them: their sum while that is small, never more than about the way round.</summary>
    /// <param name="wallsDb">Everything met on the straight way within storeys, added up, dB.</param>
    /// <param name="extraDb">What the way round costs, dB.</param>
    public static double LossDb(double wallsDb, double extraDb) => new WayRound(extraDb).LossDb(wallsDb);

    /// <summary>By how much <see cref="LossDb"/> grows with what the way round costs.</summary>
    /// <param name="wallsDb">As there, dB.</param>
    /// <param name="extraDb">As there, dB.</param>
    public static double ExtraSlope(double wallsDb, double extraDb)
    {
        double round = Math.Pow(10, -extraDb / 10);
        return (round / (Math.Pow(10, -wallsDb / 10) + round)) - (round / (1 + round));
    }

    /// <summary>By how much <see cref="LossDb"/> grows with the sum of the walls: the share of the power that comes the straight way.</summary>
    /// <param name="wallsDb">As there, dB.</param>
    /// <param name="extraDb">As there, dB.</param>
    public static double Slope(double wallsDb, double extraDb)
    {
        double straight = Math.Pow(10, -wallsDb / 10);
        return straight / (straight + Math.Pow(10, -extraDb / 10));
    }
}

/// <summary>A way round of one cost: its power is worked out once for all paths.</summary>
/// <param name="extraDb">What it costs, dB.</param>
internal readonly struct WayRound(double extraDb)
{
    private readonly double power = Math.Pow(10, -extraDb / 10);

    /// <summary>As <see cref="Detour.LossDb"/>.</summary>
    public double LossDb(double wallsDb) => wallsDb == 0 ? 0 : -10 * Math.Log10((Math.Pow(10, -wallsDb / 10) + power) / (1 + power));
}
