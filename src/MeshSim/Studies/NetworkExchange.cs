using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Placement.Concessions;

namespace MeshSim.Studies;

/// <summary>Tries devices that one network cannot serve in another one of the home, at the same place.</summary>
internal sealed class NetworkExchange
{
    private readonly Home home;
    private readonly Network from;
    private readonly Network to;
    private readonly StudyOptions options;

    /// <summary>Nothing is tried yet.</summary>
    /// <param name="home">The home.</param>
    /// <param name="from">The network that cannot serve them.</param>
    /// <param name="to">The other one.</param>
    /// <param name="options">Model, state, goals.</param>
    public NetworkExchange(Home home, Network from, Network to, StudyOptions options) => (this.home, this.from, this.to, this.options) = (home, from, to, options);

    /// <summary>What both networks come to when the other one takes those devices that it can serve.</summary>
    /// <param name="devices">The devices that cannot have what was asked.</param>
    public Concession Try(ImmutableArray<DeviceId> devices)
    {
        HashSet<DeviceId> coordinators = [.. home.Networks.Select(network => network.Coordinator)];
        ImmutableArray<DeviceId> tried = [.. devices.Where(device => !coordinators.Contains(device))];
        HubNetwork refused = In(With(tried), to);
        ImmutableArray<DeviceId> moved = [.. tried.Except(refused.Unserved)];
        Home changed = With(moved);
        HubNetwork before = In(home, to), after = In(changed, to), left = In(changed, from);
        return new()
        {
            Kind = ConcessionKind.OtherNetwork,
            Network = to.Name,
            Moved = moved,
            Unserved = [.. left.Unserved, .. after.Unserved.Except(before.Unserved)],
            Repeaters = left.Repeaters.Length + after.Repeaters.Length - before.Repeaters.Length,
            KeptOn = left.KeptOn.Length + after.KeptOn.Length - before.KeptOn.Length,
            Cost = left.Cost + after.Cost - before.Cost,
            IsProven = before.Cost == before.LowerBound && after.Cost == after.LowerBound && left.Cost == left.LowerBound,
        };
    }

    private Home With(ImmutableArray<DeviceId> moved) => moved.Aggregate(home, (changed, device) => new ChangeNetwork(device, to).On(changed));

    private HubNetwork In(Home changed, Network network)
    {
        Network same = changed.Networks.First(other => other.Name == network.Name);
        ImmutableArray<State> held = options.Goals.Held(changed, options.State);
        return new SiteNetwork(changed, same, new StateGraphs(changed, same, options.Model), options.State, held, [], options.Goals).Assess(null, new());
    }
}
