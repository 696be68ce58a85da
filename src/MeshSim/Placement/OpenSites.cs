using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>Sites of a hub that were not worked out and might be among the best: what any of them comes to at least.</summary>
/// <param name="Count">How many there are.</param>
/// <param name="OutOfReach">None has fewer devices without a way everyday,</param>
/// <param name="Unserved">with so few of these none has fewer that cannot have all that is asked,</param>
/// <param name="Cost">and with so few of both none costs less, in the home's units.</param>
public sealed record OpenSites(int Count, int OutOfReach, int Unserved, int Cost)
{
    /// <summary>The sites of some bounds; null when there are none.</summary>
    internal static OpenSites? Of(ImmutableArray<SiteScore> bounds)
    {
        if (bounds.IsEmpty) return null;
        SiteScore least = bounds.MinBy(bound => bound.Rank);
        return new(bounds.Length, least.OutOfReach, least.Unserved, least.Cost);
    }

    /// <summary>What they are ranked by at best.</summary>
    internal SiteScore Score => new(OutOfReach, Unserved, Cost);
}
