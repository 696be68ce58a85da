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
        if (folder.Length == 0) throw new InputException("error: HOME is empty; give the home folder");

        HomeReadResult result = HomeFolder.Read(folder);
        foreach (Diagnostic notice in result.Notices) terminal.Error.Write($"{notice}\n");
        return result.Home is { } home
            ? new(home, result.Notices)
            : throw new InputException([.. result.Problems.Select(problem => problem.ToString())]);
    }
}
