using System.CommandLine;
using MeshSim.Cli.Outputs;
using MeshSim.Devices;
using MeshSim.Files;

namespace MeshSim.Cli.Commands;

/// <summary>A folder for the home in which the recommendation was followed.</summary>
internal sealed class ApplyArgument
{
    /// <summary>The folder.</summary>
    public Option<string?> Apply { get; } = new("--apply")
    {
        Description = "Write the home with the recommendation followed into a new folder, to be run again and compared",
        HelpName = "FOLDER",
    };

    /// <summary>Refuses a folder that holds something, before any work is done.</summary>
    public void Refuse(ParseResult parsed)
    {
        if (parsed.GetValue(Apply) is { } folder) HomeTarget.Refuse(folder);
    }

    /// <summary>Writes the home where that was asked for, and says what to do with it.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="home">The home as it was given, which the words compare it with.</param>
    /// <param name="applied">The home in which the recommendation was followed.</param>
    /// <param name="terminal">Told on its error stream.</param>
    public void Write(ParseResult parsed, string home, Func<Home> applied, Terminal terminal)
    {
        if (parsed.GetValue(Apply) is not { } folder) return;
        terminal.Stopping.ThrowIfCancellationRequested();
        HomeTarget.Refuse(folder); // The work may have taken a while.
        Writing.To(folder, () => HomeWriter.Write(applied(), folder));
        terminal.Error.Write($"The home with this in place is in {folder}\nSee what it brings: meshsim compare {home} {folder}\n");
    }
}
