using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>explain</c>.</summary>
internal sealed class ExplainCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public ExplainCommand()
        : base("explain", "Why a device or a room drops out, what each thing on the way costs, and what would help")
    {
        Study.AddTo(this);
        Arguments.Add(Name);
        Grid.AddTo(this);
        Options.Add(Out);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>The device or the room.</summary>
    public new Argument<string> Name { get; } = new("name")
    {
        Description = "A device's id or a room's name; a room is explained for one network, the home's first unless --network names another",
        HelpName = "ROOM|DEVICE",
    };

    /// <summary>Step and height.</summary>
    public GridArguments Grid { get; } = new();

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim explain floorplans/quay-terrace loft-climate";
}
