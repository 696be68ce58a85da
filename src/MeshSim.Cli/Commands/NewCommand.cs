using System.CommandLine;
using MeshSim.Files;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>new</c>.</summary>
internal sealed class NewCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public NewCommand()
        : base("new", "A home folder to start with, commented and in order: change its measures to yours")
    {
        Arguments.Add(Folder);
        Options.Add(Like);
        Like.AcceptOnlyFromAmong([.. HomeTemplates.Names]);
        Options.Add(Json);
    }

    /// <summary>The folder.</summary>
    public Argument<string> Folder { get; } = new("folder") { Description = "The folder to make; it must not hold anything yet", HelpName = "FOLDER" };

    /// <summary>The shape of the building.</summary>
    public Option<string> Like { get; } = new("--like")
    {
        Description = $"What your home is most like: {string.Join(", ", HomeTemplates.Names)}",
        HelpName = "SHAPE",
        DefaultValueFactory = _ => HomeTemplates.Default,
    };

    /// <summary>JSON instead of text.</summary>
    public Option<bool> Json { get; } = SharedArguments.Json();

    /// <inheritdoc/>
    public string Example => "meshsim new my-home --like terrace";
}
