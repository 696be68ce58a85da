using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>check</c>.</summary>
internal sealed class CheckCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public CheckCommand()
        : base("check", "Is this home folder right? Every problem with its file, line and column, else what was read")
    {
        Arguments.Add(Home);
        Options.Add(Json);
    }

    /// <summary>The home folder.</summary>
    public Argument<string> Home { get; } = SharedArguments.Home();

    /// <summary>JSON instead of text.</summary>
    public Option<bool> Json { get; } = SharedArguments.Json();

    /// <inheritdoc/>
    public string Example => "meshsim check floorplans/quay-terrace";
}
