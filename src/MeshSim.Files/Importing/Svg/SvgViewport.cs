using System.Xml.Linq;

namespace MeshSim.Files.Importing.Svg;

/// <summary>How the units within an element with a <c>viewBox</c> lie in its box (SVG 1.1, sections 7.7 and 7.8).</summary>
internal static class SvgViewport
{
    /// <summary>From the units inside to those of the box's own corner; null when an attribute makes no sense.</summary>
    /// <param name="element">Has perhaps <c>viewBox</c> and <c>preserveAspectRatio</c>.</param>
    /// <param name="width">Width of the box, user units; null takes that of the view box.</param>
    /// <param name="height">Its height.</param>
    public static Affine? Of(XElement element, double? width, double? height)
    {
        if (element.Attribute("viewBox")?.Value is not { } text) return Affine.Identity;
        if (Numbers(text) is not [var x, var y, > 0 and var boxWidth, > 0 and var boxHeight]) return null;

        double scaleX = (width ?? boxWidth) / boxWidth, scaleY = (height ?? boxHeight) / boxHeight;
        if (width is null && height is not null) scaleX = scaleY;
        if (height is null && width is not null) scaleY = scaleX;
        string[] words = (element.Attribute("preserveAspectRatio")?.Value ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string align = words.FirstOrDefault(word => word != "defer") ?? "xMidYMid";
        if (align != "none") scaleX = scaleY = words.Contains("slice") ? Math.Max(scaleX, scaleY) : Math.Min(scaleX, scaleY);
        double spareX = (width ?? (boxWidth * scaleX)) - (boxWidth * scaleX), spareY = (height ?? (boxHeight * scaleY)) - (boxHeight * scaleY);
        return Affine.Move(Share(align, "xMin", "xMax") * spareX, Share(align, "YMin", "YMax") * spareY)
            .Around(Affine.Scale(scaleX, scaleY))
            .Around(Affine.Move(-x, -y));
    }

    private static double Share(string align, string low, string high)
    {
        if (align.Contains(low, StringComparison.Ordinal)) return 0;
        return align.Contains(high, StringComparison.Ordinal) ? 1 : 0.5;
    }

    private static List<double> Numbers(string text)
    {
        SvgScanner scanner = new(text);
        List<double> numbers = [];
        while (scanner.Number() is { } number)
        {
            numbers.Add(number);
            scanner.SkipComma();
        }

        return scanner.IsAtEnd ? numbers : [];
    }
}
