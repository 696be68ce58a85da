using System.CommandLine;
using MeshSim.Cli.Parsing;
using MeshSim.Placement;

namespace MeshSim.Cli.Commands;

/// <summary>What a placement is to achieve.</summary>
internal sealed class GoalArguments
{
    /// <summary>How many ways each device gets.</summary>
    public Option<long> Ways { get; } = new("--ways")
    {
        Description = "2: every device keeps a way when any one router or repeater is off; 1: every device has a way",
        HelpName = "COUNT",
        CustomParser = StrictNumber.Whole(PlacementGoals.WaysRange),
        DefaultValueFactory = _ => PlacementGoals.Default.Ways,
    };

    /// <summary>Whether the states that must hold are left out.</summary>
    public Option<bool> Everyday { get; } = new("--everyday")
    {
        Description = "Leave the states that must hold out of account: everyday alone",
    };

    /// <summary>The goals of a command line.</summary>
    public PlacementGoals Of(ParseResult parsed) => new() { Ways = (int)parsed.GetValue(Ways), HoldStates = !parsed.GetValue(Everyday) };
}
