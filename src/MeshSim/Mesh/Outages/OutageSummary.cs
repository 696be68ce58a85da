using System.Collections.Immutable;

namespace MeshSim.Mesh.Outages;

/// <summary>All outages of one kind, in short.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Rehearsed">How many were played through.</param>
/// <param name="Dropping">How many of them drop a device; of pairs, a device that neither router drops alone.</param>
/// <param name="Worst">The worst of them.</param>
public sealed record OutageSummary(OutageKind Kind, int Rehearsed, int Dropping, Rehearsal Worst)
{
    /// <summary>One summary for each kind that occurs, the kind with the worst outage first.</summary>
    /// <param name="rehearsals">What was played through.</param>
    public static ImmutableArray<OutageSummary> Of(ImmutableArray<Rehearsal> rehearsals) =>
    [
        .. WorstFirst(rehearsals.GroupBy(rehearsal => rehearsal.Outage.Kind).Select(kind => WorstFirst(kind)[0]))
            .Select(worst => (Worst: worst, All: rehearsals.Where(rehearsal => rehearsal.Outage.Kind == worst.Outage.Kind).ToArray()))
            .Select(kind => new OutageSummary(
                kind.Worst.Outage.Kind, kind.All.Length, kind.All.Count(rehearsal => Drops(rehearsal, rehearsals)), kind.Worst)),
    ];

    /// <summary>Outages by devices dropped, then by devices left with one way, then by expected transmissions added; equal ones as they came.</summary>
    public static ImmutableArray<Rehearsal> WorstFirst(IEnumerable<Rehearsal> rehearsals) =>
    [
        .. rehearsals.OrderByDescending(rehearsal => rehearsal.Dropped.Length)
            .ThenByDescending(rehearsal => rehearsal.LeftWithOneWay.Length)
            .ThenByDescending(rehearsal => rehearsal.MostEtxAdded),
    ];

    /// <summary>Whether an outage drops a device; a pair, one that neither of its routers drops alone.</summary>
    /// <param name="rehearsal">The outage.</param>
    /// <param name="rehearsals">All outages, single routers among them.</param>
    public static bool Drops(Rehearsal rehearsal, ImmutableArray<Rehearsal> rehearsals)
    {
        if (rehearsal.Outage.Kind != OutageKind.Pair) return !rehearsal.Dropped.IsEmpty;
        var alone = rehearsals
            .Where(other => other.Outage.Kind == OutageKind.Router && rehearsal.Off.Any(device => device.Value == other.Outage.Name))
            .SelectMany(other => other.Dropped);
        return rehearsal.Dropped.Except(alone).Any();
    }
}
