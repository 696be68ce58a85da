using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// What a facet costs at, just left of and just right of a place on a row, by the rule of the tracer: every sign that is zero
/// at the place itself is replaced by the sign of its change along the row. This settles all coincidences in one way.
/// </summary>
internal readonly ref struct CornerWeights
{
    private readonly WallFacets facets;
    private readonly Position transmitter;
    private readonly int rise, denominator;
    private readonly long dx, dy;

    /// <summary>Asks about one place.</summary>
    /// <param name="facets">The facets of a storey.</param>
    /// <param name="transmitter">The transmitter.</param>
    /// <param name="gridZ">Height of the receivers.</param>
    /// <param name="dx">Place relative to the transmitter, x, times the denominator.</param>
    /// <param name="dy">The same along y.</param>
    /// <param name="denominator">Above 0.</param>
    public CornerWeights(WallFacets facets, Position transmitter, int gridZ, long dx, long dy, int denominator)
    {
        this.facets = facets;
        this.transmitter = transmitter;
        rise = gridZ - transmitter.Z;
        (this.dx, this.dy, this.denominator) = (dx, dy, denominator);
    }

    /// <summary>The amount at the place moved an infinitesimal step along the row.</summary>
    /// <param name="facet">The facet.</param>
    /// <param name="shift">−1 for just left, 0 for the place itself, 1 for just right.</param>
    public ChannelAmount At(int facet, int shift)
    {
        PlanPoint p = transmitter.Plan, start = facets.Vertices[facets.Starts[facet]], end = facets.Vertices[facets.Ends[facet]];
        long ax = (long)start.X - p.X, ay = (long)start.Y - p.Y, bx = (long)end.X - p.X, by = (long)end.Y - p.Y;
        long fromArea = Predicates.SignedArea(start, end, p);
        int sideOfFrom = Math.Sign(fromArea);
        int spreadOfFacet = Math.Abs(SideOfEnd(ax, ay, shift) - SideOfEnd(bx, by, shift));
        if (spreadOfFacet == 0 || sideOfFrom == 0) return default;

        // Area seen from the place less area seen from the transmitter, times the denominator.
        Int128 change = ((Int128)(bx - ax) * dy) - ((Int128)(by - ay) * dx);
        int sideOfPlace = Int128.Sign(((Int128)denominator * fromArea) + change);
        if (sideOfPlace == 0) sideOfPlace = -shift * Math.Sign(by - ay);
        int spreadOfPath = Math.Abs(sideOfFrom - sideOfPlace);
        if (spreadOfPath == 0) return default;

        int layer = LayerMet(fromArea, change, by - ay, shift);
        ChannelAmount full = facets.Amount(facet, layer);
        return full with { Amount = full.Amount / 4 * spreadOfFacet * spreadOfPath };
    }

    private int SideOfEnd(long x, long y, int shift)
    {
        int side = Int128.Sign(((Int128)dx * y) - ((Int128)dy * x));
        return side != 0 ? side : shift * Math.Sign(y);
    }

    // The layer of the height at which the path meets the facet's plane.
    private int LayerMet(long fromArea, Int128 change, long facetDy, int shift)
    {
        if (rise == 0) return facets.LayerAt(transmitter.Z);

        int[] levels = facets.Levels;
        int layer = levels.Length - 1;
        for (; layer >= 0; layer--)
        {
            // The height met less the level, times |change| > 0; the path is met at the share |area| · denominator / |change|.
            long above = (long)levels[layer] - transmitter.Z;
            int order = Int128.Sign(((Int128)Math.Abs(fromArea) * rise * denominator) - (above * Int128.Abs(change)));
            if (order == 0) order = -shift * Math.Sign(above) * Math.Sign(fromArea) * Math.Sign(facetDy);
            if (order >= 0) break;
        }

        return layer == levels.Length - 1 ? -1 : layer;
    }
}
