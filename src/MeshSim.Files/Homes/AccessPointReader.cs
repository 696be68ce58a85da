using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Quantities;

namespace MeshSim.Files.Homes;

/// <summary>Reads the access points of <c>home.yaml</c>.</summary>
internal static class AccessPointReader
{
    private static readonly ValidRange Channel = new(1, 14, "");
    private static readonly ValidRange PowerDbm = new(-10, 36, "dBm");
    private static readonly ValidRange Busy = new(0, 1, "");
    private static readonly ValidRange AnyWidth = new(0, 1000, "MHz");

    /// <summary>Reads every access point.</summary>
    public static ImmutableArray<AccessPointDocument> Read(MapReader home, DiagnosticList problems)
    {
        List<PlacedName> names = [];
        ImmutableArray<AccessPointDocument> points = [.. home.List("wifi").Select(node => ReadOne(node, names, problems)).OfType<AccessPointDocument>()];
        UniqueNames.Check(names, "access point", problems);
        return points;
    }

    private static AccessPointDocument? ReadOne(YamlNode node, List<PlacedName> names, DiagnosticList problems)
    {
        MapReader? map = MapReader.Open(node, "an access point", problems, "access point", "storey", "at", "channel", "width", "power", "busy");
        if (map is null) return null;
        string? name = map.RequiredText("access point"), storey = map.RequiredText("storey");
        if (name is not null) names.Add(new(name, map.PlaceOf("access point")));
        double[]? at = map.Require("at") is { } place ? OutlineReader.Numbers(place, map, "[x, y, height]", 3, problems) : null;
        if (map.Require("channel") is null | map.Require("power") is null | map.Require("busy") is null) return null;
        int? channel = map.WholeNumber("channel", Channel), width = map.WholeNumber("width", AnyWidth) ?? 20;
        double? powerDbm = map.Number("power", PowerDbm), busy = map.Number("busy", Busy);
        if (width is not (20 or 40))
            problems.Error(
                map.PlaceOf("width"),
                FormattableString.Invariant($"\"width\" is {width}"),
                "it must be 20 or 40 MHz");
        if (name is null || storey is null || at is null || channel is null || powerDbm is null || busy is null) return null;
        return new()
        {
            Name = name,
            Storey = new(storey, map.PlaceOf("storey")),
            Point = PlanPoint.FromMetres(at[0], at[1]),
            HeightMetres = at[2],
            HeightPlace = map.PlaceOf("at"),
            Channel = channel.Value,
            WidthMegahertz = width.Value,
            Power = new(powerDbm.Value),
            Busy = busy.Value,
        };
    }
}
