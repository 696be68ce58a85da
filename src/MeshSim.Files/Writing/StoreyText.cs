using System.Text;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Writing;

/// <summary>Writes storeys into <c>home.yaml</c>: every wall as a line, so that nothing is left to be derived.</summary>
internal static class StoreyText
{
    /// <summary>Writes one storey.</summary>
    public static void Append(StringBuilder text, Storey storey)
    {
        Line(text, $"  - storey: {YamlWords.Text(storey.Name.Value)}");
        Line(text, $"    ceiling: {YamlWords.Number(storey.CeilingMetres)}");
        if (storey.Floor is { } floor)
        {
            Line(text, $"    floor: {YamlWords.Text(floor.Construction.Value)}");
            Line(text, $"    structure: {YamlWords.Number(floor.ThicknessMetres)}");
            AppendList(text, "stairwells", floor.Stairwells.Select(stairwell => YamlWords.Map([("corners", Corners(stairwell.Outline))])));
        }

        if (!storey.Rooms.IsEmpty) Line(text, "    rooms:");
        foreach (Room room in storey.Rooms)
            Line(text, $"      {YamlWords.Text(room.Name.Value)}: {YamlWords.Map([("corners", Corners(room.Outline))])}");
        AppendList(text, "walls", storey.Walls.Select(wall => YamlWords.Map(
            [("line", Ends(wall)), ("is", YamlWords.Text(wall.Construction.Value)), ("name", YamlWords.Text(wall.Name))])));
        AppendList(text, "openings", storey.Walls.SelectMany(wall => wall.Openings.Select(opening => OpeningMap(wall, opening))));
        AppendList(text, "objects", storey.Objects.Select(ObjectMap));
    }

    private static string Ends(Wall wall) => YamlWords.Points([wall.Start, wall.End]);

    private static string Corners(Polygon outline) => YamlWords.Points(outline.Corners);

    private static string OpeningMap(Wall wall, Opening opening)
    {
        // Offsets are written from the left end of the wall, or the lower end of an upright one.
        bool startsLeft = wall.Start.X < wall.End.X || (wall.Start.X == wall.End.X && wall.Start.Y < wall.End.Y);
        double fromLeftMetres = startsLeft ? opening.OffsetMetres : wall.LengthMetres - opening.OffsetMetres - opening.WidthMetres;
        List<(string Key, string Value)> entries =
        [
            (opening.Kind == OpeningKind.Door ? "door" : "window", YamlWords.Text(opening.Name)),
            ("line", Ends(wall)),
            ("at", YamlWords.Number(Math.Max(0, fromLeftMetres))),
            ("width", YamlWords.Number(opening.WidthMetres)),
            ("sill", YamlWords.Number(opening.SillMetres)),
            ("height", YamlWords.Number(opening.HeightMetres)),
            ("is", YamlWords.Text(opening.Construction.Value)),
        ];
        if (opening.IsOpen) entries.Add(("open", "true"));
        return YamlWords.Map(entries);
    }

    private static string ObjectMap(BlockingObject item) => YamlWords.Map(
    [
        ("object", YamlWords.Text(item.Name)),
        ("corners", Corners(item.Footprint)),
        ("base", YamlWords.Number(item.BaseMetres)),
        ("height", YamlWords.Number(item.HeightMetres)),
        ("is", YamlWords.Text(item.Construction.Value)),
    ]);

    private static void AppendList(StringBuilder text, string key, IEnumerable<string> items)
    {
        bool isFirst = true;
        foreach (string item in items)
        {
            if (isFirst) Line(text, $"    {key}:");
            isFirst = false;
            Line(text, $"      - {item}");
        }
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
