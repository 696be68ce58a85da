using MeshSim.Quantities;

namespace MeshSim.Files.Homes;

/// <summary>Accepted measures of openings and objects; whether they fit their wall and storey is another question.</summary>
internal static class OpeningRanges
{
    /// <summary>Offset along the wall.</summary>
    public static readonly ValidRange OffsetMetres = new(0, 1000, "m");

    /// <summary>Width.</summary>
    public static readonly ValidRange WidthMetres = new(0.01, 100, "m");

    /// <summary>Sill of an opening, underside of an object.</summary>
    public static readonly ValidRange SillMetres = new(0, 20, "m");

    /// <summary>Height.</summary>
    public static readonly ValidRange HeightMetres = new(0.01, 20, "m");
}
