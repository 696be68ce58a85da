using MeshSim.Placement.Concessions;
using MeshSim.Quantities;

namespace MeshSim.Cli.Wording;

/// <summary>What stands in the way of a placement, and what giving in would change, in the words of a table cell.</summary>
internal static class ConcessionWords
{
    /// <summary>On what to give in, such as "2.0 dB less margin (4.4 dB, holds in 81.1 % of cases)".</summary>
    public static string Of(Concession concession, Decibels planned) => concession.Kind switch
    {
        ConcessionKind.OneWay => "one way instead of two",
        ConcessionKind.WithoutState => $"{concession.State} need not hold",
        ConcessionKind.LessMargin => Margin(concession, planned),
        ConcessionKind.LeastMargin => $"{Margin(concession, planned)}, the least that serves all",
        ConcessionKind.MoreHops => $"{Figures.Counted(concession.HopLimit!.Value, "hop")}, one more{(concession.IsBeyondRadio ? ": more than this radio allows" : "")}",
        ConcessionKind.OtherNetwork => concession.Moved.IsEmpty
            ? $"network {concession.Network} for them: serves none"
            : $"network {concession.Network} for {NameList.Short(concession.Moved)}, if there is such a device to buy",
        _ => throw new InvalidOperationException($"no such concession: {concession.Kind}"),
    };

    /// <summary>The link that is missing, such as "router a – end device b".</summary>
    public static string Link(Obstacle obstacle) => obstacle.Link is { } link ? $"{link.From} – {link.To}" : "none: no level leads there";

    /// <summary>How much else there is to choose from, such as "12 links would do", and the way that is too long.</summary>
    public static string Else(Obstacle obstacle)
    {
        string links = obstacle.LinksThatWouldDo switch
        {
            0 => "nothing would do",
            1 => "no other would do",
            _ => $"{Figures.Count(obstacle.LinksThatWouldDo - 1)} more that would do",
        };
        return obstacle.Hops is { } hops ? $"{links}; the way there is takes {Figures.Counted(hops, "hop")}" : links;
    }

    private static string Margin(Concession concession, Decibels planned)
    {
        Decibels margin = concession.DesignMargin!.Value;
        string holds = concession.Availability is { } availability ? $", holds in {Figures.Percent(availability)} % of cases" : "";
        return $"{Figures.Decibels(planned - margin)} dB less margin ({Figures.Decibels(margin)} dB{holds})";
    }
}
