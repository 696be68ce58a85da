using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Sheets;

/// <summary>The one way from metres on the plan to pixels on the sheet and back. y runs up the plan and down the sheet.</summary>
/// <param name="PixelsPerMetre">Scale.</param>
/// <param name="Origin">Where the plan's origin lies on the sheet, possibly beyond its edges.</param>
internal sealed record Projection(double PixelsPerMetre, Pixel Origin)
{
    /// <summary>Where a place on the plan lies on the sheet.</summary>
    public Pixel ToPixel(PlanPoint point) =>
        new((float)(Origin.X + (point.XMetres * PixelsPerMetre)), (float)(Origin.Y - (point.YMetres * PixelsPerMetre)));

    /// <summary>The place on the plan under a place on the sheet, to the nearest lattice point.</summary>
    public PlanPoint ToPlan(Pixel pixel) =>
        PlanPoint.FromMetres((pixel.X - (double)Origin.X) / PixelsPerMetre, ((double)Origin.Y - pixel.Y) / PixelsPerMetre);

    /// <summary>A length on the plan as a length on the sheet.</summary>
    public float Length(double metres) => (float)(metres * PixelsPerMetre);

    /// <summary>An outline on the sheet.</summary>
    public Pixel[] ToPixels(Polygon polygon) => [.. polygon.Corners.Select(ToPixel)];
}
