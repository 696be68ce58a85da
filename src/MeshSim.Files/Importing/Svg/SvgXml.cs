using System.Xml;
using System.Xml.Linq;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;

namespace MeshSim.Files.Importing.Svg;

/// <summary>Reads XML so that a file can neither name another one nor grow in memory: no document type, no entities of its own, no resolver.</summary>
internal static class SvgXml
{
    /// <summary>Longest accepted drawing.</summary>
    public const int LongestBytes = 32 * 1024 * 1024;

    /// <summary>The namespace of SVG.</summary>
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The root; null with an error when the file is no such XML.</summary>
    public static XElement? Read(SourceFile file, DiagnosticList problems)
    {
        XmlReaderSettings settings = new()
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            MaxCharactersInDocument = LongestBytes,
            MaxCharactersFromEntities = 1,
        };
        try
        {
            using XmlReader reader = XmlReader.Create(new StringReader(file.Text), settings);
            XElement root = XDocument.Load(reader, LoadOptions.SetLineInfo).Root!;
            if (root.Name == Svg + "svg") return root;
            problems.Error(PlaceOf(root, file.Name), $"the file holds {KnownNames.Quote(root.Name.LocalName)}, not an SVG drawing", "export the drawing as plain SVG");
        }
        catch (XmlException exception)
        {
            SourcePlace place = new(file.Name, Math.Max(1, exception.LineNumber), Math.Max(1, exception.LinePosition));
            if (file.Text.Contains("<!DOCTYPE", StringComparison.OrdinalIgnoreCase))
                problems.Error(place, "the drawing has a document type, or is not well-formed XML", "take the part from <!DOCTYPE to its > away: document types are not read");
            else
                problems.Error(place, "this is not well-formed XML", "export the drawing again as plain SVG, or look at the tags here and just above");
        }

        return null;
    }

    /// <summary>Where an element stands.</summary>
    public static SourcePlace PlaceOf(XElement element, string file)
    {
        IXmlLineInfo info = element;
        return info.HasLineInfo() ? new(file, info.LineNumber, Math.Max(1, info.LinePosition - 1)) : SourcePlace.StartOf(file);
    }
}
