using System.CommandLine;

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
        Options.Add(Out);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>Pairs that do not hear each other too.</summary>
    public Option<bool> All { get; } = new("--all") { Description = "Pairs that do not hear each other too (JSON always has them)" };

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim links floorplans/quay-terrace --network plugs";
}
