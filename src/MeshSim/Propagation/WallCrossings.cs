using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation;

/// <summary>Panels of one row that stand one above the other.</summary>
/// <param name="Row">Index of the row.</param>
/// <param name="First">Index of the lowest panel.</param>
/// <param name="Count">Number of panels.</param>
internal readonly record struct PanelStack(int Row, int First, int Count);

/// <summary>
/// The wall panels of one storey, and which of them a path meets. Panels that lie exactly in one line, as those of an upright
/// or level wall do, are asked about together first.
/// </summary>
internal sealed class WallCrossings
{
    private readonly int low, high;
    private readonly PlanPoint[] starts, ends;
    private readonly Row[] rows;
    private readonly PanelFacts[] panels;

    public WallCrossings(FloorPlan plan, Storey storey, ElementIndex elements)
    {
        List<WallPanel[]> cut = [.. WallPanel.Of(plan, storey).GroupBy(panel => panel.Wall, ReferenceEqualityComparer.Instance).SelectMany(RowsOf)];
        panels = new PanelFacts[cut.Sum(row => row.Length)];
        rows = new Row[cut.Count];
        int count = 0, element = -1;
        for (int i = 0; i < rows.Length; i++)
        {
            rows[i] = new(cut[i], count);
            if (i == 0 || !ReferenceEquals(cut[i][0].Wall, cut[i - 1][0].Wall)) element = elements.AddElement(cut[i][0].Wall.Name);
            foreach (WallPanel panel in cut[i])
            {
                int own = panel.Opening is { } opening ? elements.AddElement(opening.Name) : element;
                panels[count++] = new(panel, own, elements.ConstructionOf(panel.Construction));
            }
        }

        starts = [.. cut.Select(row => row[0].Start)];
        ends = [.. cut.Select(row => row[^1].End)];
        low = panels.Length == 0 ? 0 : panels.Min(panel => panel.Low);
        high = panels.Length == 0 ? 0 : panels.Max(panel => panel.High);
    }

    public void Visit<TVisitor>(in TracedPath path, ref TVisitor visitor)
        where TVisitor : struct, ICrossingVisitor
    {
        if (path.HighZ < low || path.LowZ >= high) return;

        PlanPoint from = path.From.Plan, to = path.To.Plan;
        long dx = (long)to.X - from.X, dy = (long)to.Y - from.Y;
        PlanPoint[] a = starts, b = ends;
        for (int i = 0; i < a.Length && i < b.Length; i++)
        {
            // Signed areas of both ends seen from the path: nearly all rows lie on one side of it as a whole.
            long sideOfStart = (dx * ((long)a[i].Y - from.Y)) - (dy * ((long)a[i].X - from.X));
            long sideOfEnd = (dx * ((long)b[i].Y - from.Y)) - (dy * ((long)b[i].X - from.X));
            if ((sideOfStart > 0 && sideOfEnd > 0) || (sideOfStart < 0 && sideOfEnd < 0)) continue;
            if ((sideOfStart | sideOfEnd) != 0) VisitRow(path, i, ref visitor);
        }
    }

    /// <summary>Whether no path between two heights can meet any wall of the storey.</summary>
    public bool IsClearBetween(int lowZ, int highZ) => highZ < low || lowZ >= high;

    /// <summary>Panels one above the other, in the order in which paths are asked about them.</summary>
    public IEnumerable<PanelStack> Stacks()
    {
        for (int row = 0; row < rows.Length; row++)
        {
            int end = rows[row].First + rows[row].Count;
            for (int first = rows[row].First, next; first < end; first = next)
            {
                next = first + 1;
                while (next < end && panels[next].Start == panels[first].Start && panels[next].End == panels[first].End) next++;
                yield return new(row, first, next - first);
            }
        }
    }

    /// <summary>Where a stack stands on the plan.</summary>
    public (PlanPoint Start, PlanPoint End) EndsOf(PanelStack stack) => (panels[stack.First].Start, panels[stack.First].End);

    /// <summary>The normal of a stack's wall on the plan, of length 1.</summary>
    public (double X, double Y) NormalOf(PanelStack stack) => (rows[stack.Row].NormalX, rows[stack.Row].NormalY);

