using System.Xml.Linq;

namespace MeshSim.Files.Importing.Svg;

/// <summary>What an element says of how it is shown: in an attribute, or in its own <c>style</c>, which counts more.</summary>
internal static class SvgStyles
{
    /// <summary>The value of a property; null when the element says nothing of it.</summary>
    public static string? Find(XElement element, string property)
    {
        foreach (string declaration in (element.Attribute("style")?.Value ?? "").Split(';'))
        {
            int colon = declaration.IndexOf(':', StringComparison.Ordinal);
            if (colon > 0 && declaration.AsSpan(0, colon).Trim().Equals(property, StringComparison.OrdinalIgnoreCase))
                return declaration[(colon + 1)..].Replace("!important", "", StringComparison.OrdinalIgnoreCase).Trim();
        }

        return element.Attribute(property)?.Value.Trim();
    }

    /// <summary>Whether the element and all in it is taken out of the picture.</summary>
    public static bool IsTakenOut(XElement element) => Find(element, "display") == "none";

    /// <summary>The layers, classes, id and title of an element, as a person gave them.</summary>
    /// <param name="element">The element.</param>
    /// <param name="layers">The names of the groups around it.</param>
    /// <param name="classes">The classes of the groups around it.</param>
    public static ShapeNames NamesOf(XElement element, IEnumerable<string> layers, IEnumerable<string> classes) => new()
    {
        Layers = [.. layers],
        Classes = [.. ClassesOf(element), .. classes],
        Id = element.Attribute("id")?.Value.Trim() is { Length: > 0 } id ? id : null,
        Title = TitleOf(element),
    };

    /// <summary>The classes of an element.</summary>
    public static string[] ClassesOf(XElement element) =>
        (element.Attribute("class")?.Value ?? "").Split([' ', '\t', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries);

    /// <summary>
    /// What a person called an element: its child <c>title</c>, or an attribute <c>label</c> of whatever namespace, as drawing
    /// programs write the names of layers, or <c>data-name</c> or <c>aria-label</c>; null when there is none.
    /// </summary>
    public static string? TitleOf(XElement element) =>
        Usable(element.Element(SvgXml.Svg + "title")?.Value)
        ?? Usable(element.Attributes().FirstOrDefault(attribute => attribute.Name.LocalName == "label")?.Value)
        ?? Usable(element.Attribute("data-name")?.Value)
        ?? Usable(element.Attribute("aria-label")?.Value);

    private static string? Usable(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
