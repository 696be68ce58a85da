using MeshSim.Devices;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.Materials;

namespace MeshSim.Drawing.Walls;

/// <summary>A wall on the sheet: a way along it and across it.</summary>
/// <param name="Start">Its start on the sheet.</param>
/// <param name="Direction">From start to end, one pixel long.</param>
/// <param name="LengthPixels">Length of its centre line.</param>
/// <param name="ThicknessPixels">How thick it is drawn.</param>
internal sealed record WallRun(Pixel Start, Pixel Direction, float LengthPixels, float ThicknessPixels)
{
    // Thicknesses for constructions that state a loss instead of layers. Common practice, no source.
    private const double OuterThicknessMetres = 0.25, InnerThicknessMetres = 0.10;

    /// <summary>Thinnest lines that still read as a wall, pixels; an outer wall stays heavier than an inner one at any scale.</summary>
    private const float LeastOuterPixels = 6, LeastInnerPixels = 3.5f;

    /// <summary>A wall whose drawn thickness would swallow a room corner is cut to this, m.</summary>
    private const double GreatestThicknessMetres = 0.5;

    /// <summary>To the left of the direction of travel, as the sheet shows it.</summary>
    public Pixel Normal => new(Direction.Y, -Direction.X);

    /// <summary>The wall as its construction and place in the building make it: as thick as its layers together.</summary>
    public static WallRun Of(Wall wall, Home home, Projection projection)
    {
        Pixel start = projection.ToPixel(wall.Start), end = projection.ToPixel(wall.End);
        bool isOuter = wall.Rooms.Length == 1;
        double layersMetres = home.Constructions.TryGetValue(wall.Construction, out Construction? construction)
            ? construction.Layers.Sum(layer => layer.ThicknessMetres)
            : 0;
        double metres = layersMetres > 0 ? layersMetres : isOuter ? OuterThicknessMetres : InnerThicknessMetres;
        float pixels = projection.Length(Math.Min(metres, GreatestThicknessMetres));
        return new(start, start.DirectionTo(end), start.DistanceTo(end), Math.Max(pixels, isOuter ? LeastOuterPixels : LeastInnerPixels));
    }

    /// <summary>A place along the wall and across it.</summary>
    /// <param name="along">Pixels from the start.</param>
    /// <param name="across">Pixels to the left.</param>
    public Pixel At(float along, float across) => Start.Along(Direction, along).Along(Normal, across);

    /// <summary>The four corners of a stretch of the wall.</summary>
    /// <param name="from">Pixels from the start.</param>
    /// <param name="to">Pixels from the start.</param>
    public Pixel[] Stretch(float from, float to)
    {
        float half = ThicknessPixels / 2;
        return [At(from, half), At(to, half), At(to, -half), At(from, -half)];
    }

    /// <summary>
    /// The stretches between the openings, pixels from the start. Both ends reach half a thickness farther, so that walls
    /// close at corners.
    /// </summary>
    public IEnumerable<(float From, float To)> Solid(Wall wall, Projection projection)
    {
        float at = -ThicknessPixels / 2;
        foreach (Opening opening in wall.Openings)
        {
            yield return (at, projection.Length(opening.OffsetMetres));
            at = projection.Length(opening.OffsetMetres + opening.WidthMetres);
        }

        yield return (at, LengthPixels + (ThicknessPixels / 2));
    }
}
