using System.Collections.Immutable;
using System.Xml.Linq;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Importing.Svg;

/// <summary>
/// Walks the elements of a drawing and gathers its shapes in user units of the page. Whatever it does not take it says; whatever
/// makes no sense is an error.
/// </summary>
internal sealed class SvgWalker
{
    /// <summary>Deepest accepted nesting, that of uses included.</summary>
    public const int DeepestLevel = 64;

    /// <summary>Most shapes: a use within a use within a use grows fast.</summary>
    public const int MostShapes = 100_000;

    // These draw nothing where they stand.
    private static readonly ImmutableArray<string> Silent =
        ["defs", "symbol", "title", "desc", "metadata", "clipPath", "mask", "marker", "pattern", "linearGradient", "radialGradient", "filter", "script", "namedview"];

    private readonly string file;
    private readonly DiagnosticList problems;
    private readonly Dictionary<string, XElement> byId;
    private readonly List<string> layers = [];
    private readonly List<string> classes = [];
    private readonly List<XElement> used = [];

    private SvgWalker(XElement root, string file, DiagnosticList problems)
    {
        (this.file, this.problems) = (file, problems);
        byId = root.DescendantsAndSelf()
            .Where(element => element.Attribute("id") is not null)
            .GroupBy(element => element.Attribute("id")!.Value)
            .ToDictionary(group => group.Key, group => group.First());
    }

    private List<SvgShape> Shapes { get; } = [];

    private List<LeftOut> LeftOut { get; } = [];

    /// <summary>The shapes of a drawing, and what was left out of it.</summary>
    public static (List<SvgShape> Shapes, List<LeftOut> LeftOut) Walk(XElement root, string file, DiagnosticList problems)
    {
        SvgWalker walker = new(root, file, problems);
        walker.Visit(root, Affine.Identity, true, 0);
        return (walker.Shapes, walker.LeftOut);
    }

    private void Visit(XElement element, Affine outer, bool isVisible, int level)
    {
        if (element.Name.Namespace != SvgXml.Svg || Silent.Contains(element.Name.LocalName)) return;
        string name = element.Name.LocalName;
        if (level > DeepestLevel || Shapes.Count >= MostShapes)
        {
            Leave(element, level > DeepestLevel ? "it nests too deep" : "the drawing has too many shapes");
            return;
        }

        if (SvgStyles.IsTakenOut(element))
        {
            Leave(element, "it is hidden (display: none)");
            return;
        }

        isVisible = SvgStyles.Find(element, "visibility") switch { null or "inherit" => isVisible, "visible" => true, _ => false };
        if (MapOf(element, outer) is not { } map) return;
        foreach (string property in new[] { "clip-path", "mask" })
            if (SvgStyles.Find(element, property) is not (null or "none")) Leave(element, $"of it only its {property}: it is taken whole");

        if (name is "svg" or "g" or "a" or "switch") VisitGroup(element, map, isVisible, level);
        else if (name == "use") VisitUse(element, map, isVisible, level);
        else if (!SvgOutlines.Names.Contains(name) && name != "text") Leave(element, name == "style" ? "style sheets are not read" : "it is neither a line, an area nor a text");
        else if (!isVisible) Leave(element, "it is hidden (visibility)");
        else if (name == "text") AddText(element, map);
        else AddShape(element, map);
    }

    private Affine? MapOf(XElement element, Affine outer)
    {
        if (SvgStyles.Find(element, "transform") is not { } text || text == "none") return outer;
        if (element.Attribute("transform")?.Value.Trim() == text && SvgTransforms.Parse(text) is { } inner && outer.Around(inner) is { IsFinite: true } map) return map;
        Wrong(element, $"its transform {KnownNames.Quote(text)} makes no sense", "write matrix, translate, rotate, scale, skewX or skewY with their numbers, in the attribute transform");
        return null;
    }

    private void VisitGroup(XElement element, Affine map, bool isVisible, int level)
    {
        if (element.Name.LocalName == "svg" && ViewOf(element, level == 0) is { } view) map = map.Around(view);
        string? layer = level == 0 ? null : SvgStyles.TitleOf(element) ?? element.Attribute("id")?.Value;
        Within(element, layer, () =>
        {
            foreach (XElement child in element.Elements()) Visit(child, map, isVisible, level + 1);
        });
    }

    // What a group or a use is called counts for all that is in it.
    private void Within(XElement element, string? layer, Action visit)
    {
        (int layers, int classes) = (this.layers.Count, this.classes.Count);
        if (layer is not null) this.layers.Add(layer);
        this.classes.AddRange(SvgStyles.ClassesOf(element));
        visit();
        this.layers.RemoveRange(layers, this.layers.Count - layers);
        this.classes.RemoveRange(classes, this.classes.Count - classes);
    }

