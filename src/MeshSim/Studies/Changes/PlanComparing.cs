using System.Collections.Immutable;
using System.Globalization;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Studies.Changes;

/// <summary>Lays two buildings side by side. What is different is said in words: a comparison of homes is about what hangs in them.</summary>
internal static class PlanComparing
{
    /// <summary>Every difference, storey by storey.</summary>
    public static ImmutableArray<PlanChange> Of(FloorPlan before, FloorPlan after) =>
    [
        .. HomeComparing.Only(before.Storeys, after.Storeys, NameOf).Select(storey => new PlanChange(NameOf(storey), "the storey is gone", HidesTheMap: true)),
        .. HomeComparing.Only(after.Storeys, before.Storeys, NameOf).Select(storey => new PlanChange(NameOf(storey), "the storey is new", HidesTheMap: true)),
        .. HomeComparing.Pairs(before.Storeys, after.Storeys, NameOf).SelectMany(pair => Of(pair.Before, pair.After)),
    ];

    private static string NameOf(Storey storey) => storey.Name.Value;

    private static IEnumerable<PlanChange> Of(Storey before, Storey after)
    {
        string name = NameOf(after);
        foreach (Room room in HomeComparing.Only(before.Rooms, after.Rooms, room => room.Name.Value)) yield return new($"{name}, {room.Name}", "the room is gone", false);
        foreach (Room room in HomeComparing.Only(after.Rooms, before.Rooms, room => room.Name.Value)) yield return new($"{name}, {room.Name}", "the room is new", false);
        foreach ((Room was, Room becomes) in HomeComparing.Pairs(before.Rooms, after.Rooms, room => room.Name.Value))
            if (!was.Outline.Corners.SequenceEqual(becomes.Outline.Corners)) yield return new($"{name}, {becomes.Name}", "the room has another outline", false);

        if (before.ElevationMetres != after.ElevationMetres || before.CeilingMetres != after.CeilingMetres)
            yield return new(name, "the storey has other heights", before.ElevationMetres != after.ElevationMetres);
        if (Extent(before) != Extent(after)) yield return new(name, "the storey has another extent", HidesTheMap: true);
        if (Differ(before.Walls, after.Walls, WallText)) yield return new(name, "walls stand elsewhere or are built of something else", false);
        if (Differ(before.Walls.SelectMany(wall => wall.Openings), after.Walls.SelectMany(wall => wall.Openings), OpeningText))
            yield return new(name, "doors or windows are different", false);
        if (Differ(before.Objects, after.Objects, ObjectText)) yield return new(name, "objects are different", false);
        if (FloorText(before) != FloorText(after)) yield return new(name, "the floor is different", false);
    }

    private static bool Differ<T>(IEnumerable<T> before, IEnumerable<T> after, Func<T, string> textOf) =>
        !before.Select(textOf).Order(StringComparer.Ordinal).SequenceEqual(after.Select(textOf).Order(StringComparer.Ordinal));

    private static (PlanPoint Low, PlanPoint High)? Extent(Storey storey)
    {
        PlanPoint[] points = [.. storey.Rooms.SelectMany(room => room.Outline.Corners), .. storey.Walls.SelectMany(wall => new[] { wall.Start, wall.End })];
        return points.Length == 0 ? null : (new(points.Min(p => p.X), points.Min(p => p.Y)), new(points.Max(p => p.X), points.Max(p => p.Y)));
    }

    // Which end a wall starts at is nobody's decision.
    private static string WallText(Wall wall)
    {
        bool isForward = wall.Start.X != wall.End.X ? wall.Start.X < wall.End.X : wall.Start.Y < wall.End.Y;
        return isForward ? $"{wall.Start} {wall.End} {wall.Construction}" : $"{wall.End} {wall.Start} {wall.Construction}";
    }

    private static string OpeningText(Opening opening) => string.Create(
        CultureInfo.InvariantCulture,
        $"{opening.Name} {opening.Kind} {opening.OffsetMetres:0.####} {opening.WidthMetres:0.####} {opening.SillMetres:0.####} "
        + $"{opening.HeightMetres:0.####} {opening.Construction} {opening.IsOpen}");

    private static string ObjectText(BlockingObject thing) => FormattableString.Invariant(
        $"{thing.Name} {string.Join(' ', thing.Footprint.Corners)} {thing.BaseMetres:0.####} {thing.HeightMetres:0.####} {thing.Construction}");

    private static string FloorText(Storey storey) => storey.Floor is not { } floor
        ? ""
        : FormattableString.Invariant($"{floor.Construction} {floor.ThicknessMetres:0.####} {string.Join('|', floor.Stairwells.Select(hole => string.Join(' ', hole.Outline.Corners)))}");
}
