using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Mesh.Outages;

/// <summary>Plays outages through, one after the other, over the links computed once.</summary>
public sealed class Rehearsing
{
    private readonly StateGraphs graphs;
    private readonly State? during;
    private readonly Lazy<MeshStanding> untouched;
    private readonly Lazy<MeshStanding> before;

    /// <summary>Prepares to compare.</summary>
    /// <param name="graphs">The network.</param>
    /// <param name="during">The state in which everything but the named states happens; null when everything is on.</param>
    public Rehearsing(StateGraphs graphs, State? during)
    {
        this.graphs = graphs;
        this.during = during;
        untouched = new(() => new MeshStanding(graphs.In(null)));
        before = during is null ? untouched : new(() => new MeshStanding(graphs.In(during)));
    }

    /// <summary>What an outage does. A named state is compared with everything on and every door closed.</summary>
    public Rehearsal Of(Outage outage) => Of(outage, []);

    /// <summary>What an outage does when some devices keep their power all the same.</summary>
    /// <param name="outage">The outage.</param>
    /// <param name="keptOn">Who keeps power.</param>
    public Rehearsal Of(Outage outage, ImmutableArray<DeviceId> keptOn)
    {
        State? state = outage.Kind == OutageKind.State ? null : during;
        MeshStanding standing = (state is null ? untouched : before).Value;
        Commands commandsBefore = graphs.CommandsIn(state), commandsAfter = graphs.CommandsIn(outage.State);
        MeshGraph graph = graphs.In(outage.State, keptOn);
        var after = new MeshStanding(graph);
        HashSet<DeviceId> on = [.. graph.Devices];
        return new Rehearsal
        {
            Outage = outage,
            Off = [.. standing.On.Where(device => !on.Contains(device))],
            Dropped = [.. after.Devices.Where(device => standing.Reaches(device) && !after.Reaches(device))],
            LeftWithOneWay = [.. after.Devices.Where(device => after.HasOneWay(device) && standing.Reaches(device) && !standing.HasOneWay(device))],
            Gained = [.. after.Devices.Where(device => after.Reaches(device) && !standing.Reaches(device))],
            Changed = [.. after.Devices.Select(Change).OfType<RouteChange>()],
        };

        RouteChange? Change(DeviceId device)
        {
            if (standing.RouteOf(device) is not { } way || after.RouteOf(device) is not { } now) return null;
            if (way.Etx == now.Etx && way.Path.SequenceEqual(now.Path)) return null;
            return new(device, way, now, commandsBefore.Along(way), commandsAfter.Along(now));
        }
    }
}
