using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Mesh.Outages;

/// <summary>Plays outages through, one after the other, over the links computed once.</summary>
public sealed class Rehearsing
{
    private readonly StateGraphs _graphs;
    private readonly State? _during;
    private readonly Lazy<MeshStanding> _untouched;
    private readonly Lazy<MeshStanding> _before;

    /// <summary>Prepares to compare.</summary>
    /// <param name="graphs">The network.</param>
    /// <param name="during">The state in which everything but the named states happens; null when everything is on.</param>
    public Rehearsing(StateGraphs graphs, State? during)
    {
        _graphs = graphs;
        _during = during;
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
        State? during = outage.Kind == OutageKind.State ? null : _during;
        MeshStanding before = (during is null ? _untouched : _before).Value;
        Commands commandsBefore = _graphs.CommandsIn(during), commandsAfter = _graphs.CommandsIn(outage.State);
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
            Changed = [.. after.Devices.Select(Change).OfType<RouteChange>()],
        };

        RouteChange? Change(DeviceId device)
        {
            if (before.RouteOf(device) is not { } way || after.RouteOf(device) is not { } now) return null;
            if (way.Etx == now.Etx && way.Path.SequenceEqual(now.Path)) return null;
            return new(device, way, now, commandsBefore.Along(way), commandsAfter.Along(now));
        }
    }
}
