using System.Collections.Immutable;
using System.Xml.Linq;

namespace MeshSim.Files.Importing.Svg;

/// <summary>The lines of the basic shapes (SVG 1.1, chapter 9) and of paths, in the units of the element itself.</summary>
internal static class SvgOutlines
{
    /// <summary>Elements that are lines or areas.</summary>
    public static readonly ImmutableArray<string> Names = ["line", "polyline", "polygon", "rect", "circle", "ellipse", "path"];

    /// <summary>The lines of an element; empty when it draws nothing, as one without extent; null with what is wrong.</summary>
    /// <param name="element">One of <see cref="Names"/>.</param>
    /// <param name="wrong">What is wrong with it; "" when nothing is.</param>
    public static ImmutableArray<Subpath>? Of(XElement element, out string wrong)
    {
        List<string> bad = [];
        ImmutableArray<Subpath>? lines = element.Name.LocalName switch
        {
            "line" => [Subpath.Through([new(Length("x1"), Length("y1")), new(Length("x2"), Length("y2"))], isClosed: false)],
            "polyline" => Corners(element, isClosed: false, bad),
            "polygon" => Corners(element, isClosed: true, bad),
            "rect" => Rectangle(),
            "circle" => Round(Length("r"), Length("r")),
            "ellipse" => Round(Length("rx"), Length("ry")),
            _ => Path(element, bad),
        };
        wrong = string.Join("; ", bad);
        return bad.Count > 0 ? null : lines;

        double Length(string name)
        {
            if (element.Attribute(name)?.Value is not { } text) return 0;
            if (SvgLengths.Parse(text) is { } length) return length;
            bad.Add($"{name} is \"{text}\", which is no length");
            return 0;
        }

        ImmutableArray<Subpath> Round(double rx, double ry) =>
            rx > 0 && ry > 0 ? [SvgArc.Ellipse(new(Length("cx"), Length("cy")), rx, ry)] : [];

        ImmutableArray<Subpath> Rectangle()
        {
            double width = Length("width"), height = Length("height");
            if (width <= 0 || height <= 0) return [];
            double? rx = element.Attribute("rx") is null ? null : Length("rx"), ry = element.Attribute("ry") is null ? null : Length("ry");
            return [Rounded(Length("x"), Length("y"), width, height, Math.Min(rx ?? ry ?? 0, width / 2), Math.Min(ry ?? rx ?? 0, height / 2))];
        }
    }

    private static Subpath Rounded(double x, double y, double width, double height, double rx, double ry)
    {
        double right = x + width, bottom = y + height;
        if (rx <= 0 || ry <= 0) return Subpath.Through([new(x, y), new(right, y), new(right, bottom), new(x, bottom)], isClosed: true);
        (SvgPoint To, SvgPoint Corner)[] sides =
        [
            (new(right - rx, y), new(right, y + ry)), (new(right, bottom - ry), new(right - rx, bottom)),
            (new(x + rx, bottom), new(x, bottom - ry)), (new(x, y + ry), new(x + rx, y)),
        ];
        return new(
            new(x + rx, y),
            [.. sides.SelectMany(side => SvgArc.Steps(side.To, new(rx, ry), 0, false, true, side.Corner).Prepend(CurveStep.To(side.To)))],
            true);
    }

    private static ImmutableArray<Subpath> Corners(XElement element, bool isClosed, List<string> bad)
    {
        SvgScanner scanner = new(element.Attribute("points")?.Value ?? "");
        List<double> numbers = [];
        while (scanner.Number() is { } number)
        {
            numbers.Add(number);
            scanner.SkipComma();
        }

        if (!scanner.IsAtEnd || numbers.Count % 2 != 0) bad.Add("its points are not pairs of numbers");
        if (bad.Count > 0 || numbers.Count < 4) return [];
        return [Subpath.Through([.. numbers.Chunk(2).Select(pair => new SvgPoint(pair[0], pair[1]))], isClosed)];
    }

    private static ImmutableArray<Subpath> Path(XElement element, List<string> bad)
    {
        ImmutableArray<Subpath> lines = SvgPathData.Parse(element.Attribute("d")?.Value ?? "", out int? wrongAt);
        if (wrongAt is { } at) bad.Add(FormattableString.Invariant($"its path data makes no sense from character {at + 1} on"));
        return lines;
    }
}
