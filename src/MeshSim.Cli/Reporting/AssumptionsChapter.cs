using System.Collections.Immutable;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.FloorPlans;

namespace MeshSim.Cli.Reporting;

/// <summary>Parameters, radios, constructions and mountings that the figures rest on, with their sources.</summary>
internal static class AssumptionsChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content) =>
        Html.List(Parameters(content))
        + "<h3>Radios</h3>\n" + Html.Table(Radios(content.Home))
        + "<h3>Constructions</h3>\n" + Html.Table(Constructions(content.Home))
        + "<h3>How devices are hidden</h3>\n" + Html.Table(Mountings(content.Home))
        + (content.Notices.IsEmpty ? "" : "<h3>Remarks on the home folder</h3>\n" + Html.List(content.Notices));

    private static IEnumerable<string> Parameters(ReportContent content)
    {
        PlanningParameters parameters = content.Home.Parameters;
        yield return $"A link is planned with when it holds in {Figures.Percent(parameters.Availability)} % of cases, with a scatter of "
            + $"{parameters.Shadowing} (one standard deviation) around the computed level.";
        yield return $"Path-loss exponent {Figures.Plain(parameters.Exponent)}; each wall, opening, object and floor on the straight line is counted by itself.";
        yield return $"Maps: a point every {Figures.Plain(content.Options.GridStepMetres)} m at {Figures.Plain(content.Options.ProbeHeightMetres)} m above the floor.";
        yield return "Reflections, furniture, people and other transmitters are not drawn; the scatter stands for them. A real house can differ by 10 dB and more on a single link.";
    }

    private static Table Radios(Home home) => new(
        [new("Network"), new("Radio"), new("Sends dBm", true), new("Hears down to dBm", true), new("Most hops", true), new("Source")],
        [.. home.Networks.Select(network => ImmutableArray.Create(
            network.Name.Value,
            $"{network.Radio.Description}, {network.Carrier}",
            Figures.Dbm(network.Radio.TransmitPower),
            Figures.Dbm(network.Radio.Sensitivity),
            Figures.Count(network.HopLimit),
            network.Radio.Source))]);

    private static Table Constructions(Home home) => new(
        [new("Construction"), new("Build-up (mm) or stated loss"), new("Source")],
        [.. Used(home.FloorPlan).Select(name => home.Constructions[name]).Select(c => ImmutableArray.Create(c.Name.Value, LossesTable.BuildUp(c), c.Source))]);

    private static Table Mountings(Home home) => new(
        [new("Mounting"), new("Description"), new("Devices", true), new("Source")],
        [.. home.Devices.GroupBy(device => device.Mounting.Name).OrderBy(group => group.Key, StringComparer.Ordinal).Select(group => ImmutableArray.Create(
            group.Key, group.First().Mounting.Description, Figures.Count(group.Count()), group.First().Mounting.Source))]);

    private static IEnumerable<ConstructionName> Used(FloorPlan plan) => plan.Storeys
        .SelectMany(storey => storey.Walls.Select(wall => wall.Construction)
            .Concat(storey.Walls.SelectMany(wall => wall.Openings).Select(opening => opening.Construction))
            .Concat(storey.Objects.Select(blocking => blocking.Construction))
            .Concat(storey.Floor is { } floor ? [floor.Construction] : []))
        .Distinct()
        .OrderBy(name => name.Value, StringComparer.Ordinal);
}
