using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>bands</c>.</summary>
internal sealed class BandsCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public BandsCommand()
        : base("bands", "Two networks of different bands compared, room by room and device by device")
    {
        Study.AddWithoutNetworkTo(this);
        Options.Add(Between);
        Grid.AddTo(this);
        Options.Add(Out);
        Picture.AddTo(this);
    }

    /// <summary>Home, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>The two networks.</summary>
    public Option<string[]> Between { get; } = new("--between")
    {
        Description = "The two networks to compare; without it, the first mesh below 1 GHz and the first above",
        HelpName = "NETWORK",
        AllowMultipleArgumentsPerToken = true,
        Arity = new ArgumentArity(2, 2),
    };

    /// <summary>Step and height.</summary>
    public GridArguments Grid { get; } = new();

    /// <summary>A folder for the pictures.</summary>
    public Option<string?> Out { get; } = new("--out")
    {
        Description = "Write a picture of the difference on each storey into a folder, replaced only when the new one is complete",
        HelpName = "FOLDER",
    };

    /// <summary>The kind of picture.</summary>
    public PictureArguments Picture { get; } = new();

    /// <inheritdoc/>
    public string Example => "meshsim bands floorplans/quay-terrace --between lighting plugs --out out/bands";
}
