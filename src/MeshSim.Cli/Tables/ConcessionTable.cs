using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Placement.Concessions;
using MeshSim.Quantities;

namespace MeshSim.Cli.Tables;

/// <summary>What giving in on one point would change.</summary>
internal static class ConcessionTable
{
    /// <summary>The concessions that leave somebody less out, the best first; the others in a note.</summary>
    public static Table Of(Infeasibility infeasibility, Decibels planned)
    {
        ILookup<bool, Concession> helps = infeasibility.Concessions.ToLookup(concession => concession.Unserved.Length < infeasibility.Devices.Length);
        bool keeps = helps[true].Any(concession => concession.KeptOn > 0);
        return new(
            [
                new("Giving in on"), new("Then left out"), new("Repeaters", true), .. keeps ? [new Column("Kept on", true)] : Array.Empty<Column>(),
                new("Cost", true),
            ],
            [.. helps[true].Select(concession => Row(concession, planned, keeps))])
        {
            Notes = [.. Notes(helps, planned)],
        };
    }

    private static ImmutableArray<string> Row(Concession concession, Decibels planned, bool keeps) =>
    [
        ConcessionWords.Of(concession, planned),
        concession.Unserved.IsEmpty ? "nobody" : NameList.Short(concession.Unserved),
        Figures.Count(concession.Repeaters),
        .. keeps ? [Figures.Count(concession.KeptOn)] : Array.Empty<string>(),
        Figures.Count(concession.Cost) + (concession.IsProven ? "" : " or less"),
    ];

    private static IEnumerable<string> Notes(ILookup<bool, Concession> helps, Decibels planned)
    {
        if (helps[true].Any(concession => concession.Kind == ConcessionKind.TwoAtAnOutlet))
            yield return "Two repeaters at an outlet share its fuse and perhaps a strip or adaptor: what takes that takes both.";
        if (helps[true].Any(concession => concession.Kind == ConcessionKind.OtherNetwork))
            yield return "Another network: if there is such a device to buy; its repeaters are those beyond what it needs anyway.";
        if (helps[false].Any())
            yield return $"Giving in on these would help nobody: {string.Join("; ", helps[false].Select(concession => ConcessionWords.Of(concession, planned)))}.";
    }
}