    /// <summary>From where to where each panel of a stack reaches, and what it is built of.</summary>
    public IEnumerable<(int Low, int High, int Construction)> PanelsOf(PanelStack stack) =>
        Enumerable.Range(stack.First, stack.Count).Select(i => (panels[i].Low, panels[i].High, panels[i].Construction));

    /// <summary>Hands over the panels of one stack that a path meets.</summary>
    public void Visit<TVisitor>(in TracedPath path, PanelStack stack, ref TVisitor visitor)
        where TVisitor : struct, ICrossingVisitor => VisitPanels(path, stack.Row, stack.First, stack.Count, ref visitor);

    private void VisitRow<TVisitor>(in TracedPath path, int index, ref TVisitor visitor)
        where TVisitor : struct, ICrossingVisitor => VisitPanels(path, index, rows[index].First, rows[index].Count, ref visitor);

    private void VisitPanels<TVisitor>(in TracedPath path, int index, int first, int count, ref TVisitor visitor)
        where TVisitor : struct, ICrossingVisitor
    {
        long sideOfFrom = Predicates.SignedArea(starts[index], ends[index], path.From.Plan);
        long sideOfTo = Predicates.SignedArea(starts[index], ends[index], path.To.Plan);
        int spreadOfPath = Math.Abs(Math.Sign(sideOfFrom) - Math.Sign(sideOfTo));
        if (spreadOfPath == 0) return;

        ref readonly Row row = ref rows[index];
        var met = new PathPoint(path.From, path.To, Math.Abs(sideOfFrom), Math.Abs(sideOfFrom - sideOfTo));
        double height = path.From.Z + (met.Share * path.Dz);
        foreach (ref readonly PanelFacts panel in panels.AsSpan(first, count))
        {
            Side sideOfStart = Predicates.SideOf(path.From.Plan, path.To.Plan, panel.Start);
            Side sideOfEnd = Predicates.SideOf(path.From.Plan, path.To.Plan, panel.End);
            int spreadOfPanel = Math.Abs((int)sideOfStart - (int)sideOfEnd);
            if (spreadOfPanel == 0 || !panel.Reaches(met, height)) continue;

            visitor.Take(new Crossing
            {
                Kind = panel.Kind,
                Element = panel.Element,
                Construction = panel.Construction,
                Cosine = path.CosineTo(row.NormalX, row.NormalY),
                Weight = spreadOfPanel * spreadOfPath / 4.0,
                Share = met.Share,
            });
        }
    }

    // The panels of a slanting wall are rounded to the lattice one by one, so each has a line of its own.
    private static IEnumerable<WallPanel[]> RowsOf(IEnumerable<WallPanel> ofWall)
    {
        WallPanel[] all = [.. ofWall];
        Wall wall = all[0].Wall;
        bool isSlanting = wall.Start.X != wall.End.X && wall.Start.Y != wall.End.Y;
        return isSlanting ? all.Select(panel => new[] { panel }) : [all];
    }

    /// <summary>Panels in one line, and the normal of their wall, of length 1.</summary>
    private readonly struct Row
    {
        public readonly int First, Count;
        public readonly double NormalX, NormalY;

        public Row(WallPanel[] row, int first)
        {
            (First, Count) = (first, row.Length);
            Wall wall = row[0].Wall;
            double dx = wall.End.X - (double)wall.Start.X, dy = wall.End.Y - (double)wall.Start.Y;
            double length = Math.Sqrt((dx * dx) + (dy * dy));
            (NormalX, NormalY) = (-dy / length, dx / length);
        }
    }

    /// <summary>What is asked of a panel once a path meets its row.</summary>
    private readonly struct PanelFacts(in WallPanel panel, int element, int construction)
    {
        public readonly PlanPoint Start = panel.Start, End = panel.End;
        public readonly int Low = panel.Low, High = panel.High, Element = element, Construction = construction;
        public readonly LossKind Kind = panel.Kind;

        /// <summary>Whether a point of the path lies in the panel's height; the rounded height saves work and never decides.</summary>
        public bool Reaches(in PathPoint point, double roundedHeight)
        {
            if (roundedHeight < Low - 1 || roundedHeight > High + 1) return false;
            if (roundedHeight > Low + 1 && roundedHeight < High - 1) return true;
            return point.CompareZ(Low) >= 0 && point.CompareZ(High) < 0;
        }
    }
}
