using System.Collections.Immutable;
using MeshSim.Files.Importing.Lines;
using MeshSim.Files.Importing.Mappings;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Importing;

/// <summary>Makes centre lines of the drawn walls of one storey, and rooms of what they enclose.</summary>
/// <param name="shapes">The shapes of the storey.</param>
/// <param name="options">How the drawing is to be taken.</param>
/// <param name="findings">Takes what is to be said.</param>
internal sealed class WallTaking(SortedShapes shapes, ImportOptions options, ImportFindings findings)
{
    /// <summary>What became of the short parts of faces.</summary>
    private const string Caps = "parts of them no longer than a wall is thick were taken for ends and reveals";

    private readonly StoreyName storey = new(shapes.Storey.Name);

    /// <summary>The pieces of all walls, each between two joints.</summary>
    public List<WallPart> Parts()
    {
        List<WallStretch> faces = [], lines = [];
        foreach (TakenShape taken in shapes.Of(Meaning.Wall))
        {
            List<WallStretch> kind = taken.Rule.AreFaces ?? options.WallsAreFaces ? faces : lines;
            int before = kind.Count;
            kind.AddRange(taken.Shape.Lines.SelectMany(line => line.Parts).Select(part => new WallStretch(part.Start, part.End, taken.Rule, taken.Shape)));
            if (kind.Count == before) findings.Leave(taken.Shape, "it has no length");
        }

        DrawnShape[] openings = [.. shapes.Taken.Where(taken => taken.Rule.Meaning is Meaning.Door or Meaning.Window).Select(taken => taken.Shape)];
        List<WallStretch> walls = GapBridging.Bridge([.. CentresOf(faces), .. lines], openings, options.SnapMetres);
        SnappedWalls snapped = EndSnapping.Snap(CornerMeeting.Meet(walls, options.SnapMetres), options.SnapMetres);
        foreach (WallStretch lost in snapped.Lost) findings.Leave(lost.Shape.Place, Part(lost), "it is shorter than what is snapped together");
        List<WallPart> parts = PieceNoding.Cut(snapped.Walls, out int twice);
        if (snapped.Moved.Count > 0)
        {
            (double farthestMillimetres, double toleranceMillimetres) = (1000 * snapped.Moved.FarthestMetres, 1000 * options.SnapMetres);
            findings.Remark(
                $"storey {storey}: {snapped.Moved.Count} ends of walls were moved to meet others, by {farthestMillimetres:0.#} mm at most (tolerance {toleranceMillimetres:0.#} mm)");
        }

        if (twice > 0) findings.Remark($"storey {storey}: {twice} pieces of wall are drawn more than once and were taken once");
        foreach (IGrouping<ConstructionName, WallPart> group in parts.GroupBy(part => part.Wall.Rule.Construction!.Value).OrderBy(group => group.Key.Value, StringComparer.Ordinal))
            findings.Take(storey, "pieces of wall", group.Key.Value, group.Count(), group.Sum(part => part.Start.DistanceMetresTo(part.End)));
        return parts;
    }

    /// <summary>The rooms that the drawing outlines, or else those that its walls enclose.</summary>
    public ImmutableArray<RoomDescription> Rooms(IReadOnlyList<WallPart> parts)
    {
        List<(ImmutableArray<PlanPoint> Corners, string? Name, Diagnostics.SourcePlace Place)> rooms = [];
        foreach (TakenShape room in shapes.Of(Meaning.Room))
        {
            if (room.Shape.Lines is [{ IsRing: true } ring]) rooms.Add(([.. ring.RingCorners.Select(PieceNoding.PointOf)], room.Name, room.Shape.Place));
            else findings.Leave(room.Shape, "a room needs one closed outline");
        }

        bool areOutlined = rooms.Count > 0;
        if (!areOutlined) rooms.AddRange(Enclosed(parts).Select(corners => (corners, (string?)null, shapes.Storey.Place)));
        string?[] texts = NamesFor([.. rooms.Select(room => room.Corners)]);
        findings.Take(storey, areOutlined ? "rooms by their outlines" : "rooms that walls enclose", "", rooms.Count);
        return
        [
            .. rooms.Select((room, i) => new RoomDescription(
                findings.KeyOf(room.Place), new(findings.NameFor("room", texts[i] ?? room.Name, "room")), room.Corners)),
        ];
    }

