namespace MeshSim.Drawing.Sheets;

/// <summary>A rectangle on the sheet with level sides, in pixels. The default is empty, at the upper left corner.</summary>
/// <param name="Left">Its left side.</param>
/// <param name="Top">Its upper side.</param>
/// <param name="Right">Its right side, not less than the left.</param>
/// <param name="Bottom">Its lower side, not less than the upper.</param>
internal readonly record struct PixelBox(float Left, float Top, float Right, float Bottom)
{
    /// <summary>From left to right.</summary>
    public float Width => Right - Left;

    /// <summary>From top to bottom.</summary>
    public float Height => Bottom - Top;

    /// <summary>Its middle.</summary>
    public Pixel Centre => new((Left + Right) / 2, (Top + Bottom) / 2);

    /// <summary>The box of a size about a middle.</summary>
    public static PixelBox About(Pixel centre, float width, float height) =>
        new(centre.X - (width / 2), centre.Y - (height / 2), centre.X + (width / 2), centre.Y + (height / 2));

    /// <summary>Whether two boxes share more than an edge.</summary>
    public bool Overlaps(PixelBox other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>Whether another box lies inside this one, edges allowed.</summary>
    public bool Holds(PixelBox other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    /// <summary>The box with a rim around it.</summary>
    public PixelBox Grown(float rim) => new(Left - rim, Top - rim, Right + rim, Bottom + rim);

    /// <summary>The box moved.</summary>
    public PixelBox At(Pixel origin) => new(Left + origin.X, Top + origin.Y, Right + origin.X, Bottom + origin.Y);

    /// <summary>The point of the box nearest to a place.</summary>
    public Pixel NearestTo(Pixel place) => new(Math.Clamp(place.X, Left, Right), Math.Clamp(place.Y, Top, Bottom));

    /// <summary>Whether a straight line meets the box: the share of the line inside each pair of sides is cut down in turn.</summary>
    public bool IsMetBy(Pixel start, Pixel end)
    {
        float enter = 0, leave = 1;
        return Cut(start.X, end.X, Left, Right, ref enter, ref leave) && Cut(start.Y, end.Y, Top, Bottom, ref enter, ref leave);
    }

    private static bool Cut(float start, float end, float low, float high, ref float enter, ref float leave)
    {
        float run = end - start;
        if (run == 0) return start >= low && start <= high;
        float first = (low - start) / run, second = (high - start) / run;
        enter = Math.Max(enter, Math.Min(first, second));
        leave = Math.Min(leave, Math.Max(first, second));
        return enter <= leave;
    }
}
