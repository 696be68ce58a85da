using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation;

/// <summary>
/// Finds what a straight path between two places of a building goes through: walls, closed openings, floor structures and
/// objects, on any storeys. Every decision is taken in whole numbers on the <see cref="Lattice"/>, so it is exact.
/// </summary>
/// <remarks>
/// A wall panel A–B is met by a path P–Q with the weight |side(A) − side(B)| · |side(P) − side(Q)| / 4, sides being −1, 0 or 1
/// of the path's line and of the panel's line. A proper crossing weighs 1; a path through an end or from a place on the wall
/// ½, the mean of passing on either side; a path along the wall 0. So two panels in line that share an end weigh 1 together,
/// and the weight is the same in both directions and in every position of the house.
/// </remarks>
public sealed class CrossingTracer
{
    private readonly ImmutableArray<string> elementNames;
    private readonly WallCrossings[] walls;
    private readonly FloorCrossings[] floors;
    private readonly ObjectCrossings[] objects;

    /// <summary>Prepares a building.</summary>
    /// <exception cref="ArgumentException">An opening does not fit into its wall, or an object's footprint is not convex.</exception>
    public CrossingTracer(FloorPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);

        var elements = new ElementIndex();
        walls = [.. plan.Storeys.Select(storey => new WallCrossings(plan, storey, elements))];
        floors = [.. plan.Storeys.Where(storey => storey.Floor is not null).Select(storey => new FloorCrossings(plan, storey, elements))];
        objects = [.. plan.Storeys.SelectMany(storey => storey.Objects.Select(item => new ObjectCrossings(storey, item, elements)))];
        elementNames = [.. elements.Names];
        Constructions = [.. elements.Constructions];
    }

    /// <summary>The constructions that crossings refer to by index, in order of first use.</summary>
    public ImmutableArray<ConstructionName> Constructions { get; }

    /// <summary>The walls of each storey, lowest first.</summary>
    internal ReadOnlySpan<WallCrossings> Walls => walls;

    /// <summary>The floor structures, lowest first.</summary>
    internal ReadOnlySpan<FloorCrossings> Floors => floors;

    /// <summary>The objects, in the order of the plan.</summary>
    internal ReadOnlySpan<ObjectCrossings> Objects => objects;

    /// <summary>The name of what a crossing meets, in the words of the home folder.</summary>
    public string NameOf(in Crossing crossing) => elementNames[crossing.Element];

    /// <summary>Lists what a path goes through, in order from its start; what is met at one place in the order of the plan.</summary>
    /// <param name="from">Start of the path.</param>
    /// <param name="to">End of the path.</param>
    /// <param name="crossings">Emptied and filled.</param>
    public void Trace(Position from, Position to, List<Crossing> crossings)
    {
        ArgumentNullException.ThrowIfNull(crossings);

        crossings.Clear();
        var collector = new Collector(crossings);
        Visit(from, to, ref collector);
        crossings.Sort(static (a, b) => a.Share.CompareTo(b.Share) is not 0 and int byShare ? byShare : a.Element.CompareTo(b.Element));
    }

    /// <summary>Hands everything that a path goes through to a visitor, without allocation; in the same order for both directions.</summary>
    /// <param name="from">Start of the path.</param>
    /// <param name="to">End of the path.</param>
    /// <param name="visitor">Takes the crossings.</param>
    public void Visit<TVisitor>(Position from, Position to, ref TVisitor visitor)
        where TVisitor : struct, ICrossingVisitor
    {
        var path = new TracedPath(from, to);
        foreach (WallCrossings storey in walls)
            storey.Visit(path, ref visitor);
        VisitOthers(path, ref visitor);
    }

    /// <summary>Hands over everything but walls.</summary>
    internal void VisitOthers<TVisitor>(in TracedPath path, ref TVisitor visitor)
        where TVisitor : struct, ICrossingVisitor
    {
        foreach (FloorCrossings floor in floors)
            floor.Visit(path, ref visitor);
        foreach (ObjectCrossings item in objects)
            item.Visit(path, ref visitor);
    }

    private readonly struct Collector(List<Crossing> crossings) : ICrossingVisitor
    {
        public void Take(in Crossing crossing) => crossings.Add(crossing);
    }
}

/// <summary>Numbers the elements and the constructions of a building in the order in which they are met first.</summary>
internal sealed class ElementIndex
{
    public List<string> Names { get; } = [];

    public List<ConstructionName> Constructions { get; } = [];

    public int AddElement(string name)
    {
        Names.Add(name);
        return Names.Count - 1;
    }

    public int ConstructionOf(ConstructionName name)
    {
        int index = Constructions.IndexOf(name);
        if (index >= 0) return index;
        Constructions.Add(name);
        return Constructions.Count - 1;
    }
}

/// <summary>A path with what every element asks of it.</summary>
internal readonly struct TracedPath(Position from, Position to)
{
    public readonly Position From = from, To = to;
    public readonly int LowZ = Math.Min(from.Z, to.Z), HighZ = Math.Max(from.Z, to.Z);
    public readonly double Dx = to.Plan.X - (double)from.Plan.X, Dy = to.Plan.Y - (double)from.Plan.Y, Dz = to.Z - (double)from.Z;

    public double Length => Math.Sqrt((Dx * Dx) + (Dy * Dy) + (Dz * Dz));

    /// <summary>Cosine of the angle to a level direction of length 1, not negative.</summary>
    public double CosineTo(double normalX, double normalY) => Math.Min(1, Math.Abs((Dx * normalX) + (Dy * normalY)) / Length);
}
