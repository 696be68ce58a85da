using MeshSim.Placement.Concessions;
using MeshSim.Quantities;

namespace MeshSim.Cli.Wording;

/// <summary>What stands in the way of a placement, in sentences, and what giving in would change, in the words of a table cell.</summary>
internal static class ConcessionWords
{
    /// <summary>More obstacles are counted, not told: JSON has them all.</summary>
    private const int MostObstacles = 8;

    /// <summary>On what to give in, such as "2.0 dB less margin (4.4 dB, holds in 81.1 % of cases)".</summary>
    public static string Of(Concession concession, Decibels planned) => concession.Kind switch
    {
        ConcessionKind.OneWay => "one way instead of two",
        ConcessionKind.TwoAtAnOutlet => string.Join(" and ", TwoAtAnOutlet(concession)),
        ConcessionKind.WithoutState => $"{concession.State} need not hold",
        ConcessionKind.LessMargin or ConcessionKind.LeastMargin => Margin(concession, planned),
        ConcessionKind.MoreHops => $"one more hop ({Figures.Count(concession.HopLimit!.Value)}{(concession.IsBeyondRadio ? ": more than this radio allows" : "")})",
        ConcessionKind.OtherNetwork => concession.Moved.IsEmpty
            ? $"network {concession.Network} for them: serves none"
            : $"network {concession.Network} for {NameList.Short(concession.Moved)}",
        _ => throw new InvalidOperationException($"no such concession: {concession.Kind}"),
    };

    private static IEnumerable<string> TwoAtAnOutlet(Concession concession)
    {
        if (!concession.Doubled.IsEmpty) yield return $"two repeaters {(concession.Doubled.Length == 1 ? "" : "each ")}at {NameList.Short(concession.Doubled)}";
        if (!concession.Beside.IsEmpty)
            yield return $"one more repeater {(concession.Beside.Length == 1 ? "in the outlet of" : "each in the outlets of")} {NameList.Short(concession.Beside)}";
    }

    /// <summary>What stands in the way, a sentence each.</summary>
    public static IEnumerable<string> Obstacles(Infeasibility infeasibility)
    {
        int more = infeasibility.Obstacles.Length - MostObstacles;
        IEnumerable<string> told = infeasibility.Obstacles.Take(MostObstacles).Select(Of);
        return more > 0 ? told.Append($"{Figures.Counted(more, "more obstacle")}: --json has them all.") : told;
    }

    /// <summary>
    /// One obstacle, such as "shed-plug hangs on landing-bulb; nearest to a second way: router a – end device b, which lacks 3.5 dB (12 other links
    /// lack more)."
    /// </summary>
    public static string Of(Obstacle obstacle)
    {
        bool isOne = obstacle.Devices.Length == 1;
        string who = NameList.Short(obstacle.Devices), have = isOne ? "has" : "have";
        (string fact, string way) = obstacle.Case switch
        {
            { Lost: { } lost } => ($"{who} {(isOne ? "hangs" : "hang")} on {lost}", "a second way"),
            { State: { } state } => ($"{who} {have} no way in {state}", "one"),
            _ => ($"{who} {have} no way", "one"),
        };
        string hops = obstacle.Hops is { } count ? $"; the way there is takes {Figures.Counted(count, "hop")}" : "";
        return obstacle.Link is { } link
            ? $"{fact}; nearest to {way}: {link.From} – {link.To}, which lacks {Figures.Decibels(link.Shortfall)} dB{Others(obstacle)}{hops}."
            : $"{fact}; no level leads there{hops}.";
    }

    private static string Others(Obstacle obstacle) => obstacle.LinksThatWouldDo switch
    {
        <= 1 => " (no other link would do)",
        2 => " (1 other link lacks more)",
        _ => $" ({Figures.Count(obstacle.LinksThatWouldDo - 1)} other links lack more)",
    };

    private static string Margin(Concession concession, Decibels planned)
    {
        Decibels margin = concession.DesignMargin!.Value;
        string holds = concession.Availability is { } availability ? $", holds in {Figures.Percent(availability)} % of cases" : "";
        return $"{Figures.Decibels(planned - margin)} dB less margin ({Figures.Decibels(margin)} dB{holds})";
    }
}
