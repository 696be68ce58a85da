namespace MeshSim.FloorPlans.Descriptions;

/// <summary>Turns directions on the plan into sides of the compass.</summary>
internal static class Compass
{
    private const double FullTurnDegrees = 360, MainSideDegrees = 90, EighthDegrees = 45;

    /// <summary>The one of the four main sides that a direction faces; exactly between two, the clockwise one.</summary>
    public static CompassSide MainSide(double dx, double dy, double northDegrees) =>
        new[] { CompassSide.North, CompassSide.East, CompassSide.South, CompassSide.West }.First(side => Faces(dx, dy, northDegrees, side));

    /// <summary>
    /// Whether a direction faces a side: within 45° of a main side, within 22.5° of another; the clockwise end of that sector
    /// belongs to the next.
    /// </summary>
    public static bool Faces(double dx, double dy, double northDegrees, CompassSide side)
    {
        bool isMain = (int)side % 2 == 0;
        double sectorDegrees = isMain ? MainSideDegrees : EighthDegrees;
        double bearingDegrees = (Math.Atan2(dx, dy) * (FullTurnDegrees / 2) / Math.PI) - northDegrees;
        double fromSectorStart = bearingDegrees - (EighthDegrees * (int)side) + (sectorDegrees / 2);
        double turn = fromSectorStart - (FullTurnDegrees * Math.Floor(fromSectorStart / FullTurnDegrees));
        return turn < sectorDegrees;
    }

    /// <summary>The side in lower-case words, such as "north-east".</summary>
    public static string NameOf(CompassSide side) => side switch
    {
        CompassSide.North => "north",
        CompassSide.NorthEast => "north-east",
        CompassSide.East => "east",
        CompassSide.SouthEast => "south-east",
        CompassSide.South => "south",
        CompassSide.SouthWest => "south-west",
        CompassSide.West => "west",
        CompassSide.NorthWest => "north-west",
        _ => throw new ArgumentOutOfRangeException(nameof(side), side, "is not a side of the compass"),
    };
}
