using MeshSim.Devices;
using MeshSim.Studies.Changes;

namespace MeshSim.Studies;

/// <summary>Two homes side by side: what somebody changed, and what came of it.</summary>
public static class CompareStudy
{
    private static readonly RehearsalOptions WithoutChance = new() { Draws = 0 };

    /// <summary>What somebody changed: devices, outlets, settings, the building.</summary>
    public static HomeChanges Changes(Home before, Home after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return HomeComparing.Of(before, after);
    }

    /// <summary>What came of it in one network: ways, outages, floors. Everything is on and every door closed, but for the outages.</summary>
    /// <param name="before">A home.</param>
    /// <param name="after">Another, or the same one changed.</param>
    /// <param name="network">A network of both.</param>
    /// <param name="options">Model, step and height; the state is not used.</param>
    /// <exception cref="ArgumentException">One of the homes has no such network.</exception>
    public static NetworkChanges Network(Home before, Home after, NetworkName network, StudyOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        StudyOptions everyday = options with { State = null };
        NetworkRehearsal was = Rehearse(before, network, everyday), becomes = Rehearse(after, network, everyday);
        return new()
        {
            Before = was,
            After = becomes,
            Devices = NetworkComparing.Devices(was.Coverage, becomes.Coverage),
            Outages = NetworkComparing.Outages(was, becomes),
            Rooms = NetworkComparing.Rooms(was.Coverage, becomes.Coverage, everyday),
            Maps = NetworkComparing.Maps(was.Coverage, becomes.Coverage, everyday),
        };
    }

    private static NetworkRehearsal Rehearse(Home home, NetworkName name, StudyOptions options)
    {
        Network network = home.Networks.FirstOrDefault(network => network.Name == name)
            ?? throw new ArgumentException($"the home \"{home.Name}\" has no network called \"{name}\"", nameof(name));
        return ResilienceStudy.Rehearse(home, network, options, WithoutChance);
    }
}