    // The box of the outermost element lies at the origin; where its size is not given, the view box says it in user units.
    private Affine? ViewOf(XElement element, bool isOutermost)
    {
        double? width = LengthOf(element, "width"), height = LengthOf(element, "height");
        if (SvgViewport.Of(element, width, height) is not { } view)
        {
            Wrong(element, "its viewBox makes no sense", "write four numbers, the last two above 0");
            return null;
        }

        return isOutermost ? view : Affine.Move(LengthOf(element, "x") ?? 0, LengthOf(element, "y") ?? 0).Around(view);
    }

    private static double? LengthOf(XElement element, string name) =>
        element.Attribute(name)?.Value is { } text ? SvgLengths.Parse(text) : null;

    private void VisitUse(XElement element, Affine map, bool isVisible, int level)
    {
        string reference = (element.Attribute("href") ?? element.Attributes().FirstOrDefault(a => a.Name.LocalName == "href"))?.Value ?? "";
        if (!reference.StartsWith('#') || !byId.TryGetValue(reference[1..], out XElement? used))
        {
            Leave(element, $"it uses {KnownNames.Quote(reference)}, which is not in the drawing");
            return;
        }

        if (this.used.Contains(used))
        {
            Wrong(element, $"it uses {KnownNames.Quote(reference)}, which uses itself", "take one of them away");
            return;
        }

        map = map.Around(Affine.Move(LengthOf(element, "x") ?? 0, LengthOf(element, "y") ?? 0));
        this.used.Add(used);
        Within(element, SvgStyles.TitleOf(element) ?? element.Attribute("id")?.Value, () =>
        {
            if (used.Name == SvgXml.Svg + "symbol" || used.Name == SvgXml.Svg + "svg") VisitSymbol(element, used, map, isVisible, level);
            else Visit(used, map, isVisible, level + 1);
        });
        this.used.Remove(used);
    }

    private void VisitSymbol(XElement use, XElement symbol, Affine map, bool isVisible, int level)
    {
        double? width = LengthOf(use, "width") ?? LengthOf(symbol, "width"), height = LengthOf(use, "height") ?? LengthOf(symbol, "height");
        if (SvgViewport.Of(symbol, width, height) is not { } view) Wrong(symbol, "its viewBox makes no sense", "write four numbers, the last two above 0");
        else
            foreach (XElement child in symbol.Elements()) Visit(child, map.Around(view), isVisible, level + 1);
    }

    private void AddShape(XElement element, Affine map)
    {
        if (SvgOutlines.Of(element, out string wrong) is not { } lines) Wrong(element, wrong, "put it right in the drawing");
        else if (lines.IsEmpty) Leave(element, "it has no extent");
        else Add(element, [.. lines.Select(line => line.Under(map))], null);
    }

    private void AddText(XElement element, Affine map)
    {
        string text = string.Join(' ', string.Concat(Pieces(element)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        XElement? placed = new[] { element }.Concat(element.Elements(SvgXml.Svg + "tspan")).FirstOrDefault(part => part.Attribute("x") is not null);
        double x = LengthOf(placed ?? element, "x") ?? 0, y = LengthOf(placed ?? element, "y") ?? 0;
        if (text.Length == 0) Leave(element, "it says nothing");
        else Add(element, [Subpath.Through([map.Of(new(x, y))], isClosed: false)], text);
    }

    /// <summary>What a text says; where a part of it is put at a place of its own, as editors put each line, a word ends.</summary>
    private static IEnumerable<string> Pieces(XElement text) => text.DescendantNodes().Select(node => node switch
    {
        XText letters => letters.Value,
        XElement part when (part.Attribute("x") ?? part.Attribute("y") ?? part.Attribute("dy")) is not null => " ",
        _ => "",
    });

    private void Add(XElement element, ImmutableArray<Subpath> lines, string? text) =>
        Shapes.Add(new(SvgXml.PlaceOf(element, file), Describe(element), SvgStyles.NamesOf(element, layers, classes), lines, text));

    private void Leave(XElement element, string why) => LeftOut.Add(new(SvgXml.PlaceOf(element, file), Describe(element), why));

    private void Wrong(XElement element, string message, string help) =>
        problems.Error(SvgXml.PlaceOf(element, file), $"{Describe(element)}: {message}", help);

    private static string Describe(XElement element) =>
        (SvgStyles.TitleOf(element) ?? element.Attribute("id")?.Value) is { } name ? $"{element.Name.LocalName} {KnownNames.Quote(name)}" : element.Name.LocalName;
}
