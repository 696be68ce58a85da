using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.FloorPlans;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>What a command is to compute: the home as read, the networks chosen, the options.</summary>
internal sealed record StudyRequest(Home Home, ImmutableArray<Diagnostic> Notices, ImmutableArray<Network> Networks, StudyOptions Options)
{
    /// <summary>The home as its folder says, fitted values in place whatever the model.</summary>
    public required Home AsRead { get; init; }

    /// <summary>Reads the home folder and looks up what the command line names.</summary>
    /// <exception cref="InputException">The folder has problems, or a name is unknown.</exception>
    public static StudyRequest Read(StudyArguments shape, ParseResult parsed, Terminal terminal)
    {
        ReadHome read = ReadHome.From(parsed.GetRequiredValue(shape.Home), terminal);
        ModelName model = ModelWords.Parse(parsed.GetRequiredValue(shape.Model));
        Home home = FittedHome.For(read.Home, model, terminal);
        ImmutableArray<Network> networks = parsed.GetValue(shape.Network) is { } name
            ? [Find(home.Networks, network => network.Name.Value, name, "networks")]
            : home.Networks;
        State? state = parsed.GetValue(shape.State) is { } named ? Find(home.States, s => s.Name, named, "states") : null;
        return new(home, read.Notices, networks, new() { Model = model, State = state }) { AsRead = read.Home };
    }

    /// <summary>The same on a grid of the command line's step and height.</summary>
    public StudyRequest On(GridArguments grid, ParseResult parsed) =>
        this with
        {
            Options = Options with { GridStepMetres = parsed.GetValue(grid.Step), ProbeHeightMetres = parsed.GetValue(grid.Height) },
        };

    /// <summary>The storeys to draw maps of: one by name, else all.</summary>
    /// <exception cref="InputException">The name is unknown, or a map would have too many points.</exception>
    public ImmutableArray<Storey> Storeys(string? name)
    {
        ImmutableArray<Storey> chosen =
            name is null ? Home.FloorPlan.Storeys : [Find(Home.FloorPlan.Storeys, storey => storey.Name.Value, name, "storeys")];
        foreach (Storey storey in chosen) GridArguments.Refuse(Home.FloorPlan, storey.Name, Options);
        return chosen;
    }

    /// <summary>Links and routes of each network chosen.</summary>
    public ImmutableArray<NetworkCoverage> Cover() => [.. Networks.Select(network => CoverageStudy.Run(Home, network, Options))];

    /// <summary>The one of that name.</summary>
    /// <exception cref="InputException">There is none.</exception>
    public static T Find<T>(IReadOnlyCollection<T> all, Func<T, string> nameOf, string name, string what)
        where T : class =>
        all.FirstOrDefault(item => nameOf(item) == name)
        ?? throw new InputException(
            $"error: {KnownNames.Quote(name)} is none of the home's {what}; {KnownNames.Help(name, [.. all.Select(nameOf)], what)}");
}
