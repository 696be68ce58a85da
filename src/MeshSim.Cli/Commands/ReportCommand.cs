using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>report</c>.</summary>
internal sealed class ReportCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public ReportCommand()
        : base("report", "All of it on one page to read on a phone or on paper")
    {
        Study.AddTo(this);
        Grid.AddTo(this);
        Options.Add(Out);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>Step and height of the maps.</summary>
    public GridArguments Grid { get; } = new();

    /// <summary>The page or the folder.</summary>
    public Option<string> Out { get; } = new("--out")
    {
        Description = "The page to write, NAME.html, or a folder to make for the page with pictures and figures beside it; an earlier one is replaced only when the new one is complete",
        HelpName = "FOLDER|FILE.html",
        Required = true,
    };

    /// <inheritdoc/>
    public string Example => "meshsim report floorplans/quay-terrace --out out/quay-terrace";
}
