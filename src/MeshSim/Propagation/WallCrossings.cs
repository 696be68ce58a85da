using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation;

/// <summary>The wall panels of one storey, and which of them a path meets.</summary>
internal sealed class WallCrossings
{
    private readonly int low, high;
    private readonly PlanPoint[] starts, ends;
    private readonly PanelFacts[] facts;

    public WallCrossings(FloorPlan plan, Storey storey, ElementIndex elements)
    {
        WallPanel[] panels = [.. WallPanel.Of(plan, storey)];
        starts = [.. panels.Select(panel => panel.Start)];
        ends = [.. panels.Select(panel => panel.End)];
        facts = new PanelFacts[panels.Length];
        var wallElements = new Dictionary<Wall, int>(ReferenceEqualityComparer.Instance);
        for (int i = 0; i < panels.Length; i++)
        {
            if (!wallElements.TryGetValue(panels[i].Wall, out int element))
                wallElements.Add(panels[i].Wall, element = elements.AddElement(panels[i].Wall.Name));
            if (panels[i].Opening is { } opening) element = elements.AddElement(opening.Name);
            facts[i] = new(panels[i], element, elements.ConstructionOf(panels[i].Construction));
        }

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
            // Signed areas of the panel's ends seen from the path: nearly all panels lie on one side of it as a whole.
            long sideOfStart = (dx * ((long)a[i].Y - from.Y)) - (dy * ((long)a[i].X - from.X));
            long sideOfEnd = (dx * ((long)b[i].Y - from.Y)) - (dy * ((long)b[i].X - from.X));
            if ((sideOfStart > 0 && sideOfEnd > 0) || (sideOfStart < 0 && sideOfEnd < 0)) continue;

            int spread = Math.Abs(Math.Sign(sideOfStart) - Math.Sign(sideOfEnd));
            if (spread != 0) VisitPanel(path, i, spread, ref visitor);
        }
    }

    private void VisitPanel<TVisitor>(in TracedPath path, int index, int spreadOfPanel, ref TVisitor visitor)
        where TVisitor : struct, ICrossingVisitor
    {
        long sideOfFrom = Predicates.SignedArea(starts[index], ends[index], path.From.Plan);
        long sideOfTo = Predicates.SignedArea(starts[index], ends[index], path.To.Plan);
        int spreadOfPath = Math.Abs(Math.Sign(sideOfFrom) - Math.Sign(sideOfTo));
        if (spreadOfPath == 0) return;

        ref readonly PanelFacts panel = ref facts[index];
        if (path.HighZ < panel.Low || path.LowZ >= panel.High) return;

        var met = new PathPoint(path.From, path.To, Math.Abs(sideOfFrom), Math.Abs(sideOfFrom - sideOfTo));
        bool isWithin = path.LowZ >= panel.Low && path.HighZ < panel.High;
        if (!isWithin && (met.CompareZ(panel.Low) < 0 || met.CompareZ(panel.High) >= 0)) return;

        visitor.Take(new Crossing
        {
            Kind = panel.Kind,
            Element = panel.Element,
            Construction = panel.Construction,
            Cosine = Math.Min(1, Math.Abs((path.Dx * panel.NormalX) + (path.Dy * panel.NormalY)) / path.Length),
            Weight = spreadOfPanel * spreadOfPath / 4.0,
            Share = met.Share,
        });
    }

    /// <summary>What is asked of a panel once a path meets its line; the normal is that of the wall, of length 1.</summary>
    private readonly struct PanelFacts
    {
        public readonly int Low, High, Element, Construction;
        public readonly LossKind Kind;
        public readonly double NormalX, NormalY;

        public PanelFacts(in WallPanel panel, int element, int construction)
        {
            (Low, High, Element, Construction, Kind) = (panel.Low, panel.High, element, construction, panel.Kind);
            double dx = panel.Wall.End.X - (double)panel.Wall.Start.X, dy = panel.Wall.End.Y - (double)panel.Wall.Start.Y;
            double length = Math.Sqrt((dx * dx) + (dy * dy));
            (NormalX, NormalY) = (-dy / length, dx / length);
        }
    }
}
