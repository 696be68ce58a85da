using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>repeaters</c>.</summary>
internal sealed class RepeatersCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public RepeatersCommand()
        : base("repeaters", "The fewest mains repeaters with which every device has a reliable way, and where to plug them in")
    {
        Study.AddTo(this);
        Options.Add(Out);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim repeaters floorplans/quay-terrace --network plugs --json";
}
