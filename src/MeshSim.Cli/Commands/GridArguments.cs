using System.CommandLine;
using MeshSim.Cli.Parsing;
using MeshSim.FloorPlans;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>How a map is drawn.</summary>
internal sealed class GridArguments
{
    /// <summary>Accepted steps: a centimetre is finer than any wall is drawn, two metres is coarser than a room.</summary>
    public static readonly ValidRange StepMetres = new(0.01, 2, "m");

    /// <summary>Accepted heights above the floor.</summary>
    public static readonly ValidRange HeightMetres = new(0, 10, "m");

    /// <summary>Most points of one map: 100 MB of figures. A house at the default step has some ten thousand.</summary>
    public const long MostPoints = 25_000_000;

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

    /// <summary>Refuses a map that no machine would finish, before any work is done.</summary>
    /// <exception cref="InputException">The map of the storey would have more than <see cref="MostPoints"/>.</exception>
    public static void Refuse(FloorPlan plan, StoreyName storey, StudyOptions options)
    {
        var grid = FieldGrid.Over(plan, storey, options.GridStepMetres, options.ProbeHeightMetres);
        long points = (long)grid.Columns * grid.Rows;
        if (points > MostPoints)
            throw new InputException(FormattableString.Invariant(
                $"error: --step {options.GridStepMetres} makes {points} points on storey \"{storey}\"; at most {MostPoints}: give a larger step, or check the size of the plan"));
    }

    /// <summary>Adds them to a command.</summary>
    public void AddTo(Command command)
    {
        command.Options.Add(Step);
        command.Options.Add(Height);
    }
}
