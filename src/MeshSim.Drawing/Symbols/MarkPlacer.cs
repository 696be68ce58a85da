using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Symbols;

/// <summary>Puts symbols on the sheet one after the other, each as near to its true place as the ones before it allow.</summary>
/// <param name="frame">The part of the sheet that symbols must not leave.</param>
internal sealed class MarkPlacer(PixelBox frame)
{
    private const int DirectionsPerRing = 8;
    private const float RingStep = 6;
    private const int Rings = 80;

    /// <summary>Space kept between two symbols, pixels.</summary>
    private const float Space = 2;

    private readonly List<PixelBox> taken = [];

    /// <summary>
    /// The mark at the first free place: its true one, or else by distance and then clockwise from above. Where nothing is free
    /// within 480 pixels it stays as near as the frame allows and covers another.
    /// </summary>
    public TMark Place<TMark>(TMark mark)
        where TMark : Mark
    {
        Pixel near = IntoFrame(mark);
        Pixel[] free = [.. Candidates(near).Where(place => IsFree(mark.Extent.At(place))).Take(1)];
        Pixel centre = free.Length > 0 ? free[0] : near;
        taken.Add(mark.Extent.At(centre));
        return mark with { Centre = centre };
    }

    private static IEnumerable<Pixel> Candidates(Pixel place)
    {
        yield return place;
        for (int ring = 1; ring <= Rings; ring++)
        {
            int directions = DirectionsPerRing * ring;
            for (int direction = 0; direction < directions; direction++)
            {
                float angle = (direction * MathF.Tau / directions) - (MathF.PI / 2);
                yield return new(place.X + (ring * RingStep * MathF.Cos(angle)), place.Y + (ring * RingStep * MathF.Sin(angle)));
            }
        }
    }

    private Pixel IntoFrame(Mark mark) => new(
        Math.Clamp(mark.TruePlace.X, frame.Left - mark.Extent.Left, frame.Right - mark.Extent.Right),
        Math.Clamp(mark.TruePlace.Y, frame.Top - mark.Extent.Top, frame.Bottom - mark.Extent.Bottom));

    private bool IsFree(PixelBox box) => frame.Holds(box) && !taken.Exists(taken => taken.Overlaps(box.Grown(Space)));
}
