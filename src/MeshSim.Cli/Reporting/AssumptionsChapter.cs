using System.Collections.Immutable;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Propagation;
using MeshSim.Radio;

namespace MeshSim.Cli.Reporting;

/// <summary>Parameters, radios, constructions and mountings that the figures rest on, with their sources.</summary>
internal static class AssumptionsChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content, HtmlTables tables) =>
        Html.List(Parameters(content))
        + tables.Write(Radios(content.Home), "Radios")
        + tables.Write(Constructions(content.Home), "Constructions of walls, openings, floors and objects")
        + tables.Write(Mountings(content.Home), "How devices are hidden")
        + (content.Notices.IsEmpty ? "" : Html.Heading("Remarks on the home folder") + Html.List(content.Notices));

    private static IEnumerable<string> Parameters(ReportContent content)
    {
        PlanningParameters parameters = content.Home.Parameters;
        yield return $"A link is planned with when it holds in {Figures.Percent(parameters.Availability)} % of cases, with a scatter of "
            + $"{parameters.Shadowing} (one standard deviation) around the computed level.";
        if (parameters.Fading != Fading.None)
            yield return $"Small-scale fading is allowed for: {parameters.Fading}, on top of that scatter. The design margin is {parameters.DesignMargin}.";
        foreach (Network network in content.Home.Networks.Where(network => network.Fit is not null))
        {
            PlanningParameters fitted = content.Home.ParametersOf(network);
            yield return $"Network {network.Name} is computed with what was learnt from its readings{CoverageWords.Fitted(network)}: "
                + $"exponent {Figures.Plain(fitted.Exponent)}, scatter {fitted.Shadowing}, design margin {fitted.DesignMargin}.";
        }

        yield return "Interference counts in a margin where it would spoil more than "
            + $"{Figures.Percent(Reception.ToleratedLoss)} % of frames at every attempt; what arrives at the first try counts all of it.";
        yield return $"Path-loss model {ModelNames.Of(content.Options.Model)}{ModelRemark(content)}.";
        yield return $"Maps: a point every {Figures.Plain(content.Options.GridStepMetres)} m "
            + $"at {Figures.Plain(content.Options.ProbeHeightMetres)} m above the floor.";
        yield return "Reflections, furniture, people and other transmitters are not drawn; the scatter stands for them. "
            + "A real house can differ by 10 dB and more on a single link.";
    }

    private static string ModelRemark(ReportContent content) => content.Options.Model switch
    {
        ModelName.Detour =>
            $", exponent {Figures.Plain(content.Home.Parameters.Exponent)}; each wall, opening, object and floor on the straight line is counted by itself, "
            + $"and all but the floors together cost no more than a way round of {content.Home.Parameters.Detour}",
        ModelName.LogDistance =>
            $", exponent {Figures.Plain(content.Home.Parameters.Exponent)}; each wall, opening, object and floor on the straight line is counted by itself",
        _ => ", for comparison; the recommendations of this program are meant for the default model",
    };

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
        [
            .. from name in Used(home.FloorPlan)
               let construction = home.Constructions[name]
               select ImmutableArray.Create(name.Value, LossesTable.BuildUp(construction), construction.Source),
        ]);

    private static Table Mountings(Home home) => new(
        [new("Mounting"), new("Description"), new("Devices", true), new("Source")],
        [
            .. from hidden in home.Devices.GroupBy(device => device.Mounting.Name).OrderBy(sameName => sameName.Key, StringComparer.Ordinal)
               let mounting = hidden.First().Mounting
               select ImmutableArray.Create(mounting.Name, mounting.Description, Figures.Count(hidden.Count()), mounting.Source),
        ]);

    private static IEnumerable<ConstructionName> Used(FloorPlan plan) => plan.Storeys
        .SelectMany(storey => storey.Walls.Select(wall => wall.Construction)
            .Concat(storey.Walls.SelectMany(wall => wall.Openings).Select(opening => opening.Construction))
            .Concat(storey.Objects.Select(blocking => blocking.Construction))
            .Concat(storey.Floor is { } floor ? [floor.Construction] : []))
        .Distinct()
        .OrderBy(name => name.Value, StringComparer.Ordinal);
}
