using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Mesh.Outages;

namespace MeshSim.Dropouts;

/// <summary>What everyday life does to one device.</summary>
/// <param name="Drops">Outages in which it has power and no route; the loss of the coordinator and of what feeds it left out.</param>
/// <param name="Missed">Routers without power in one of those.</param>
public sealed record DeviceOutages(ImmutableArray<Outage> Drops, ImmutableArray<DeviceId> Missed)
{
    /// <summary>Plays every outage of a network through, for one device of it.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">The device's network.</param>
    /// <param name="graphs">The network's graphs.</param>
    /// <param name="during">The state in which the outages happen; null when everything is on.</param>
    /// <param name="device">The device.</param>
    public static DeviceOutages Of(Home home, Network network, StateGraphs graphs, State? during, DeviceId device)
    {
        ArgumentNullException.ThrowIfNull(graphs);
        var drops = ImmutableArray.CreateBuilder<Outage>();
        var missed = new SortedSet<DeviceId>();
        foreach (Outage outage in OutageList.Of(home, network, during).Where(outage => outage.Kind != OutageKind.Hub))
        {
            MeshGraph graph = graphs.In(outage.State);
            int node = graph.Devices.IndexOf(device);
            if (node < 0 || graph.Coordinator < 0 || HopCounts.Of(graph)[node] != HopCounts.Unreached) continue;
            drops.Add(outage);
            missed.UnionWith(home.DevicesOf(network).Where(other => other.Role == Role.Router && outage.State.TurnsOff(other)).Select(other => other.Id));
        }

        return new(drops.ToImmutable(), [.. missed]);
    }

    /// <summary>How many of the outages are states and manual switches: what happens every day, not once a year.</summary>
    public int Everyday => Drops.Count(outage => outage.Kind is OutageKind.State or OutageKind.Switch);
}
