using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>routes</c>.</summary>
internal sealed class RoutesCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public RoutesCommand()
        : base("routes", "How each device reaches the coordinator, and how many ways it has")
    {
        Study.AddTo(this);
        Options.Add(Out);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim routes floorplans/quay-terrace --state bedtime";
}