    private List<WallStretch> CentresOf(List<WallStretch> faces)
    {
        PairedFaces paired = FacePairing.Pair(faces);
        foreach (WallStretch single in paired.Single)
        {
            findings.Leave(
                single.Shape.Place,
                Part(single),
                FormattableString.Invariant($"it is drawn as a face of a wall, and within {single.Rule.ThickestMetres:0.##} m there is no second face to go with it"));
        }

        if (faces.Count == 0) return [];
        double[] millimetres = [.. paired.Centres.Select(wall => 1000 * wall.ThicknessMetres!.Value).DefaultIfEmpty()];
        findings.Remark(
            $"storey {storey}: {faces.Count} faces of walls gave {paired.Centres.Count} centre lines, {millimetres.Min():0} to {millimetres.Max():0} mm thick; {paired.Caps} {Caps}");
        return [.. paired.Centres.Select(OfThickness).OfType<WallStretch>()];
    }

    private WallStretch? OfThickness(WallStretch wall)
    {
        if (wall.Rule.ByThickness.IsEmpty) return wall;
        int index = wall.Rule.ByThickness.Count(step => step.LeastMetres <= wall.ThicknessMetres) - 1;
        if (index >= 0) return wall with { Rule = wall.Rule with { Construction = wall.Rule.ByThickness[index].Construction, ByThickness = [] } };
        findings.Problems.Error(
            wall.Rule.Place, FormattableString.Invariant($"no construction is named for a wall {wall.ThicknessMetres:0.###} m thick, {Part(wall)}"), "begin \"by thickness\" with 0");
        return null;
    }

    private ImmutableArray<ImmutableArray<PlanPoint>> Enclosed(IReadOnlyList<WallPart> parts)
    {
        EnclosedRooms found = RoomFinding.Find(parts);
        foreach (ImmutableArray<PlanPoint> small in found.Small)
        {
            findings.Leave(
                shapes.Storey.Place,
                $"the space at {small[0]} between walls",
                FormattableString.Invariant($"it is smaller than {RoomFinding.SmallestSquareMetres} m², too small for a room"));
        }

        foreach (ImmutableArray<PlanPoint> holed in found.Holed)
            findings.Leave(shapes.Storey.Place, $"the room at {holed[0]}", "it goes around something; draw a wall that joins the island to an outer wall");
        foreach (WallPart end in found.FreeEnds)
        {
            findings.Problems.Notice(
                end.Wall.Shape.Place,
                $"{end.Wall.Shape.What}: the wall ends free at {end.End}",
                "if it should meet another, lengthen it in the drawing or raise the snapping tolerance");
        }

        return found.Rooms;
    }

    private string?[] NamesFor(ImmutableArray<ImmutableArray<PlanPoint>> rooms)
    {
        string?[] names = new string?[rooms.Length];
        foreach (TakenShape text in shapes.Of(Meaning.RoomName))
        {
            PlanPoint at = PieceNoding.PointOf(text.Shape.Middle);
            int[] around = [.. Enumerable.Range(0, rooms.Length).Where(i => new Polygon(rooms[i]).Contains(at)).OrderBy(i => Int128.Abs(new Polygon(rooms[i]).TwiceSignedArea))];
            if (around.Length == 0) findings.Leave(text.Shape, $"at {at} there is no room to name {Diagnostics.KnownNames.Quote(text.Name!)}");
            else if (names[around[0]] is { } taken)
                findings.Leave(text.Shape, $"the room is called {Diagnostics.KnownNames.Quote(taken)} already, and no closed line of walls parts the two");
            else names[around[0]] = text.Name;
        }

        return names;
    }

    private static string Part(WallStretch wall) => $"{wall.Shape.What} from {wall.Start} to {wall.End}";
}
