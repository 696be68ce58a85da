using System.Globalization;
using System.Xml.Linq;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Tests.Scenes;

/// <summary>The texts of an SVG picture with the boxes that they take.</summary>
internal static class SvgText
{
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static IReadOnlyList<(string Text, PixelBox Box)> Of(string svg) =>
        [.. XDocument.Parse(svg).Descendants().Where(element => element.Name.LocalName == "text").Select(element => (element.Value, BoxOf(element)))];

    private static PixelBox BoxOf(XElement text)
    {
        float x = Number(text, "x"), y = Number(text, "y"), size = Number(text, "font-size");
        float width = text.Attribute("textLength") is null ? size / 2 : Number(text, "textLength");
        return new(x, y - (0.73f * size), x + width, y);
    }

    private static float Number(XElement element, string name) => float.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
