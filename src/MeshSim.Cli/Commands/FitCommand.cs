using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>fit</c>.</summary>
internal sealed class FitCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public FitCommand()
        : base("fit", "Is the plan true? Learns exponent, losses and offsets from readings, and names what they contradict")
    {
        Arguments.Add(Home);
        foreach (Option option in new Option[] { Network, Json, Write, Out }) Options.Add(option);
    }

    /// <summary>The home folder.</summary>
    public Argument<string> Home { get; } = SharedArguments.Home();

    /// <summary>One network alone.</summary>
    public Option<string?> Network { get; } = new("--network")
    {
        Description = "One network alone; without it, every one that has readings",
        HelpName = "NAME",
    };

    /// <summary>JSON instead of text.</summary>
    public Option<bool> Json { get; } = SharedArguments.Json();

    /// <summary>Whether to store what was learnt.</summary>
    public Option<bool> Write { get; } = new("--write")
    {
        Description = "Store what was learnt as fit.yaml in the home folder: every command then uses it, until you delete the file",
    };

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim fit floorplans/quay-terrace";
}
