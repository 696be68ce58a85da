using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Placement.Concessions;
using MeshSim.Quantities;

namespace MeshSim.Cli.Tables;

/// <summary>What giving in on one point would change.</summary>
internal static class ConcessionTable
{
    /// <summary>The concessions that leave somebody less out and can be planned with, the best first; the others in notes.</summary>
    public static Table Of(Infeasibility infeasibility, Decibels planned)
    {
        ILookup<bool, Concession> helps = infeasibility.Concessions.ToLookup(concession => concession.Unserved.Length < infeasibility.Devices.Length);
        Concession[] offered = [.. helps[true].Where(concession => concession.IsAdvisable)];
        bool keeps = Array.Exists(offered, concession => concession.KeptOn > 0);
        return new(
            [
                new("Giving in on"), new("Then left out"), new("Repeaters", true), .. keeps ? [new Column("Kept on", true)] : Array.Empty<Column>(),
                new("Cost", true),
            ],
            [.. offered.Select(concession => Row(concession, planned, keeps))])
        {
            Notes =
            [
                .. Notes(offered),
                .. helps[true].Where(concession => !concession.IsAdvisable).Select(concession => Unadvisable(concession, planned)),
                .. Useless(helps[false], planned),
            ],
        };
    }

    private static ImmutableArray<string> Row(Concession concession, Decibels planned, bool keeps) =>
    [
        ConcessionWords.Of(concession, planned),
        LeftOut(concession),
        Figures.Count(concession.Repeaters),
        .. keeps ? [Figures.Count(concession.KeptOn)] : Array.Empty<string>(),
        Figures.Count(concession.Cost) + (concession.IsProven ? "" : " or less"),
    ];

    private static string LeftOut(Concession concession) => concession.Unserved.IsEmpty ? "nobody" : NameList.Short(concession.Unserved);

    private static IEnumerable<string> Notes(Concession[] offered)
    {
        if (Array.Exists(offered, concession => concession.Kind == ConcessionKind.TwoAtAnOutlet))
            yield return "Two repeaters at an outlet share its fuse and perhaps a strip or adaptor: what takes that takes both.";
        if (Array.Exists(offered, concession => concession.Kind == ConcessionKind.OtherNetwork))
            yield return "Another network: if there is such a device to buy; its repeaters are those beyond what it needs anyway.";
    }

    private static string Unadvisable(Concession concession, Decibels planned) => FormattableString.Invariant(
        $"Not advisable: {ConcessionWords.Of(concession, planned)} would leave out {LeftOut(concession)}, ")
        + FormattableString.Invariant($"but below {Infeasibility.LeastAvailability * 100:0} % of cases a link is none to plan with.");

    private static IEnumerable<string> Useless(IEnumerable<Concession> concessions, Decibels planned)
    {
        string[] told = [.. concessions.Select(concession => ConcessionWords.Of(concession, planned))];
        if (told.Length > 0) yield return $"Giving in on these would help nobody: {string.Join("; ", told)}.";
    }
}
