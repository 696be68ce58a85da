using System.CommandLine;
using System.CommandLine.Completions;
using MeshSim.Cli.Parsing;
using MeshSim.Files;
using MeshSim.Quantities;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>loss</c>.</summary>
internal sealed class LossCommand : Command, IHasExample
{
    /// <summary>Accepted carriers: ITU-R P.2040 has figures from 1 MHz up; beyond 100 GHz no home network works.</summary>
    public static readonly ValidRange FrequencyMegahertz = new(1, 100_000, "MHz");

    /// <summary>Accepted angles between path and surface normal: at 90 degrees nothing enters the wall at all.</summary>
    public static readonly ValidRange AngleDegrees = new(0, 89.9, "degrees");

    // The parser's own way to show several defaults joins them by bars, which nobody may type; so the descriptions name them.
    private static readonly double[] DefaultMegahertz = [433.92, 868.4, 2440];
    private static readonly double[] DefaultDegrees = [0, 30, 45, 60];

    /// <summary>Makes the shape.</summary>
    public LossCommand()
        : base("loss", "What a construction costs at each band and angle")
    {
        Arguments.Add(Construction);
        Construction.CompletionSources.Add(_ => Catalogues.Constructions.Select(known => new CompletionItem(known.Name.Value)));
        foreach (Option option in new Option[] { Layers, List, Frequency, Angle, Json, Out }) Options.Add(option);
    }

    /// <summary>A construction of the catalogue.</summary>
    public Argument<string?> Construction { get; } = new("name")
    {
        Description = "A construction of the catalogue",
        HelpName = "NAME",
        Arity = ArgumentArity.ZeroOrOne,
    };

    /// <summary>A build-up of one's own.</summary>
    public Option<string?> Layers { get; } = new("--layers")
    {
        Description = "A build-up of your own from face to face: material:millimetres, ... (a layer of air is material air)",
        HelpName = "LAYERS",
    };

    /// <summary>The catalogue.</summary>
    public Option<bool> List { get; } = new("--list") { Description = "List the constructions and materials of the catalogue" };

    /// <summary>Carriers.</summary>
    public Option<double[]> Frequency { get; } = new("--frequency")
    {
        Description = "Carriers, MHz [default: 433.92 868.4 2440]",
        HelpName = "MHZ",
        CustomParser = StrictNumber.Several(FrequencyMegahertz),
        AllowMultipleArgumentsPerToken = true,
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>Angles.</summary>
    public Option<double[]> Angle { get; } = new("--angle")
    {
        Description = "Angles between the path and straight through, degrees [default: 0 30 45 60]",
        HelpName = "DEGREES",
        CustomParser = StrictNumber.Several(AngleDegrees),
        AllowMultipleArgumentsPerToken = true,
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>JSON instead of text.</summary>
    public Option<bool> Json { get; } = SharedArguments.Json();

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <summary>The carriers asked for, or the default ones, MHz.</summary>
    public double[] FrequenciesOf(ParseResult parsed) => parsed.GetValue(Frequency) is { Length: > 0 } asked ? asked : DefaultMegahertz;

    /// <summary>The angles asked for, or the default ones, degrees.</summary>
    public double[] AnglesOf(ParseResult parsed) => parsed.GetValue(Angle) is { Length: > 0 } asked ? asked : DefaultDegrees;

    /// <inheritdoc/>
    public string Example => """
        meshsim loss cavity-brick
        meshsim loss --layers "plasterboard:12.5, air:100, plasterboard:12.5" --frequency 868.4 2440 --angle 0 60
        """;
}
