using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Diagnostics;

/// <summary>Where on the plan the parts of files lie: what makes a diagnostic findable by eye.</summary>
internal sealed class PlanSpots
{
    private readonly List<(SourcePlace From, SourcePlace To, StoreyName Storey, PlanPoint Point)> spots = [];

    /// <summary>Remembers that what stands between two places of one file lies at a point.</summary>
    public void Add(SourcePlace from, SourcePlace to, StoreyName storey, PlanPoint point) => spots.Add((from, to, storey, point));

    /// <summary>The spot of a diagnostic: that of the smallest part that holds it, the later of two; null where nothing on the plan is meant.</summary>
    public (StoreyName Storey, PlanPoint Point)? Find(Diagnostic diagnostic)
    {
        (StoreyName, PlanPoint)? found = null;
        (int Lines, int Columns) least = (int.MaxValue, int.MaxValue);
        foreach ((SourcePlace from, SourcePlace to, StoreyName storey, PlanPoint point) in spots)
        {
            if (from.File != diagnostic.File || !IsBetween(from, to, diagnostic)) continue;
            (int, int) size = (to.Line - from.Line, to.Line == from.Line ? to.Column - from.Column : int.MaxValue);
            if (size.CompareTo(least) > 0) continue;
            (least, found) = (size, (storey, point));
        }

        return found;
    }

    private static bool IsBetween(SourcePlace from, SourcePlace to, Diagnostic diagnostic) =>
        (diagnostic.Line, diagnostic.Column).CompareTo((from.Line, from.Column)) >= 0 && (diagnostic.Line, diagnostic.Column).CompareTo((to.Line, to.Column)) <= 0;
}
