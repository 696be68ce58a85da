using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>compare</c>.</summary>
internal sealed class CompareCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public CompareCommand()
        : base("compare", "Two home folders side by side: what was changed, and what that made better or worse")
    {
        Arguments.Add(Before);
        Arguments.Add(After);
        foreach (Option option in new Option[] { Study.Network, Study.Model, Study.Json }) Options.Add(option);
        Grid.AddTo(this);
        Options.Add(Out);
        Picture.AddTo(this);
    }

    /// <summary>The home before.</summary>
    public Argument<string> Before { get; } = new("before") { Description = "The home folder as it was", HelpName = "BEFORE" };

    /// <summary>The home after.</summary>
    public Argument<string> After { get; } = new("after") { Description = "The home folder as it is, or might be", HelpName = "AFTER" };

    /// <summary>Network, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>Step and height.</summary>
    public GridArguments Grid { get; } = new();

    /// <summary>A folder for the pictures.</summary>
    public Option<string?> Out { get; } = new("--out")
    {
        Description = "Write a picture of the difference for each network and storey into a folder, replaced only when the new one is complete",
        HelpName = "FOLDER",
    };

    /// <summary>The kind of picture.</summary>
    public PictureArguments Picture { get; } = new();

    /// <inheritdoc/>
    public string Example => "meshsim compare floorplans/quay-terrace out/with-repeaters --network plugs --out out/change";
}
