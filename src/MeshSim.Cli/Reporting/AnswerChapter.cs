using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>What to buy and where to put it, what fails although it works now, and what that leaves over.</summary>
internal static class AnswerChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content, HtmlTables tables) =>
        $"<div class=\"answer\">\n{Html.Heading("What to buy and where to put it")}{ToBuy(content)}"
        + $"{Html.Heading("What is at risk tonight")}{AtRisk(content)}"
        + $"{Html.Heading("What that leaves over")}{Unserved(content)}</div>\n"
        + tables.Write(Networks(content.Answers), "The networks of the home");

    private static string ZoneOf(NetworkAnswer answer, int index) =>
        index < answer.Review.Zones.Length ? $". {ZoneWords.Of(answer.Review.Zones[index])}" : "";

    private static string ToBuy(ReportContent content)
    {
        string[] places =
        [
            .. from answer in content.Answers
               from place in answer.Placement.Repeaters.Select((repeater, index) =>
                   $"{answer.Placement.Network}: into {RepeaterWords.Where(repeater.Outlet)}, {RepeaterWords.Purpose(repeater)}{ZoneOf(answer, index)}")
               select place,
        ];
        NetworkAnswer? mesh = content.Answers.FirstOrDefault(answer => answer.Coverage.Network.Radio.Topology == Topology.Mesh);
        string asked = mesh is null ? "" : Html.Paragraph($"{GoalWords.Asked(content.Options.Goals, mesh.Placement.StatesHeld)}.", "basis");
        string[] kept =
        [
            .. from answer in content.Answers
               from device in answer.Placement.KeptOn
               select $"{answer.Placement.Network}: {RepeaterWords.Where(device)}, for {string.Join("; for ", RepeaterWords.Served(device.ServesWhen))}",
        ];
        string keep = kept.Length == 0 ? "" : Html.Paragraph("Keep powered what the house turns off today:") + Html.List(kept);
        return asked + keep + (places.Length == 0
            ? Html.Paragraph("Nothing: no mains repeater is recommended.")
            : Html.Paragraph($"Buy {Figures.Counted(places.Length, "mains repeater")} for the network named, and plug in:") + Html.List(places));
    }

    private static string Unserved(ReportContent content)
    {
        string[] left = [.. content.Answers.SelectMany(Left)];
        bool adds = content.Answers.Any(answer => !answer.Placement.Repeaters.IsEmpty || !answer.Placement.KeptOn.IsEmpty);
        return left.Length == 0
            ? Html.Paragraph(adds ? "Nothing: with the above, every device has what is asked for." : "Nothing: every device has what is asked for as the home stands.")
            : Html.Paragraph("Not all that is asked can be had with one repeater to an outlet. Move the device, its coordinator or what stands between, or do as it says:") + Html.List(left);
    }

    private static string AtRisk(ReportContent content)
    {
        string[] risks = [.. content.Answers.SelectMany(answer => RiskWords.Of(answer).Select(risk => $"{answer.Placement.Network}: {risk}."))];
        return risks.Length == 0
            ? Html.Paragraph("Nothing that works now hangs on one device that somebody could switch off.")
            : Html.Paragraph("These work as the home stands, and fail when somebody switches off what they hang on:") + Html.List(risks);
    }

    private static IEnumerable<string> Left(NetworkAnswer answer)
    {
        (NetworkCoverage coverage, RepeaterPlacement placement) = (answer.Coverage, answer.Placement);
        IEnumerable<string> left = CoverageWords.IsCoordinatorOff(coverage) ? ServedWords.LeftInStates(coverage, placement)
            : coverage.Network.Radio.Topology == Topology.Star
                ? CoverageWords.Unreached(coverage).Select(reach => $"{reach.Device} {Shortfall.InWords(coverage, reach)}").Concat(ServedWords.LeftInStates(coverage, placement))
            : ServedWords.Left(coverage, placement);
        return left.Select(what => $"{placement.Network}: {what}");
    }

    private static Table Networks(ImmutableArray<NetworkAnswer> answers) => new(
        [new("Network"), new("Radio"), new("Coordinator"), new("Devices", true), new("With a reliable way", true), new("Repeaters to add", true)],
        [
            .. answers.Select(answer => ImmutableArray.Create(
                answer.Coverage.Network.Name.Value,
                $"{answer.Coverage.Network.Radio.Description}, {answer.Coverage.Network.Carrier}",
                answer.Coverage.Network.Coordinator.Value,
                Figures.Count(answer.Coverage.Devices.Length),
                Figures.Count(answer.Coverage.Devices.Count(reach => reach.IsReached)),
                Figures.Count(answer.Placement.Repeaters.Length))),
        ]);
}
