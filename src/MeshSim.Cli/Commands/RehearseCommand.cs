using System.CommandLine;
using MeshSim.Cli.Parsing;
using MeshSim.Mesh.Reliability;
using MeshSim.Quantities;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>rehearse</c>.</summary>
internal sealed class RehearseCommand : Command, IHasExample
{
    /// <summary>Accepted numbers of draws; none leaves chance out.</summary>
    public static readonly ValidRange DrawsRange = new(0, ConnectionDraws.Draws.Max, ConnectionDraws.Draws.Unit);

    /// <summary>Accepted seeds: what a number with a decimal point holds exactly.</summary>
    public static readonly ValidRange SeedRange = new(0, 1L << 53, "(seed)");

    /// <summary>Makes the shape.</summary>
    public RehearseCommand()
        : base("rehearse", "What happens in each state, outage and switched-off lamp, and how likely each device is connected at all")
    {
        Study.AddTo(this);
        foreach (Option option in new Option[] { Pairs, Draws, Seed, Correlation, Out }) Options.Add(option);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>Pairs of routers too.</summary>
    public Option<bool> Pairs { get; } = new("--pairs") { Description = "Every pair of routers too; those are shown that drop more than one by one" };

    /// <summary>How often shadowing is drawn.</summary>
    public Option<long> Draws { get; } = new("--draws")
    {
        Description = "How often to draw the shadowing of all links; 0 leaves chance out",
        HelpName = "COUNT",
        CustomParser = StrictNumber.Whole(DrawsRange),
        DefaultValueFactory = _ => 100_000,
    };

    /// <summary>Chooses the random numbers.</summary>
    public Option<long> Seed { get; } = new("--seed")
    {
        Description = "Chooses the random numbers of the draws",
        HelpName = "NUMBER",
        CustomParser = StrictNumber.Whole(SeedRange),
        DefaultValueFactory = _ => 1,
    };

    /// <summary>How alike links that share an end are.</summary>
    public Option<double> Correlation { get; } = new("--correlation")
    {
        Description = "Correlation of the shadowing of two links that share an end, 0 to 0.5",
        HelpName = "RHO",
        CustomParser = StrictNumber.One(LinkShadowing.CorrelationRange),
        DefaultValueFactory = _ => LinkShadowing.DefaultCorrelation,
    };

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim rehearse floorplans/quay-terrace --network plugs --pairs";
}
