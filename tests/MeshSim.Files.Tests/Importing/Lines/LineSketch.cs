using System.Collections.Immutable;
using MeshSim.Files.Importing;
using MeshSim.Files.Importing.Lines;
using MeshSim.Files.Importing.Mappings;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Tests.Importing.Lines;

/// <summary>Lines of walls in a few words.</summary>
internal static class LineSketch
{
    private static readonly TakeRule Rule = new() { Place = new("plan.svg", 1, 1), Meaning = Meaning.Wall, Construction = new("brick-half") };

    private static readonly DrawnShape Shape = Of("wall", []);

    public static DrawnShape Of(string what, ImmutableArray<DrawnPoint> points) =>
        new() { Place = Rule.Place, What = what, Names = new(), Lines = points.IsEmpty ? [] : [new(points, false)] };

    public static List<WallStretch> Walls(params ((double X, double Y) Start, (double X, double Y) End)[] lines) =>
        [.. lines.Select(line => new WallStretch(new(line.Start.X, line.Start.Y), new(line.End.X, line.End.Y), Rule, Shape))];

    public static List<WallStretch> Ring(params (double X, double Y)[] corners) =>
        Walls([.. corners.Select((corner, i) => (corner, corners[(i + 1) % corners.Length]))]);

    public static (PlanPoint Low, PlanPoint High, int Corners) BoxOf(ImmutableArray<PlanPoint> room)
    {
        int straight = room.Length - Enumerable.Range(0, room.Length).Count(i => Predicates.SideOf(room[i], room[(i + 1) % room.Length], room[(i + 2) % room.Length]) == Side.On);
        return (new(room.Min(p => p.X), room.Min(p => p.Y)), new(room.Max(p => p.X), room.Max(p => p.Y)), straight);
    }

    public static (PlanPoint Low, PlanPoint High, int Corners) Box(double left, double low, double right, double high) =>
        (PlanPoint.FromMetres(left, low), PlanPoint.FromMetres(right, high), 4);
}
