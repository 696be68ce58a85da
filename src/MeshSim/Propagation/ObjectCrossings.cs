using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation;

/// <summary>An object as a closed convex prism: a path that meets it anywhere, or starts in it, meets it once.</summary>
internal sealed class ObjectCrossings
{
    private readonly int element, low, high;
    private readonly int left, right, bottom, top;

    // Anticlockwise: the inside is on the left of every edge.
    private readonly PlanPoint[] corners;

    public ObjectCrossings(Storey storey, BlockingObject item, ElementIndex elements)
    {
        if (!item.Footprint.IsConvex) throw new ArgumentException($"the footprint of \"{item.Name}\" is not convex", nameof(item));

        element = elements.AddElement(item.Name);
        Construction = elements.ConstructionOf(item.Construction);
        low = Lattice.FromMetres(storey.ElevationMetres + item.BaseMetres);
        high = Lattice.FromMetres(storey.ElevationMetres + item.BaseMetres + item.HeightMetres);
        corners = [.. item.Footprint.Corners];
        if (item.Footprint.TwiceSignedArea < 0) Array.Reverse(corners);
        (left, right) = (corners.Min(p => p.X), corners.Max(p => p.X));
        (bottom, top) = (corners.Min(p => p.Y), corners.Max(p => p.Y));
    }

    /// <summary>Index of what it is made of.</summary>
    public int Construction { get; }

    /// <summary>Its lowest height, lattice steps above the lowest floor.</summary>
    public int Low => low;

    /// <summary>Its highest height, lattice steps above the lowest floor.</summary>
    public int High => high;

    /// <summary>The corners of its footprint, anticlockwise.</summary>
    public ReadOnlySpan<PlanPoint> Corners => corners;

    public void Visit<TVisitor>(in TracedPath path, ref TVisitor visitor)
        where TVisitor : struct, ICrossingVisitor
    {
        if (!Meets(path, out double share)) return;

        visitor.Take(new Crossing
        {
            Kind = LossKind.Object,
            Element = element,
            Construction = Construction,
            Cosine = 1,
            Weight = 1,
            Share = share,
        });
    }

    /// <summary>Whether a path meets the closed solid.</summary>
    /// <param name="path">The path.</param>
    /// <param name="share">The share of the path that lies before it.</param>
    public bool Meets(in TracedPath path, out double share)
    {
        share = 0;
        PlanPoint from = path.From.Plan, to = path.To.Plan;
        if (path.HighZ < low || path.LowZ > high) return false;
        if (Math.Max(from.X, to.X) < left || Math.Min(from.X, to.X) > right) return false;
        if (Math.Max(from.Y, to.Y) < bottom || Math.Min(from.Y, to.Y) > top) return false;

        var within = ShareInterval.Whole;
        within.KeepWhereNotNegative((long)path.From.Z - low, (long)path.To.Z - low);
        within.KeepWhereNotNegative((long)high - path.From.Z, (long)high - path.To.Z);
        PlanPoint a = corners[^1];
        foreach (PlanPoint b in corners)
        {
            within.KeepWhereNotNegative(Predicates.SignedArea(a, b, from), Predicates.SignedArea(a, b, to));
            a = b;
        }

        share = within.Start;
        return !within.IsEmpty;
    }

    /// <summary>A closed interval of shares of a path, its ends kept as fractions of whole numbers.</summary>
    private struct ShareInterval
    {
        public static readonly ShareInterval Whole = new() { startDenominator = 1, endNumerator = 1, endDenominator = 1 };

        private long startNumerator, startDenominator, endNumerator, endDenominator;
        private bool isNever;

        public readonly double Start => startNumerator / (double)startDenominator;

        public readonly bool IsEmpty => isNever || (Int128)startNumerator * endDenominator > (Int128)endNumerator * startDenominator;

        /// <summary>Cuts off where a quantity that runs evenly from its value at the start to that at the end is below zero.</summary>
        public void KeepWhereNotNegative(long atStart, long atEnd)
        {
            if (atStart >= 0 && atEnd >= 0) return;
            if (atStart < 0 && atEnd < 0)
            {
                isNever = true;
                return;
            }

            // It is zero at the share |atStart| / (|atStart| + |atEnd|).
            long numerator = Math.Abs(atStart), denominator = Math.Abs(atStart - atEnd);
            if (atStart < 0 && (Int128)numerator * startDenominator > (Int128)startNumerator * denominator)
                (startNumerator, startDenominator) = (numerator, denominator);
            if (atEnd < 0 && (Int128)numerator * endDenominator < (Int128)endNumerator * denominator)
                (endNumerator, endDenominator) = (numerator, denominator);
        }
    }
}
