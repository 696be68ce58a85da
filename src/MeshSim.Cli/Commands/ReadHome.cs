using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Cli.Commands;

/// <summary>A home as read from its folder.</summary>
/// <param name="Home">The home.</param>
/// <param name="Notices">What a person should know about the reading.</param>
internal sealed record ReadHome(Home Home, ImmutableArray<Diagnostic> Notices)
{
    /// <summary>Reads a home folder; the notices also go to the error stream.</summary>
    /// <exception cref="InputException">The folder has problems: all of them.</exception>
    public static ReadHome From(string folder, Terminal terminal)
    {
        HomeReading reading = HomeFolder.Read(folder);
        if (reading.Home is not { } home) throw new InputException([.. reading.Diagnostics.Select(d => d.ToString())]);
        foreach (Diagnostic notice in reading.Diagnostics) terminal.Error.Write($"{notice}\n");
        return new(home, reading.Diagnostics);
    }
}
