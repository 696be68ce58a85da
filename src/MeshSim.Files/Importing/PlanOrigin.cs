using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing.Mappings;
using MeshSim.Quantities;

namespace MeshSim.Files.Importing;

/// <summary>Moves the storeys of a drawing over each other, and the whole so that it begins at the origin.</summary>
internal static class PlanOrigin
{
    /// <summary>Accepted sizes of a plan: what is smaller or larger is a mistake of scale.</summary>
    private static readonly ValidRange SizeMetres = new(1.5, 600, "m");

    /// <summary>Moves the shapes; false with an error when they are of no size that a building has.</summary>
    public static bool Settle(List<SortedShapes> storeys, Drawing drawing, string file, ImportFindings findings)
    {
        foreach (SortedShapes storey in storeys.Skip(1)) Align(storey, storeys[0], drawing, findings);
        DrawnPoint[] points = [.. storeys.SelectMany(storey => storey.Taken).Where(IsBuilding).SelectMany(taken => taken.Shape.Points)];
        if (points.Length == 0) return true; // Each storey says that it has nothing.

        double left = points.Min(p => p.XMetres), low = points.Min(p => p.YMetres);
        double widthMetres = points.Max(p => p.XMetres) - left, heightMetres = points.Max(p => p.YMetres) - low;
        double size = Math.Max(widthMetres, heightMetres);
        if (!SizeMetres.Contains(size))
        {
            findings.Problems.Error(
                SourcePlace.StartOf(file),
                FormattableString.Invariant($"what is drawn would be {widthMetres:0.###} m wide and {heightMetres:0.###} m deep, if {drawing.Scale}"),
                "state the length of a line (--length id=metres), the scale of the sheet (--scale 50 for 1:50) or the unit of GeoJSON (--unit)");
            return false;
        }

        foreach (SortedShapes storey in storeys) Move(storey, -left, -low);
        findings.Remark($"{drawing.Scale}");
        findings.Remark($"the plan is {widthMetres:0.##} m wide and {heightMetres:0.##} m deep; its lower left corner is the origin");
        return true;
    }

    private static bool IsBuilding(TakenShape taken) => taken.Rule.Meaning is Meaning.Wall or Meaning.Room;

    private static void Align(SortedShapes storey, SortedShapes lowest, Drawing drawing, ImportFindings findings)
    {
        if (storey.Storey.Anchor is not { } anchor || lowest.Storey.Anchor is not { } fixedAnchor) return;
        DrawnShape? here = Find(anchor, storey, drawing, findings), there = Find(fixedAnchor, lowest, drawing, findings);
        if (here is null || there is null) return;
        Move(storey, there.Middle.XMetres - here.Middle.XMetres, there.Middle.YMetres - here.Middle.YMetres);
    }

    private static DrawnShape? Find(string anchor, SortedShapes storey, Drawing drawing, ImportFindings findings)
    {
        DrawnShape? shape = drawing.Shapes.FirstOrDefault(candidate => candidate.Names.Id == anchor);
        string[] known = [.. drawing.Shapes.Select(candidate => candidate.Names.Id).OfType<string>()];
        if (shape is null) findings.Problems.Error(storey.Storey.Place, $"no shape has the id {KnownNames.Quote(anchor)}, the anchor of this storey", KnownNames.Help(anchor, known, "ids"));
        return shape;
    }

    private static void Move(SortedShapes storey, double xMetres, double yMetres)
    {
        for (int i = 0; i < storey.Taken.Count; i++)
        {
            TakenShape taken = storey.Taken[i];
            storey.Taken[i] = taken with
            {
                Shape = taken.Shape with { Lines = [.. taken.Shape.Lines.Select(line => line with { Points = [.. line.Points.Select(point => point.Moved(xMetres, yMetres))] })] },
            };
        }
    }
}
