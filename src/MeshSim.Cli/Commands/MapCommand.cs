using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>map</c>.</summary>
internal sealed class MapCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public MapCommand()
        : base("map", "Where the house is dark: a share for each room, and pictures")
    {
        Study.AddTo(this);
        Options.Add(Storey);
        Grid.AddTo(this);
        Options.Add(Out);
        Picture.AddTo(this);
        Options.Add(OneSheet);
        Options.Add(Values);
        Validators.Add(result =>
        {
            if (result.GetValue(OneSheet) && result.GetResult(Out) is null) result.AddError("--one-sheet needs --out, the folder for the pictures");
            if (result.GetValue(Values) && result.GetResult(Out) is null) result.AddError("--values needs --out, the folder for the values");
        });
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>One storey alone.</summary>
    public Option<string?> Storey { get; } = new("--storey")
    {
        Description = "One storey alone; without it, all",
        HelpName = "NAME",
    };

    /// <summary>Step and height.</summary>
    public GridArguments Grid { get; } = new();

    /// <summary>A folder for the pictures.</summary>
    public Option<string?> Out { get; } = new("--out")
    {
        Description = "Write one picture per network and storey into a folder, replaced only when the new one is complete",
        HelpName = "FOLDER",
    };

    /// <summary>The kind of picture.</summary>
    public PictureArguments Picture { get; } = new();

    /// <summary>All storeys of a network side by side.</summary>
    public Option<bool> OneSheet { get; } = new("--one-sheet")
    {
        Description = "With --out: the storeys of each network side by side on a sheet of A4's proportions, further sheets only where one would not be legible",
    };

    /// <summary>The grid too.</summary>
    public Option<bool> Values { get; } = new("--values") { Description = "With --out: the margin at every point too, as CSV (storey,x,y,valueDb)" };

    /// <inheritdoc/>
    public string Example => "meshsim map floorplans/quay-terrace --network plugs --storey loft --out out/maps --values";
}
