namespace MeshSim.Files.Importing.Svg;

/// <summary>Elliptical arcs as SVG gives them, by their ends (SVG 1.1, appendix F.6), turned into cubic curves.</summary>
internal static class SvgArc
{
    /// <summary>
    /// A curve takes at most 45°: it then leaves the ellipse by less than 5 millionths of its radius (the error of such curves
    /// falls with the sixth power of the angle, from 2.7 in ten thousand at 90°).
    /// </summary>
    private const double MostRadians = Math.PI / 4;

    /// <summary>The steps of an arc.</summary>
    /// <param name="start">Where it starts.</param>
    /// <param name="radii">Both radii; negative ones count as positive, radii too small for the ends grow until they reach.</param>
    /// <param name="turnDegrees">Direction of the first radius.</param>
    /// <param name="isLarge">Whether the larger of two arcs is meant.</param>
    /// <param name="isPositive">Whether the angle grows along the arc.</param>
    /// <param name="end">Where it ends.</param>
    public static IEnumerable<CurveStep> Steps(SvgPoint start, SvgPoint radii, double turnDegrees, bool isLarge, bool isPositive, SvgPoint end)
    {
        double rx = Math.Abs(radii.X), ry = Math.Abs(radii.Y);
        if (start == end) return [];
        if (rx == 0 || ry == 0) return [CurveStep.To(end)];

        Affine turn = Affine.Turn(turnDegrees), back = Affine.Turn(-turnDegrees);
        SvgPoint half = back.Of(0.5 * (start - end));
        double excess = Math.Sqrt((half.X * half.X / (rx * rx)) + (half.Y * half.Y / (ry * ry)));
        if (excess > 1) (rx, ry) = (rx * excess, ry * excess);

        // On the circle of radius 1 the chord lies between -half and half, scaled; its middle is so far from the centre.
        SvgPoint chord = new(half.X / rx, half.Y / ry);
        double distance = Math.Sqrt(Math.Max(0, (1 / ((chord.X * chord.X) + (chord.Y * chord.Y))) - 1));
        if (isLarge == isPositive) distance = -distance;
        SvgPoint centre = new(distance * chord.Y, -distance * chord.X);
        double from = Math.Atan2(chord.Y - centre.Y, chord.X - centre.X), to = Math.Atan2(-chord.Y - centre.Y, -chord.X - centre.X);
        double sweep = to - from;
        if (isPositive && sweep < 0) sweep += Math.Tau;
        if (!isPositive && sweep > 0) sweep -= Math.Tau;

        SvgPoint middle = turn.Of(new(centre.X * rx, centre.Y * ry)) + (0.5 * (start + end));
        Affine ellipse = Affine.Move(middle.X, middle.Y).Around(turn).Around(Affine.Scale(rx, ry));
        return Around(ellipse, from, sweep, end);
    }

    /// <summary>All of an ellipse with level radii, from its right end on.</summary>
    public static Subpath Ellipse(SvgPoint centre, double rx, double ry)
    {
        SvgPoint start = new(centre.X + rx, centre.Y);
        return new(start, [.. Around(Affine.Move(centre.X, centre.Y).Around(Affine.Scale(rx, ry)), 0, Math.Tau, start)], true);
    }

    private static IEnumerable<CurveStep> Around(Affine ellipse, double from, double sweep, SvgPoint end)
    {
        int count = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / MostRadians - 1e-9));
        double step = sweep / count, reach = 4.0 / 3 * Math.Tan(step / 4);
        for (int i = 0; i < count; i++)
        {
            (double sinA, double cosA) = Math.SinCos(from + (i * step));
            (double sinB, double cosB) = Math.SinCos(from + ((i + 1) * step));
            SvgPoint first = new(cosA - (reach * sinA), sinA + (reach * cosA)), second = new(cosB + (reach * sinB), sinB - (reach * cosB));
            SvgPoint last = i == count - 1 ? end : ellipse.Of(new(cosB, sinB));
            yield return new(ellipse.Of(first), ellipse.Of(second), last, false);
        }
    }
}
