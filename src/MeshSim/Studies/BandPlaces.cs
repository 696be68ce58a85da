using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Mesh;

namespace MeshSim.Studies;

/// <summary>Devices of any network as they would stand in one of them.</summary>
internal sealed class BandPlaces(Home home, Network network, StudyOptions options)
{
    private readonly StateGraphs graphs = new(home, network, options.Model);

    /// <summary>How a device stands, or would stand.</summary>
    public BandStanding Of(Device device)
    {
        (MeshGraph graph, DeviceReach? reach) = Reach(device);
        if (reach is null) return new(null, null);
        Link? link = DeviceTrials.LinkOf(graph, reach);
        return new(reach.Route?.Hops, link is null ? null : Budgeting.Of(network, link, graph.DesignMargin));
    }

    /// <summary>The best link that a device put into the home would have to anybody whom it could speak to; null when there is nobody.</summary>
    public Budget? BestAt(Device device)
    {
        MeshGraph graph = GraphWith(device);
        int[] hops = HopCounts.Of(graph);
        Link? best = graph.Links
            .Where(link => link.From == device.Id || link.To == device.Id)
            .Where(link => graph.Devices.IndexOf(link.Other(device.Id)) is var node && graph.Relays(node) && hops[node] < network.HopLimit)
            .OrderByDescending(link => link.Margin).ThenBy(link => link.Other(device.Id))
            .FirstOrDefault();
        return best is null ? null : Budgeting.Of(network, best, graph.DesignMargin);
    }

    private (MeshGraph Graph, DeviceReach? Reach) Reach(Device device)
    {
        MeshGraph graph = GraphWith(device);
        return (graph, Routing.ReachOf(graph).FirstOrDefault(reach => reach.Device == device.Id));
    }

    private MeshGraph GraphWith(Device device)
    {
        Device joined = ChangeNetwork.Joined(device, network);
        ImmutableArray<Device> devices = [.. home.Devices.Where(other => other.Id != device.Id), joined];
        return graphs.After(home with { Devices = devices }, network).In(options.State);
    }
}
