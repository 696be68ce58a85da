using System.CommandLine;
using MeshSim.Cli.Parsing;
using MeshSim.Quantities;

namespace MeshSim.Cli.Commands;

/// <summary>How a map is drawn.</summary>
internal sealed class GridArguments
{
    /// <summary>Accepted steps: a centimetre is finer than any wall is drawn, two metres is coarser than a room.</summary>
    public static readonly ValidRange StepMetres = new(0.01, 2, "m");

    /// <summary>Accepted heights above the floor.</summary>
    public static readonly ValidRange HeightMetres = new(0, 10, "m");

    /// <summary>Distance between the points of a map.</summary>
    public Option<double> Step { get; } = new("--step")
    {
        Description = "Distance between the points of a map, m",
        HelpName = "METRES",
        CustomParser = StrictNumber.One(StepMetres),
        DefaultValueFactory = _ => 0.1,
    };

    /// <summary>Height of the map above the floor.</summary>
    public Option<double> Height { get; } = new("--height")
    {
        Description = "Height of a map above the floor, m",
        HelpName = "METRES",
        CustomParser = StrictNumber.One(HeightMetres),
        DefaultValueFactory = _ => 1,
    };

    /// <summary>Adds them to a command.</summary>
    public void AddTo(Command command)
    {
        command.Options.Add(Step);
        command.Options.Add(Height);
    }
}
