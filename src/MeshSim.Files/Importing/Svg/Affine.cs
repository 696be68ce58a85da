namespace MeshSim.Files.Importing.Svg;

/// <summary>A place in a drawing, in units of whatever system is meant; y as that system has it. The default is the origin.</summary>
/// <param name="X">Units to the right.</param>
/// <param name="Y">Units along the other axis.</param>
internal readonly record struct SvgPoint(double X, double Y)
{
    /// <summary>Sum of two vectors.</summary>
    public static SvgPoint operator +(SvgPoint a, SvgPoint b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Vector from the second place to the first.</summary>
    public static SvgPoint operator -(SvgPoint a, SvgPoint b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>A vector made longer.</summary>
    public static SvgPoint operator *(double factor, SvgPoint a) => new(factor * a.X, factor * a.Y);

    /// <summary>Length of a vector.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));
}

/// <summary>
/// A map of the plane that keeps lines straight: x' = a·x + c·y + e, y' = b·x + d·y + f, as SVG names its six numbers. The default
/// maps everything to the origin; start with <see cref="Identity"/>.
/// </summary>
internal readonly record struct Affine(double A, double B, double C, double D, double E, double F)
{
    /// <summary>Moves nothing.</summary>
    public static readonly Affine Identity = new(1, 0, 0, 1, 0, 0);

    /// <summary>Whether every number is finite, so that no place is lost.</summary>
    public bool IsFinite => double.IsFinite(A + B + C + D + E + F);

    /// <summary>Moves by a vector.</summary>
    public static Affine Move(double x, double y) => new(1, 0, 0, 1, x, y);

    /// <summary>Makes larger along both axes.</summary>
    public static Affine Scale(double x, double y) => new(x, 0, 0, y, 0, 0);

    /// <summary>Turns about the origin, from the x axis towards the y axis.</summary>
    public static Affine Turn(double degrees)
    {
        (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
        return new(cos, sin, -sin, cos, 0, 0);
    }

    /// <summary>The map that does an inner one first: that of a child within its parent.</summary>
    public Affine Around(Affine inner) => new(
        (A * inner.A) + (C * inner.B),
        (B * inner.A) + (D * inner.B),
        (A * inner.C) + (C * inner.D),
        (B * inner.C) + (D * inner.D),
        (A * inner.E) + (C * inner.F) + E,
        (B * inner.E) + (D * inner.F) + F);

    /// <summary>Where a place goes.</summary>
    public SvgPoint Of(SvgPoint p) => new((A * p.X) + (C * p.Y) + E, (B * p.X) + (D * p.Y) + F);
}
