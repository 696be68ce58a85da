using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>Sites of a hub of which it is not proven that they are no better than the best one found: what any of them comes to at least.</summary>
/// <param name="Count">How many there are.</param>
/// <param name="OutOfReach">None has fewer devices without a way everyday,</param>
/// <param name="Unserved">with so few of these none has fewer that cannot have all that is asked,</param>
/// <param name="Cost">and with so few of both none costs less, in the home's units.</param>
public sealed record OpenSites(int Count, int OutOfReach, int Unserved, int Cost)
{
    /// <summary>The sites of some scores that may be reached; null when there are none.</summary>
    internal static OpenSites? Of(ImmutableArray<SiteScore> scores)
    {
        if (scores.IsEmpty) return null;
        SiteScore least = scores.MinBy(score => score.Rank);
        return new(scores.Length, least.OutOfReach, least.Unserved, least.Cost);
    }
}
