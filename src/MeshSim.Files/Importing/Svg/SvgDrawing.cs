using System.Xml.Linq;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;

namespace MeshSim.Files.Importing.Svg;

/// <summary>Reads an SVG drawing (1.1, and what 2 has of the same): shapes in metres, y up the page.</summary>
internal static class SvgDrawing
{
    /// <summary>Reads a drawing; null with at least one error when it is of no use.</summary>
    /// <param name="file">The file.</param>
    /// <param name="length">A line whose true length is known, or null.</param>
    /// <param name="ratio">How many times smaller than the building the drawing is, or null where it is as large.</param>
    /// <param name="flattenMetres">How far corners that stand for a curve may leave it, m.</param>
    /// <param name="problems">Takes the errors.</param>
    public static Drawing? Read(SourceFile file, StatedLength? length, double? ratio, double flattenMetres, DiagnosticList problems)
    {
        if (SvgXml.Read(file, problems) is not { } root) return null;
        (List<SvgShape> shapes, List<LeftOut> leftOut) = SvgWalker.Walk(root, file.Name, problems);
        SourcePlace start = SvgXml.PlaceOf(root, file.Name);
        if (length is not null && ratio is not null)
        {
            problems.Error(start, "both a length and a scale are stated", "state one of them");
            return null;
        }

        (double MetresPerUnit, string How)? scale = length is not null ? OfLength(length, shapes, start, problems) : OfPage(root, ratio ?? 1);
        if (scale is not var (metresPerUnit, how)) return null;
        double tolerance = flattenMetres / metresPerUnit;
        return new(
            [.. shapes.Where(shape => length is null || shape.Names.Id != length.Id).Select(shape => ToMetres(shape, metresPerUnit, tolerance))],
            [.. leftOut],
            how);
    }

    private static (double MetresPerUnit, string How) OfPage(XElement root, double ratio)
    {
        bool isPhysical = SvgLengths.IsPhysical(root.Attribute("width")?.Value ?? "") || SvgLengths.IsPhysical(root.Attribute("height")?.Value ?? "");
        string unit = isPhysical ? "the size that the page states" : "96 units to the inch, because the page states no size in mm, cm or in";
        return (ratio / SvgLengths.PerMetre, FormattableString.Invariant($"lengths follow {unit}, at a scale of 1:{ratio:0.###}"));
    }

    private static (double MetresPerUnit, string How)? OfLength(StatedLength length, List<SvgShape> shapes, SourcePlace start, DiagnosticList problems)
    {
        SvgShape? line = shapes.Find(shape => shape.Names.Id == length.Id);
        if (line is null)
        {
            string[] known = [.. shapes.Select(shape => shape.Names.Id).OfType<string>()];
            problems.Error(start, $"no shape has the id {KnownNames.Quote(length.Id)}, whose length is stated", KnownNames.Help(length.Id, known, "ids"));
            return null;
        }

        double units = line.Lines is [{ IsClosed: false } one] ? (one.End - one.Start).Length : 0;
        if (units > 0)
            return (length.Metres / units, FormattableString.Invariant($"lengths follow {line.What}, which is {length.Metres:0.####} m long"));
        problems.Error(line.Place, $"{line.What}: its length is stated, but it is not one open line", "state the length of a line from one point to another");
        return null;
    }

    private static DrawnShape ToMetres(SvgShape shape, double metresPerUnit, double tolerance) => new()
    {
        Place = shape.Place,
        What = shape.What,
        Names = shape.Names,
        Text = shape.Text,
        Lines =
        [
            .. shape.Lines.Select(line => new DrawnLine(
                [.. line.Flattened(tolerance).Select(point => new DrawnPoint(point.X * metresPerUnit, -point.Y * metresPerUnit))],
                line.IsClosed)),
        ],
    };
}
