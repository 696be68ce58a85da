using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Mesh.Outages;

/// <summary>Plays outages through, one after the other, over the links computed once.</summary>
public sealed class Rehearsing
{
    private readonly StateGraphs _graphs;
    private readonly Lazy<MeshStanding> _untouched;
    private readonly Lazy<MeshStanding> _before;

    /// <summary>Prepares to compare.</summary>
    /// <param name="graphs">The network.</param>
    /// <param name="during">The state in which everything but the named states happens; null when everything is on.</param>
    public Rehearsing(StateGraphs graphs, State? during)
    {
        _graphs = graphs;
        _untouched = new(() => new MeshStanding(graphs.In(null)));
        _before = during is null ? _untouched : new(() => new MeshStanding(graphs.In(during)));
    }

    /// <summary>What an outage does. A named state is compared with everything on and every door closed.</summary>
    public Rehearsal Of(Outage outage) => Of(outage, []);

    /// <summary>What an outage does when some devices keep their power all the same.</summary>
    /// <param name="outage">The outage.</param>
    /// <param name="keptOn">Who keeps power.</param>
    public Rehearsal Of(Outage outage, ImmutableArray<DeviceId> keptOn)
    {
        MeshStanding before = (outage.Kind == OutageKind.State ? _untouched : _before).Value;
        MeshGraph graph = _graphs.In(outage.State, keptOn);
        var after = new MeshStanding(graph);
        HashSet<DeviceId> on = [.. graph.Devices];
        return new Rehearsal
        {
            Outage = outage,
            Off = [.. before.On.Where(device => !on.Contains(device))],
            Dropped = [.. after.Devices.Where(device => before.Reaches(device) && !after.Reaches(device))],
            LeftWithOneWay = [.. after.Devices.Where(device => after.HasOneWay(device) && before.Reaches(device) && !before.HasOneWay(device))],
            Gained = [.. after.Devices.Where(device => after.Reaches(device) && !before.Reaches(device))],
            Changed = [.. after.Devices.Select(device => Change(device, before.RouteOf(device), after.RouteOf(device))).OfType<RouteChange>()],
        };
    }

    private static RouteChange? Change(DeviceId device, Route? before, Route? after) =>
        before is null || after is null || (before.Etx == after.Etx && before.Path.SequenceEqual(after.Path)) ? null : new(device, before, after);
}
