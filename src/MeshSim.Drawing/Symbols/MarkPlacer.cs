using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Symbols;

/// <summary>Puts symbols on the sheet one after the other, each as near to its true place as the ones before it allow.</summary>
/// <param name="frame">The part of the sheet that symbols must not leave.</param>
internal sealed class MarkPlacer(PixelBox frame)
{
    private const int Directions = 16;
    private const float RingStep = 6;
    private const int Rings = 40;

    /// <summary>Space kept between two symbols, pixels.</summary>
    private const float Space = 2;

    private readonly List<PixelBox> _taken = [];

    /// <summary>
    /// The mark at the first free place, by distance and then clockwise from above. Where nothing is free within 240 pixels it
    /// stays on its true place.
    /// </summary>
    public TMark Place<TMark>(TMark mark)
        where TMark : Mark
    {
        Pixel[] free = [.. Candidates(mark.TruePlace).Where(place => IsFree(mark.Extent.At(place))).Take(1)];
        Pixel centre = free.Length > 0 ? free[0] : mark.TruePlace;
        _taken.Add(mark.Extent.At(centre));
        return mark with { Centre = centre };
    }

    private static IEnumerable<Pixel> Candidates(Pixel place)
    {
        yield return place;
        for (int ring = 1; ring <= Rings; ring++)
        {
            for (int direction = 0; direction < Directions; direction++)
            {
                float angle = (direction * MathF.Tau / Directions) - (MathF.PI / 2);
                yield return new(place.X + (ring * RingStep * MathF.Cos(angle)), place.Y + (ring * RingStep * MathF.Sin(angle)));
            }
        }
    }

    private bool IsFree(PixelBox box) => frame.Holds(box) && !_taken.Exists(taken => taken.Overlaps(box.Grown(Space)));
}
