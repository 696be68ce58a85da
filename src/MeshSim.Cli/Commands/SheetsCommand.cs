using System.CommandLine;
using MeshSim.Cli.Outputs;
using MeshSim.Drawing;
using MeshSim.Drawing.PlanSheets;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>sheets</c>.</summary>
internal sealed class SheetsCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public SheetsCommand()
        : base("sheets", "Plan sheets to scale as PDF: devices with numbers, circuits and routes, a key and a title block")
    {
        Study.AddTo(this);
        foreach (Option option in new Option[] { Out, Scale, Paper }) Options.Add(option);
        Out.Validators.Add(result =>
        {
            if (result.Tokens is [var place] && PlanFile.FormatOf(place.Value) is PictureFormat.Png or PictureFormat.Svg)
                result.AddError($"--out: sheets are PDF, which \"{place.Value}\" is not; name a file that ends in .pdf, or a folder");
        });
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>A file for all sheets, or a folder for one file a storey.</summary>
    public Option<string> Out { get; } = new("--out")
    {
        Description = "A file that ends in .pdf for all sheets, or a folder for one file a storey",
        HelpName = "FILE.pdf|FOLDER",
        Required = true,
    };

    /// <summary>What a length is divided by.</summary>
    public Option<string?> Scale { get; } = MakeChoice(
        "--scale", "1:50 or 1:100; without it, the largest at which a storey fits on one sheet", "50|100", [.. SheetOptions.Scales.Select(scale => FormattableString.Invariant($"{scale}"))]);

    /// <summary>The paper.</summary>
    public Option<string?> Paper { get; } = MakeChoice(
        "--paper", "A3 or A4; without it, the smallest on which the largest scale fits", "A3|A4", [.. Enum.GetNames<PaperFormat>()]);

    /// <inheritdoc/>
    public string Example => "meshsim sheets floorplans/quay-terrace --out sheets.pdf";

    /// <summary>Scale and paper as the command line has them.</summary>
    public SheetOptions OptionsOf(ParseResult parsed) => new()
    {
        Scale = parsed.GetValue(Scale) is { } scale ? SheetOptions.Scales.First(known => FormattableString.Invariant($"{known}") == scale) : null,
        Paper = parsed.GetValue(Paper) is { } paper ? Enum.Parse<PaperFormat>(paper) : null,
    };

    private static Option<string?> MakeChoice(string name, string description, string helpName, string[] words)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = helpName };
        option.AcceptOnlyFromAmong(words);
        return option;
    }
}
