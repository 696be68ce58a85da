using System.Collections.Immutable;
using System.Text.Json;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;
using NetTopologySuite.Geometries;
using NetTopologySuite.IO.Converters;

namespace MeshSim.Files.Importing.GeoJson;

/// <summary>Reads GeoJSON (RFC 7946): lines and areas become shapes, a point with a name a text or a mark.</summary>
internal sealed class GeoJsonDrawing
{
    /// <summary>Longest accepted drawing.</summary>
    public const int LongestBytes = 32 * 1024 * 1024;

    /// <summary>Mean radius of the Earth, m (IUGG): over a plot of land a sphere is near enough to the ellipsoid, within 0.4 %.</summary>
    private const double EarthRadiusMetres = 6_371_008.8;

    private static readonly JsonSerializerOptions Options = new() { Converters = { new GeoJsonConverterFactory() } };

    private readonly Func<Coordinate, DrawnPoint> toMetres;
    private readonly DiagnosticList problems;
    private readonly List<LeftOut> leftOut = [];

    private GeoJsonDrawing(Func<Coordinate, DrawnPoint> toMetres, DiagnosticList problems) => (this.toMetres, this.problems) = (toMetres, problems);

    /// <summary>Reads a drawing; null with at least one error when it is of no use.</summary>
    /// <param name="file">The file.</param>
    /// <param name="metresPerUnit">Metres per unit of its coordinates; null for degrees of longitude and latitude.</param>
    /// <param name="problems">Takes the errors.</param>
    public static Drawing? Read(SourceFile file, double? metresPerUnit, DiagnosticList problems)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(file.Bytes);
            if (FeaturePlaces.Find(file, document.RootElement, problems) is not { } found) return null;
            List<(SourcePlace Place, JsonElement Feature, Geometry? Geometry)> features = [.. found.Select(one => (one.Place, one.Feature, GeometryOf(one.Feature, one.Place, problems)))];
            GeoJsonDrawing reader = new(Metres(metresPerUnit, [.. features.Select(one => one.Geometry).OfType<Geometry>()]), problems);
            ImmutableArray<DrawnShape> shapes = [.. features.Select(one => reader.ShapeOf(one.Place, one.Feature, one.Geometry)).OfType<DrawnShape>()];
            string how = metresPerUnit is { } metres
                ? FormattableString.Invariant($"one unit of the coordinates is {metres:0.####} m")
                : "coordinates are degrees, turned into metres about the middle of the drawing, east to the right";
            return new(shapes, [.. reader.leftOut], how);
        }
        catch (JsonException exception)
        {
            int line = (int)(exception.LineNumber ?? 0), start = file.StartOfLine(line + 1);
            problems.Error(
                file.PlaceOf((int)Math.Min(file.Bytes.Length, start + (exception.BytePositionInLine ?? 0))),
                "this is not well-formed JSON",
                "look at the brackets, quotes and commas here and just above");
            return null;
        }
    }

    private static Geometry? GeometryOf(JsonElement feature, SourcePlace place, DiagnosticList problems)
    {
        if (feature.ValueKind != JsonValueKind.Object || !feature.TryGetProperty("geometry", out JsonElement element)) return null;
        try
        {
            Geometry? geometry = element.Deserialize<Geometry>(Options);
            bool isFinite = geometry is null || geometry.Coordinates.All(coordinate => double.IsFinite(coordinate.X + coordinate.Y));
            if (isFinite) return geometry;
        }
        catch (Exception exception) when (exception is JsonException or ArgumentException or NotSupportedException or InvalidOperationException or FormatException)
        {
            // The reader of geometries has no single way to say that it cannot make sense of one.
        }

        problems.Error(place, "the geometry of this feature makes no sense", "write a type of RFC 7946 and as many coordinates as it needs; a ring ends where it begins");
        return null;
    }

    private static Func<Coordinate, DrawnPoint> Metres(double? metresPerUnit, IReadOnlyList<Geometry> geometries)
    {
        if (metresPerUnit is { } metres) return coordinate => new(coordinate.X * metres, coordinate.Y * metres);
        Envelope all = new();
        foreach (Geometry geometry in geometries) all.ExpandToInclude(geometry.EnvelopeInternal);
        if (all.IsNull) return _ => default;
        double perDegree = EarthRadiusMetres * Math.PI / 180, shrunk = Math.Cos(all.Centre.Y * Math.PI / 180);
        return coordinate => new((coordinate.X - all.Centre.X) * perDegree * shrunk, (coordinate.Y - all.Centre.Y) * perDegree);
    }

    private DrawnShape? ShapeOf(SourcePlace place, JsonElement feature, Geometry? geometry)
    {
        ShapeNames names = NamesOf(feature);
        string what = $"feature {(names.Title ?? names.Id) switch { { } name => KnownNames.Quote(name), _ => "without a name" }}";
        ImmutableArray<DrawnLine> lines = [.. LinesOf(geometry, place, what)];
        if (lines.IsEmpty)
        {
            if (geometry is not null || !problems.HasErrors) leftOut.Add(new(place, what, "it has no geometry"));
            return null;
        }

        bool isText = geometry is Point
            && names.Layers.Any(layer => layer.Contains("name", StringComparison.OrdinalIgnoreCase) || layer.Contains("room", StringComparison.OrdinalIgnoreCase));
        return new() { Place = place, What = what, Names = names, Lines = lines, Text = isText ? names.Title ?? names.Id : null };
    }

    private IEnumerable<DrawnLine> LinesOf(Geometry? geometry, SourcePlace place, string what)
    {
        switch (geometry)
        {
            case null or { IsEmpty: true }: return [];
            case Point point: return [new([toMetres(point.Coordinate)], false)];
            case LinearRing ring: return [Ring(ring)];
            case LineString line: return [new([.. line.Coordinates.Select(toMetres)], line.IsClosed && line.NumPoints > 3)];
            case Polygon polygon:
                if (polygon.NumInteriorRings > 0) leftOut.Add(new(place, $"a hole of {what}", "an outline has no holes"));
                return [Ring(polygon.ExteriorRing)];
            default: return Enumerable.Range(0, geometry.NumGeometries).SelectMany(i => LinesOf(geometry.GetGeometryN(i), place, what));
        }
    }

    private DrawnLine Ring(LineString ring) => new([.. ring.Coordinates.SkipLast(1).Select(toMetres)], true);

    // The words under which programs put what a thing is; the file's own id counts where there is no other.
    private static ShapeNames NamesOf(JsonElement feature)
    {
        JsonElement properties = feature.ValueKind == JsonValueKind.Object && feature.TryGetProperty("properties", out JsonElement found) ? found : default;
        return new()
        {
            Layers = [.. new[] { Text(properties, "storey"), Text(properties, "level"), Text(properties, "layer") }.OfType<string>()],
            Classes =
            [
                .. (Text(properties, "class") ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries),
                .. new[] { Text(properties, "type"), Text(properties, "power") }.OfType<string>(),
            ],
            Id = Text(properties, "id") ?? Text(feature, "id"),
            Title = Text(properties, "name"),
        };
    }

    private static string? Text(JsonElement map, string key)
    {
        if (map.ValueKind != JsonValueKind.Object || !map.TryGetProperty(key, out JsonElement value)) return null;
        string text = value.ValueKind switch { JsonValueKind.String => value.GetString()!, JsonValueKind.Number => value.GetRawText(), _ => "" };
        return string.IsNullOrWhiteSpace(text) ? null : text.Trim();
    }
}
