using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The shape of <c>record</c>.</summary>
internal sealed class RecordCommand : Command, IHasExample
{
    /// <summary>Makes the shape.</summary>
    public RecordCommand()
        : base("record", "The device record: where each device is, what feeds it, how it comes out, and what drops then")
    {
        Study.AddTo(this);
        Options.Add(Out);
    }

    /// <summary>Home, network, state, model, JSON.</summary>
    public StudyArguments Study { get; } = new();

    /// <summary>A file for the table.</summary>
    public Option<string?> Out { get; } = new("--out")
    {
        Description = "Write the record to a CSV file too, one line a device, for the binder",
        HelpName = "FILE",
    };

    /// <inheritdoc/>
    public string Example => "meshsim record floorplans/quay-terrace --out record.csv";
}
