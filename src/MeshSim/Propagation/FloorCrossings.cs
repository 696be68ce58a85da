using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation;

/// <summary>
/// The floor structure below one storey, met at its mid-plane: over the closed union of <see cref="FloorPlan.SpannedBy"/>
/// (everywhere when that is empty), except strictly inside a stairwell.
/// </summary>
internal sealed class FloorCrossings
{
    private readonly int element;

    // Twice the height of the mid-plane, because half a thickness need not be a whole number of lattice steps.
    private readonly long twiceZ;
    private readonly ImmutableArray<BoxedPolygon> rooms, stairwells;

    public FloorCrossings(FloorPlan plan, Storey storey, ElementIndex elements)
    {
        FloorStructure floor = storey.Floor!;
        element = elements.AddElement($"floor of {storey.Name}");
        Construction = elements.ConstructionOf(floor.Construction);
        twiceZ = (2L * Lattice.FromMetres(storey.ElevationMetres)) - Lattice.FromMetres(floor.ThicknessMetres);
        rooms = [.. plan.SpannedBy(storey).Select(room => new BoxedPolygon(room.Outline))];
        stairwells = [.. floor.Stairwells.Select(stairwell => new BoxedPolygon(stairwell.Outline))];
    }

    /// <summary>Index of what it is built of.</summary>
    public int Construction { get; }

    /// <summary>The rooms above it; empty when it reaches everywhere.</summary>
    public IEnumerable<Polygon> Rooms => rooms.Select(room => room.Outline);

    /// <summary>The holes in it.</summary>
    public IEnumerable<Polygon> Stairwells => stairwells.Select(stairwell => stairwell.Outline);

    /// <summary>
    /// Whether its mid-plane lies between two heights. A place exactly in the mid-plane counts as above it, so that a path is
    /// cut there once or not at all.
    /// </summary>
    public bool LiesBetween(int lowZ, int highZ) => 2L * lowZ < twiceZ && 2L * highZ >= twiceZ;

    /// <summary>Where a path between heights on both sides of the mid-plane meets it.</summary>
    public PathPoint MetBy(Position from, Position to) =>
        new(from, to, Math.Abs(twiceZ - (2L * from.Z)), 2L * Math.Abs((long)to.Z - from.Z));

    public void Visit<TVisitor>(in TracedPath path, ref TVisitor visitor)
        where TVisitor : struct, ICrossingVisitor
    {
        if (!LiesBetween(path.LowZ, path.HighZ)) return;

        PathPoint met = MetBy(path.From, path.To);
        if (!IsSolidAt(met)) return;

        visitor.Take(new Crossing
        {
            Kind = LossKind.Floor,
            Element = element,
            Construction = Construction,
            Cosine = Math.Min(1, Math.Abs(path.Dz) / path.Length),
            Weight = 1,
            Share = met.Share,
        });
    }

    /// <summary>Whether there is floor at the plan place of a path's point, and not a hole.</summary>
    public bool IsSolidAt(in PathPoint point)
    {
        double x = point.From.Plan.X + (point.Share * ((double)point.To.Plan.X - point.From.Plan.X));
        double y = point.From.Plan.Y + (point.Share * ((double)point.To.Plan.Y - point.From.Plan.Y));
        foreach (BoxedPolygon stairwell in stairwells)
            if (stairwell.MayHold(x, y) && stairwell.Outline.Locate(point) == Location.Inside) return false;
        foreach (BoxedPolygon room in rooms)
            if (room.MayHold(x, y) && room.Outline.Locate(point) != Location.Outside) return true;
        return rooms.IsEmpty;
    }

    /// <summary>A polygon with its bounding box, one step wider than it is: rounding never decides, it only saves work.</summary>
    private readonly struct BoxedPolygon(Polygon outline)
    {
        private readonly int left = outline.Corners.Min(p => p.X) - 1, right = outline.Corners.Max(p => p.X) + 1;
        private readonly int low = outline.Corners.Min(p => p.Y) - 1, high = outline.Corners.Max(p => p.Y) + 1;

        public readonly Polygon Outline = outline;

        public bool MayHold(double x, double y) => left <= x && x <= right && low <= y && y <= high;
    }
}
