using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh.Outages;

namespace MeshSim.Mesh.Routers;

/// <summary>Which mains devices carry the mesh.</summary>
public static class RouterDuties
{
    /// <summary>
    /// The duty of each router and each mains device that is on, in the home's order. The coordinator is left out, and so are alarms:
    /// whether one may be switched off is not for a radio plan to say.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graphs">The network's graphs.</param>
    /// <param name="during">The state of the house; null when everything is on.</param>
    public static ImmutableArray<RouterDuty> Of(Home home, Network network, StateGraphs graphs, State? during)
    {
        MeshGraph graph = graphs.In(during);
        Route[] routes = [.. Routing.LeastEtx(graph).OfType<Route>()];
        ImmutableDictionary<DeviceId, ImmutableArray<DeviceId>> neededBy = Dependence.NeededBy(graph);
        var rehearsing = new Rehearsing(graphs, during);
        Rehearsal[] rehearsals = [.. OutageList.Of(home, network, during).Select(rehearsing.Of)];
        return
        [
            .. from device in home.DevicesOf(network)
               where (device.Power == PowerSource.Mains || device.Role == Role.Router) && !Alarms.Includes(device)
               let node = graph.Devices.IndexOf(device.Id)
               where node >= 0 && node != graph.Coordinator
               let needed = neededBy.GetValueOrDefault(device.Id, [])
               select new RouterDuty
               {
                   Device = device.Id,
                   Relays = graph.Relays(node),
                   IsReached = routes.Any(route => route.Path[0] == device.Id),
                   Carries = [.. routes.Where(route => route.Relays.Contains(device.Id)).Select(route => route.Path[0])],
                   NeededBy = needed,
                   LeavesOneWay = LeavesOneWay(device.Id, rehearsals),
                   TakenBy = [.. TakingPower(device, rehearsals).Select(rehearsal => rehearsal.Outage)],
                   MissedIn = [.. TakingPower(device, rehearsals).Where(r => r.Outage.Kind != OutageKind.Circuit && IsMissed(device.Id, needed, r, rehearsing)).Select(r => r.Outage)],
               },
        ];
    }

    private static ImmutableArray<DeviceId> LeavesOneWay(DeviceId device, Rehearsal[] rehearsals) =>
        rehearsals.FirstOrDefault(r => r.Outage.Kind == OutageKind.Router && r.Outage.Name == device.Value)?.LeftWithOneWay ?? [];

    private static IEnumerable<Rehearsal> TakingPower(Device device, Rehearsal[] rehearsals) =>
        rehearsals.Where(r => r.Outage.Kind is OutageKind.State or OutageKind.Switch or OutageKind.Circuit && r.Off.Contains(device.Id));

    private static bool IsMissed(DeviceId device, ImmutableArray<DeviceId> neededBy, Rehearsal rehearsal, Rehearsing rehearsing)
    {
        if (rehearsal.Dropped.IsEmpty) return false;
        return rehearsal.Dropped.Any(neededBy.Contains) || rehearsing.Of(rehearsal.Outage, [device]).Dropped.Length < rehearsal.Dropped.Length;
    }
}
