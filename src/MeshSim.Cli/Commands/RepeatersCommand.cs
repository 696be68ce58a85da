using System.CommandLine;
using MeshSim.Cli.Parsing;
using MeshSim.Quantities;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>repeaters</c>.</summary>
internal sealed class RepeatersCommand : Command, IHasExample
{
    private static readonly ValidRange LadderRange = new(0, 20, "(repeaters)");

    /// <summary>Makes the shape.</summary>
    public RepeatersCommand()
        : base("repeaters", "The fewest mains repeaters with which every device has two reliable ways, and where to plug them in")
    {
        Study.AddTo(this);
        foreach (Option option in new Option[] { Goals.Ways, Goals.Everyday, Ladder, Chance.Draws, Chance.Seed, Maps, Apply.Apply, Out }) Options.Add(option);
        Picture.AddTo(this);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>Ways and states.</summary>
    public GoalArguments Goals { get; } = new();

    /// <summary>How high the ladder goes.</summary>
    public Option<long?> Ladder { get; } = new("--ladder")
    {
        Description = "Also what each of the first COUNT repeaters buys: devices, second ways and floor",
        HelpName = "COUNT",
        CustomParser = result => StrictNumber.Whole(LadderRange)(result),
    };

    /// <summary>Draws of chance.</summary>
    public ChanceArguments Chance { get; } = new();

    /// <summary>A folder for pictures.</summary>
    public Option<string?> Maps { get; } = SharedArguments.MapsFolder("One picture per network and storey on which a repeater or a part of a zone lies");

    /// <summary>The kind of picture.</summary>
    public PictureArguments Picture { get; } = new("--maps");

    /// <summary>A folder for the changed home.</summary>
    public ApplyArgument Apply { get; } = new();

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim repeaters floorplans/quay-terrace --network plugs";
}
