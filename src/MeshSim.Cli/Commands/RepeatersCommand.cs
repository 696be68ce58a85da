using System.CommandLine;
using MeshSim.Cli.Parsing;
using MeshSim.Placement;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>repeaters</c>.</summary>
internal sealed class RepeatersCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public RepeatersCommand()
        : base("repeaters", "The fewest mains repeaters with which every device has a reliable way, and where to plug them in")
    {
        Study.AddTo(this);
        foreach (Option option in new Option[] { Ways, HoldStates, Out }) Options.Add(option);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>How many ways each device gets.</summary>
    public Option<long> Ways { get; } = new("--ways")
    {
        Description = "2: every device keeps a way when any one router or repeater is off; 1: every device has a way",
        HelpName = "COUNT",
        CustomParser = StrictNumber.Whole(PlacementGoals.WaysRange),
        DefaultValueFactory = _ => PlacementGoals.OneWay.Ways,
    };

    /// <summary>Whether states that must hold count.</summary>
    public Option<bool> HoldStates { get; } = new("--hold-states")
    {
        Description = "Every device that has power keeps a way in each state that must hold",
    };

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim repeaters floorplans/quay-terrace --network plugs --ways 2 --hold-states";
}
