using System.CommandLine;
using MeshSim.Cli.Outputs;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>check</c>.</summary>
internal sealed class CheckCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public CheckCommand()
        : base("check", "Is this home folder right? Every problem with its file, line and column, else what was read")
    {
        Arguments.Add(Home);
        Options.Add(Draw);
        Options.Add(Json);
        Draw.Validators.Add(result =>
        {
            if (result.Tokens is [var file] && PlanFile.FormatOf(file.Value) is null) result.AddError($"--draw: \"{file.Value}\" ends in none of {PlanFile.Endings}");
        });
    }

    /// <summary>The home folder.</summary>
    public Argument<string> Home { get; } = SharedArguments.Home();

    /// <summary>The plan as a picture.</summary>
    public Option<string?> Draw { get; } = new("--draw")
    {
        Description = "Draw the plan as it was read, each problem marked where it is: a file that ends in .png, .svg or .pdf",
        HelpName = "FILE",
    };

    /// <summary>JSON instead of text.</summary>
    public Option<bool> Json { get; } = SharedArguments.Json();

    /// <inheritdoc/>
    public string Example => "meshsim check floorplans/quay-terrace --draw out/quay-terrace-plan.png";
}
