using MeshSim.Files.Importing.Mappings;

namespace MeshSim.Files.Importing.Lines;

/// <summary>A straight stretch of a drawn wall: its centre line, or one of its faces.</summary>
/// <param name="Start">One end.</param>
/// <param name="End">The other end.</param>
/// <param name="Rule">What the drawing's rule says of it.</param>
/// <param name="Shape">The shape that it comes from.</param>
/// <param name="ThicknessMetres">Distance of its two faces, m; null where a centre line was drawn.</param>
internal sealed record WallStretch(DrawnPoint Start, DrawnPoint End, TakeRule Rule, DrawnShape Shape, double? ThicknessMetres = null)
{
    /// <summary>Length, m.</summary>
    public double LengthMetres => Start.DistanceMetresTo(End);

    /// <summary>One metre from start towards end.</summary>
    public (double X, double Y) Direction => ((End.XMetres - Start.XMetres) / LengthMetres, (End.YMetres - Start.YMetres) / LengthMetres);

    /// <summary>How far along the line a place lies, m from the start.</summary>
    public double Along(DrawnPoint place)
    {
        (double x, double y) = Direction;
        return ((place.XMetres - Start.XMetres) * x) + ((place.YMetres - Start.YMetres) * y);
    }

    /// <summary>How far to the left of the line a place lies, m.</summary>
    public double Across(DrawnPoint place)
    {
        (double x, double y) = Direction;
        return (x * (place.YMetres - Start.YMetres)) - (y * (place.XMetres - Start.XMetres));
    }

    /// <summary>The place on the line so far from the start.</summary>
    public DrawnPoint At(double alongMetres)
    {
        (double x, double y) = Direction;
        return Start.Moved(x * alongMetres, y * alongMetres);
    }

    /// <summary>Sine of the angle between two lines, 0 to 1.</summary>
    public double SineTo(WallStretch other)
    {
        (double ax, double ay) = Direction;
        (double bx, double by) = other.Direction;
        return Math.Abs((ax * by) - (ay * bx));
    }

    /// <summary>How far along this line it meets another one, both taken without end, m; null where they are parallel.</summary>
    public double? MeetsAt(WallStretch other)
    {
        (double ax, double ay) = Direction;
        (double bx, double by) = other.Direction;
        double turn = (ax * by) - (ay * bx);
        if (Math.Abs(turn) < LeastSine) return null;
        double dx = other.Start.XMetres - Start.XMetres, dy = other.Start.YMetres - Start.YMetres;
        return ((dx * by) - (dy * bx)) / turn;
    }

    /// <summary>Distance from a place to the stretch, m.</summary>
    public double DistanceMetresTo(DrawnPoint place) => At(Math.Clamp(Along(place), 0, LengthMetres)).DistanceMetresTo(place);

    /// <summary>Lines that differ by less than 6° do not meet in any definite place. Assumed.</summary>
    public const double LeastSine = 0.1;
}
