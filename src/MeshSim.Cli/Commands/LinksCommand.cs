using System.CommandLine;
using MeshSim.Cli.Parsing;
using MeshSim.Cli.Wording;
using MeshSim.Radio;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>links</c>.</summary>
internal sealed class LinksCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public LinksCommand()
        : base("links", "Who hears whom, with what margin, through what")
    {
        Study.AddTo(this);
        Options.Add(All);
        Options.Add(Poll);
        Options.Add(Out);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>Pairs that do not hear each other too.</summary>
    public Option<bool> All { get; } = new("--all") { Description = "Pairs that do not hear each other too (JSON always has them)" };

    /// <summary>How often the polling that is costed asks each device.</summary>
    public Option<double> Poll { get; } = new("--poll")
    {
        Description = "Where the band limits time on the air: what asking every device this often would cost, s",
        HelpName = "SECONDS",
        CustomParser = StrictNumber.One(DutyBudget.PollSeconds),
        DefaultValueFactory = _ => AirWords.UsualPollSeconds,
    };

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim links floorplans/quay-terrace --network plugs";
}
