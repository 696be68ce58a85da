using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>A line of a description while its corners are being matched to those of others: a room's outline or a wall.</summary>
internal sealed class PlanLine(SourceKey source, string label, bool isClosed, IEnumerable<PlanPoint> corners)
{
    public SourceKey Source { get; } = source;

    /// <summary>What a person calls it, in quotation marks where it has a name.</summary>
    public string Label { get; } = label;

    public bool IsClosed { get; } = isClosed;

    public List<PlanPoint> Corners { get; } = [.. corners];

    public int EdgeCount => IsClosed ? Corners.Count : Corners.Count - 1;

    public (PlanPoint Start, PlanPoint End) Edge(int index) => (Corners[index], Corners[(index + 1) % Corners.Count]);

    public IEnumerable<(PlanPoint Start, PlanPoint End)> Edges => Enumerable.Range(0, EdgeCount).Select(Edge);
}

/// <summary>Collects what is to be said about a description.</summary>
internal sealed class Findings
{
    public List<FloorPlanProblem> Problems { get; } = [];

    public List<FloorPlanNotice> Notices { get; } = [];

    public void Wrong(SourceKey source, Aspect aspect, FormattableString wrong, FormattableString? right = null) =>
        Problems.Add(new(source, aspect, FormattableString.Invariant(wrong), right is null ? "" : FormattableString.Invariant(right)));

    public void Note(SourceKey source, FormattableString text) => Notices.Add(new(source, FormattableString.Invariant(text)));
}
