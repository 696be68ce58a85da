using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Files;
using MeshSim.Files.Diagnostics;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>loss</c>.</summary>
internal static class LossWork
{
    /// <summary>Computes and writes what a construction costs, or lists the catalogue.</summary>
    public static ExitCode Run(LossCommand shape, ParseResult parsed, Terminal terminal)
    {
        bool[] asked = [parsed.GetValue(shape.Construction) is not null, parsed.GetValue(shape.Layers) is not null, parsed.GetValue(shape.List)];
        if (asked.Count(isAsked => isAsked) != 1) throw new InputException("error: give one of NAME, --layers or --list; see meshsim loss --help");

        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        bool json = parsed.GetValue(shape.Json);
        string result = parsed.GetValue(shape.List) ? Catalogue(json, terminal.Width) : Losses(shape, parsed, json, terminal.Width);
        Result.Write(terminal, file, result);
        return ExitCode.Done;
    }

    private static string Losses(LossCommand shape, ParseResult parsed, bool json, int width)
    {
        Construction construction = parsed.GetValue(shape.Layers) is { } layers
            ? OwnBuildUp(layers)
            : Find(parsed.GetRequiredValue(shape.Construction)!);
        var losses = LossesJson.Of(construction, shape.FrequenciesOf(parsed), shape.AnglesOf(parsed));
        return json
            ? JsonText.Of(losses)
            : TextTable.Paragraph(Answer(losses, construction), width) + "\n" + TextTable.Render(LossesTable.Of(losses), width);
    }

    private static string Catalogue(bool json, int width)
    {
        if (json) return JsonText.OfEach(Catalogues.Constructions.Select(CatalogueJson.Of));
        return TextTable.Render(LossesTable.Catalogue(Catalogues.Constructions), width)
            + "\n" + TextTable.Paragraph($"Materials for --layers: {string.Join(", ", Catalogues.MaterialNames)}.", width);
    }

    private static string Answer(LossesJson losses, Construction construction)
    {
        IEnumerable<string> straight = losses.Losses
            .GroupBy(loss => loss.FrequencyMegahertz)
            .Select(band => band.MinBy(loss => loss.AngleDegrees)!)
            .Select(loss => $"{Figures.Tenths(loss.PlanningLossDb)} dB at {Figures.Plain(loss.FrequencyMegahertz)} MHz");
        double angle = losses.Losses.Min(loss => loss.AngleDegrees);
        string way = angle == 0 ? "straight through" : $"at {Figures.Plain(angle)} degrees";
        return $"{losses.Construction} ({losses.Description}) costs, {way}: {string.Join("; ", straight)}. "
            + $"Build-up: {LossesTable.BuildUp(construction)}.";
    }

    private static Construction Find(string name) =>
        Catalogues.ConstructionsByName.GetValueOrDefault(new ConstructionName(name))
        ?? throw new InputException(
            $"error: {KnownNames.Quote(name)} is none of the catalogue's constructions; "
            + $"{KnownNames.Help(name, [.. Catalogues.Constructions.Select(c => c.Name.Value)], "constructions")} (meshsim loss --list shows all)");

    private static Construction OwnBuildUp(string text)
    {
        ParsedLayers parsed = LayerText.Parse(text, Catalogues.FindMaterial);
        if (!parsed.IsValid) throw new InputException([.. parsed.Problems.Select(Problem)]);
        return new()
        {
            Name = new("layers"),
            Description = "a build-up of your own",
            Use = ConstructionUse.Wall,
            Layers = parsed.Layers,
            Spread = Decibels.Zero,
            Source = "the command line",
        };
    }

    private static string Problem(LayerProblem problem)
    {
        string help = problem.Kind == LayerProblemKind.UnknownMaterial
            ? "; " + KnownNames.Help(problem.Text, Catalogues.MaterialNames, "materials")
            : "";
        return FormattableString.Invariant($"--layers({1 + problem.Start}): error: {problem.Message}{help}");
    }
}
