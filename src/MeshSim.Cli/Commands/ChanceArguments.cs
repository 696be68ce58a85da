using System.CommandLine;
using MeshSim.Cli.Parsing;
using MeshSim.Placement.Robustness;

namespace MeshSim.Cli.Commands;

/// <summary>How a recommendation is tried against chance.</summary>
internal sealed class ChanceArguments
{
    /// <summary>How often is drawn.</summary>
    public Option<long> Draws { get; } = new("--draws")
    {
        Description = "How often to draw shadowing and losses to see whether the recommendation holds; 0 leaves chance out",
        HelpName = "COUNT",
        CustomParser = StrictNumber.Whole(RehearseCommand.DrawsRange),
        DefaultValueFactory = _ => new RobustnessOptions().Draws,
    };

    /// <summary>Chooses the random numbers.</summary>
    public Option<long> Seed { get; } = new("--seed")
    {
        Description = "Chooses the random numbers of the draws",
        HelpName = "NUMBER",
        CustomParser = StrictNumber.Whole(RehearseCommand.SeedRange),
        DefaultValueFactory = _ => (long)new RobustnessOptions().Seed,
    };

    /// <summary>What a command line asks for.</summary>
    public RobustnessOptions Of(ParseResult parsed) => new() { Draws = (int)parsed.GetValue(Draws), Seed = (ulong)parsed.GetValue(Seed) };
}
