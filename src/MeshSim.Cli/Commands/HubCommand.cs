using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>hub</c>.</summary>
internal sealed class HubCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public HubCommand()
        : base("hub", "Where the coordinator should go: the best sites, what each costs, together and apart")
    {
        Study.AddWithoutNetworkTo(this);
        foreach (Option option in new Option[] { Networks, Rooms, Goals.Ways, Goals.Everyday, Chance.Draws, Chance.Seed, Maps, Apply.Apply, Out }) Options.Add(option);
        Picture.AddTo(this);
    }

    /// <summary>Home, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>The networks whose sticks are in the hub box.</summary>
    public Option<string[]> Networks { get; } = new("--network")
    {
        Description = "A network whose coordinator is in the hub box, once for each; without it, all of the home",
        HelpName = "NAME",
    };

    /// <summary>Where the hub may go.</summary>
    public Option<string[]> Rooms { get; } = new("--room")
    {
        Description = "A room in whose outlets the hub may go, once for each; without it, any",
        HelpName = "NAME",
    };

    /// <summary>Ways and states.</summary>
    public GoalArguments Goals { get; } = new();

    /// <summary>Draws of chance.</summary>
    public ChanceArguments Chance { get; } = new();

    /// <summary>A folder for pictures.</summary>
    public Option<string?> Maps { get; } = SharedArguments.MapsFolder("One picture per storey with the ranked sites numbered and the zone of the best");

    /// <summary>The kind of picture.</summary>
    public PictureArguments Picture { get; } = new("--maps");

    /// <summary>A folder for the changed home.</summary>
    public ApplyArgument Apply { get; } = new();

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim hub floorplans/quay-terrace --network plugs --network lighting";
}
