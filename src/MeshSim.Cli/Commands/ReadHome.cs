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
    public static ReadHome From(string folder, Terminal terminal) => From([folder], terminal)[0];

    /// <summary>Reads several home folders; the notices also go to the error stream.</summary>
    /// <exception cref="InputException">Some of the folders have problems: all problems of all of them.</exception>
    public static ImmutableArray<ReadHome> From(ImmutableArray<string> folders, Terminal terminal)
    {
        if (folders.Contains("")) throw new InputException("error: HOME is empty; give the home folder");

        HomeReadResult[] results = [.. folders.Select(HomeFolder.Read)];
        string[] notices = [.. results.SelectMany(result => result.Notices).Select(notice => notice.ToString()).Distinct(StringComparer.Ordinal)];
        foreach (string notice in notices) terminal.Error.Write($"{notice}\n");
        string[] problems = [.. results.SelectMany(result => result.Problems).Select(problem => problem.ToString()).Distinct(StringComparer.Ordinal)];
        return problems.Length > 0 ? throw new InputException(problems) : [.. results.Select(result => new ReadHome(result.Home!, result.Notices))];
    }
}
