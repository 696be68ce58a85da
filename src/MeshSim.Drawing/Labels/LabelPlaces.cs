using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Labels;

/// <summary>The places that a label may take, the most natural ones the cheapest.</summary>
internal static class LabelPlaces
{
    private const int Directions = 24;
    private const float RingStep = 10;
    private const int Rings = 48;
    private const float LeaderCost = 5;
    private const float CostPerPixel = 1 / 12f;

    /// <summary>Beside a symbol on any side, then on rings farther and farther out with a leader line.</summary>
    public static IEnumerable<LabelPlace> Beside(PixelBox symbol, Pixel centre, float width, float height)
    {
        float right = symbol.Right + 3, left = symbol.Left - 3 - width, above = symbol.Top - 2 - height, below = symbol.Bottom + 2;
        float middleX = centre.X - (width / 2), middleY = centre.Y - (height / 2);
        (float X, float Y)[] corners =
        [
            (right, middleY), (left, middleY), (middleX, below), (middleX, above),
            (right - 6, above + 4), (left + 6, above + 4), (right - 6, below - 4), (left + 6, below - 4),
        ];
        for (int i = 0; i < corners.Length; i++)
            yield return new(new(corners[i].X, corners[i].Y, corners[i].X + width, corners[i].Y + height), i * 0.5f);

        float reach = symbol.Width / 2;
        foreach (LabelPlace place in Around(centre, reach + 10, width, height))
            yield return place with { Cost = place.Cost + LeaderCost };
    }

    /// <summary>At the end of a stub long enough for a line with an arrow, preferably in its true direction.</summary>
    public static IEnumerable<LabelPlace> AtStub(Pixel centre, Pixel direction, float symbolReach, float width, float height)
    {
        foreach (LabelPlace place in Around(centre, symbolReach + 32, width, height))
        {
            Pixel towards = centre.DirectionTo(place.Box.NearestTo(centre));
            float turned = 1 - ((towards.X * direction.X) + (towards.Y * direction.Y));
            yield return place with { Cost = place.Cost + (4 * turned) };
        }
    }

    /// <summary>Inside an outline, preferably about its middle.</summary>
    public static IEnumerable<LabelPlace> Inside(Polygon outline, Projection projection, float width, float height, float rim)
    {
        Pixel[] corners = projection.ToPixels(outline);
        float left = corners.Min(p => p.X), right = corners.Max(p => p.X), top = corners.Min(p => p.Y), bottom = corners.Max(p => p.Y);
        Pixel middle = new((left + right) / 2, (top + bottom) / 2);
        for (float y = middle.Y % RingStep; y < bottom; y += RingStep)
        {
            for (float x = middle.X % RingStep; x < right; x += RingStep)
            {
                PixelBox box = PixelBox.About(new(x, y), width, height);
                if (x > left && y > top && IsInside(box.Grown(rim), corners, outline, projection))
                    yield return new(box, middle.DistanceTo(new(x, y)) / 30);
            }
        }
    }

    /// <summary>Centred on points along a line, preferably near its middle.</summary>
    public static IEnumerable<LabelPlace> Along(IReadOnlyList<Pixel> line, float width, float height) =>
        line.Select((point, index) => new LabelPlace(PixelBox.About(point, width, height), Math.Abs((index / (float)line.Count) - 0.5f)));

    /// <summary>Centred on points of an area, preferably near its middle.</summary>
    public static IEnumerable<LabelPlace> Within(IReadOnlyCollection<Pixel> points, float width, float height)
    {
        Pixel middle = new(points.Average(p => p.X), points.Average(p => p.Y));
        return points.Select(point => new LabelPlace(PixelBox.About(point, width, height), middle.DistanceTo(point) / 30)).OrderBy(place => place.Cost);
    }

    private static IEnumerable<LabelPlace> Around(Pixel centre, float distance, float width, float height)
    {
        for (int ring = 0; ring < Rings; ring++)
        {
            for (int direction = 0; direction < Directions; direction++)
            {
                float angle = direction * MathF.Tau / Directions, cos = MathF.Cos(angle), sin = MathF.Sin(angle);
                float reach = distance + (ring * RingStep);

                // The nearest point of the box lies about on the ring, whatever the box's shape.
                Pixel middle = new(centre.X + (reach * cos) + (cos * width / 2), centre.Y + (reach * sin) + (sin * height / 2));
                yield return new(PixelBox.About(middle, width, height), ring * RingStep * CostPerPixel, centre);
            }
        }
    }

    private static bool IsInside(PixelBox box, Pixel[] corners, Polygon outline, Projection projection)
    {
        if (!outline.Contains(projection.ToPlan(box.Centre))) return false;
        for (int i = 0; i < corners.Length; i++)
            if (box.IsMetBy(corners[i], corners[(i + 1) % corners.Length])) return false;
        return true;
    }
}
