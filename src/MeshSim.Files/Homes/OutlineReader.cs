using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Homes;

/// <summary>Reads places and outlines on the plan.</summary>
internal static class OutlineReader
{
    /// <summary>The keys by which an outline is given.</summary>
    public static readonly ImmutableArray<string> Keys = ["from", "to", "corners"];

    /// <summary>The corners of an outline, given by "from" and "to" or by "corners"; null with an error.</summary>
    public static ImmutableArray<PlanPoint>? Read(MapReader map, DiagnosticList problems)
    {
        bool isRectangle = map.Has("from") || map.Has("to");
        if (isRectangle == map.Has("corners"))
        {
            problems.Error(
                map.Place,
                "an outline has either \"from\" and \"to\" or \"corners\"",
                "write { from: [0, 0], to: [3.2, 4.1] } or { corners: [[0, 0], [3.2, 0], [3.2, 4.1]] }");
            return null;
        }

        return isRectangle ? Rectangle(map, problems) : Points(map, "corners", 3, problems);
    }

    /// <summary>The ends of a line; null with an error.</summary>
    public static (PlanPoint Start, PlanPoint End)? Line(MapReader map, string key, DiagnosticList problems)
    {
        if (Points(map, key, 2, problems) is not { } ends) return null;
        if (ends.Length == 2) return (ends[0], ends[1]);
        problems.Error(
            map.PlaceOf(key),
            FormattableString.Invariant($"a line has two ends, not {ends.Length}"),
            "write [[0, 0], [3.2, 0]]; a bent wall is several lines");
        return null;
    }

    /// <summary>So many numbers of a list; null with an error.</summary>
    /// <param name="node">The list.</param>
    /// <param name="map">The map that it stands in.</param>
    /// <param name="example">What would be right.</param>
    /// <param name="count">How many.</param>
    /// <param name="problems">Takes the errors.</param>
    public static double[]? Numbers(YamlNode node, MapReader map, string example, int count, DiagnosticList problems)
    {
        if (node is not YamlList { Items: var items })
        {
            problems.Error(node.Place, $"a place is a list of numbers, not {node.Describe}", $"write {example}");
            return null;
        }

        if (items.Length != count)
        {
            problems.Error(
                node.Place,
                FormattableString.Invariant($"a place has {count} numbers, not {items.Length}"),
                $"write {example}, with points as decimal marks");
            return null;
        }

        double?[] numbers = [.. items.Select(item => map.NumberOf(item, "a coordinate", Lattice.CoordinateMetres))];
        return numbers.Contains(null) ? null : [.. numbers.Select(number => number!.Value)];
    }

    private static ImmutableArray<PlanPoint>? Rectangle(MapReader map, DiagnosticList problems)
    {
        PlanPoint? from = Point(map.Require("from"), map, problems), to = Point(map.Require("to"), map, problems);
        return from is { } a && to is { } b ? Polygon.Rectangle(a, b).Corners : null;
    }

    private static ImmutableArray<PlanPoint>? Points(MapReader map, string key, int fewest, DiagnosticList problems)
    {
        int errorsBefore = problems.ErrorCount;
        ImmutableArray<YamlNode> nodes = map.List(key);
        if (problems.ErrorCount > errorsBefore) return null;
        if (nodes.Length < fewest)
        {
            problems.Error(
                map.PlaceOf(key),
                FormattableString.Invariant($"\"{key}\" has {nodes.Length} points, at least {fewest} are needed"),
                "write [[0, 0], [3.2, 0], ...]");
            return null;
        }

        PlanPoint?[] points = [.. nodes.Select(node => Point(node, map, problems))];
        return points.Contains(null) ? null : [.. points.Select(point => point!.Value)];
    }

    private static PlanPoint? Point(YamlNode? node, MapReader map, DiagnosticList problems) =>
        node is not null && Numbers(node, map, "[x, y]", 2, problems) is { } numbers ? PlanPoint.FromMetres(numbers[0], numbers[1]) : null;
}
