using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>report</c>.</summary>
internal sealed class ReportCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public ReportCommand()
        : base("report", "All of it in one folder with a page to read on a phone or on paper")
    {
        Study.AddTo(this);
        Grid.AddTo(this);
        Options.Add(Out);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>Step and height of the maps.</summary>
    public GridArguments Grid { get; } = new();

    /// <summary>The folder.</summary>
    public Option<string> Out { get; } = new("--out")
    {
        Description = "The folder to make; an earlier report there is replaced only when the new one is complete",
        HelpName = "FOLDER",
        Required = true,
    };

    /// <inheritdoc/>
    public string Example => "meshsim report floorplans/quay-terrace --out out/quay-terrace";
}
