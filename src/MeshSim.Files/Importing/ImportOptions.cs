using MeshSim.Quantities;

namespace MeshSim.Files.Importing;

/// <summary>A line of a drawing whose true length is known.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Metres">Its length, m.</param>
public sealed record StatedLength(string Id, double Metres);

/// <summary>How a drawing is to be taken, as far as its mapping file does not say it.</summary>
public sealed record ImportOptions
{
    /// <summary>Accepted tolerances for corners that should meet.</summary>
    public static readonly ValidRange AcceptedSnapMetres = new(0.001, 0.3, "m");

    /// <summary>Accepted tolerances for curves.</summary>
    public static readonly ValidRange AcceptedCurveMetres = new(0.0005, 0.1, "m");

    /// <summary>Accepted stated lengths.</summary>
    public static readonly ValidRange AcceptedLengthMetres = new(0.01, 1000, "m");

    /// <summary>Accepted ratios: a drawing may be larger than the building, of which no sheet is known.</summary>
    public static readonly ValidRange AcceptedRatio = new(0.001, 10_000, "");

    /// <summary>The mapping file, or null without one.</summary>
    public string? MappingFile { get; init; }

    /// <summary>A length that fixes the scale of an SVG drawing; counts before that of the mapping file.</summary>
    public StatedLength? Length { get; init; }

    /// <summary>How many times smaller than the building an SVG drawing is: 50 for 1:50; counts before that of the mapping file.</summary>
    public double? Ratio { get; init; }

    /// <summary>Metres per unit of the coordinates of GeoJSON; null when they are degrees of longitude and latitude, as its standard has them.</summary>
    public double? MetresPerUnit { get; init; } = 1;

    /// <summary>What lies nearer than this was meant to meet, m. 0.05 is what a home folder itself moves without asking.</summary>
    public double SnapMetres { get; init; } = 0.05;

    /// <summary>How far the corners that stand for a curve may leave it, m: 0.01 is less than a tape on a curved wall is good for.</summary>
    public double CurveMetres { get; init; } = 0.01;

    /// <summary>Whether walls are drawn as their two faces where the mapping file does not say.</summary>
    public bool WallsAreFaces { get; init; }

    /// <summary>Name of the home; null takes that of the mapping file, or else of the drawing.</summary>
    public string? HomeName { get; init; }

    /// <summary>Its region; null takes that of the mapping file, or else EU.</summary>
    public string? Region { get; init; }
}
