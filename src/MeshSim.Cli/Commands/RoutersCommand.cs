using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>routers</c>.</summary>
internal sealed class RoutersCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public RoutersCommand()
        : base("routers", "Which mains devices carry the mesh and must stay powered, and which others would help if they routed")
    {
        Study.AddTo(this);
        Options.Add(Out);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>A file for the result.</summary>
    public Option<string?> Out { get; } = SharedArguments.OutFile();

    /// <inheritdoc/>
    public string Example => "meshsim routers floorplans/quay-terrace --network plugs";
}
