using System.CommandLine;
using System.CommandLine.Parsing;
using MeshSim.Cli.Parsing;
using MeshSim.Files.Importing;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>import</c>.</summary>
internal sealed class ImportCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public ImportCommand()
        : base("import", "A home folder from a drawing: SVG of any vector editor, or GeoJSON")
    {
        Arguments.Add(Drawing);
        Option[] options = [Out, Mapping, Length, Scale, Unit, Snap, Curve, Faces, HomeName, Region, Json];
        foreach (Option option in options) Options.Add(option);
        Validators.Add(result =>
        {
            if (result.GetResult(Length) is not null && result.GetResult(Scale) is not null) result.AddError("--length and --scale say the same; give one of them");
        });
    }

    /// <summary>The drawing.</summary>
    public Argument<string> Drawing { get; } = new("drawing") { Description = "The drawing: a file that ends in .svg, .geojson or .json", HelpName = "DRAWING" };

    /// <summary>The folder.</summary>
    public Option<string> Out { get; } = new("--out")
    {
        Description = "The home folder to make; it must not hold anything yet",
        HelpName = "FOLDER",
        Required = true,
    };

    /// <summary>The mapping.</summary>
    public Option<string?> Mapping { get; } = new("--mapping")
    {
        Description = "What layers, classes and ids stand for (YAML); without it, layers are named for constructions",
        HelpName = "FILE",
    };

    /// <summary>A stated length.</summary>
    public Option<StatedLength?> Length { get; } = new("--length")
    {
        Description = "SVG: the true length of the line with an id, such as tape=3.20",
        HelpName = "ID=METRES",
        CustomParser = ReadLength,
    };

    /// <summary>A scale.</summary>
    public Option<double?> Scale { get; } = new("--scale")
    {
        Description = "SVG: how many times smaller than the building the page is, such as 50 for 1:50",
        HelpName = "NUMBER",
        CustomParser = result => StrictNumber.One(ImportOptions.AcceptedRatio)(result),
    };

    /// <summary>The unit of coordinates.</summary>
    public Option<string> Unit { get; } = Words("--unit", "GeoJSON: unit of the coordinates: m, dm, cm, mm, ft, in or degrees", "UNIT", "m", [.. ImportRequest.Units.Keys]);

    /// <summary>Tolerance of corners.</summary>
    public Option<double> Snap { get; } = new("--snap")
    {
        Description = "Ends of walls nearer to each other than this are moved to meet, m",
        HelpName = "METRES",
        CustomParser = StrictNumber.One(ImportOptions.AcceptedSnapMetres),
        DefaultValueFactory = _ => new ImportOptions().SnapMetres,
    };

    /// <summary>Tolerance of curves.</summary>
    public Option<double> Curve { get; } = new("--curve")
    {
        Description = "SVG: how far the corners that stand for a curve may leave it, m",
        HelpName = "METRES",
        CustomParser = StrictNumber.One(ImportOptions.AcceptedCurveMetres),
        DefaultValueFactory = _ => new ImportOptions().CurveMetres,
    };

    /// <summary>Walls as faces.</summary>
    public Option<bool> Faces { get; } = new("--faces") { Description = "Walls are drawn as their two faces, where the mapping does not say" };

    /// <summary>Name of the home.</summary>
    public Option<string?> HomeName { get; } = new("--name") { Description = "Name of the home; without it that of the mapping or the file", HelpName = "NAME" };

    /// <summary>Region of the home.</summary>
    public Option<string?> Region { get; } = new("--region") { Description = "Region of the home, such as EU; without it that of the mapping", HelpName = "REGION" };

    /// <summary>JSON instead of text.</summary>
    public Option<bool> Json { get; } = SharedArguments.Json();

    /// <inheritdoc/>
    public string Example => "meshsim import floorplans/drawings/fern-court.svg --length tape=4.00 --out out/fern-court";

    private static Option<string> Words(string name, string description, string help, string fallback, string[] words)
    {
        Option<string> option = new(name) { Description = description, HelpName = help, DefaultValueFactory = _ => fallback };
        option.AcceptOnlyFromAmong(words);
        return option;
    }

    private static StatedLength? ReadLength(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        int sign = text.LastIndexOf('=');
        if (sign < 1)
        {
            result.AddError($"--length: \"{text}\" has not the form id=metres, such as tape=3.20");
            return null;
        }

        if (StrictNumber.Read(text[(sign + 1)..], ImportOptions.AcceptedLengthMetres, out double metres) is { } problem) result.AddError($"--length: {problem}");
        return new(text[..sign], metres);
    }
}
