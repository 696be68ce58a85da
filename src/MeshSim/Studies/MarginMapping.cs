using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Studies;

/// <summary>Where a battery device could be carried and still be heard.</summary>
internal static class MarginMapping
{
    /// <summary>
    /// The coordinator and the routers that are reached with at least one link to spare: who a battery device can speak to.
    /// In a star the coordinator alone.
    /// </summary>
    public static ImmutableArray<Device> RelaysOf(NetworkCoverage coverage)
    {
        Network network = coverage.Network;
        var reached = coverage.Devices
            .Where(reach => reach.Route is { } route && route.Hops < network.HopLimit)
            .Select(reach => reach.Device)
            .ToHashSet();
        bool isOn(Device device) => coverage.State is null || !coverage.State.TurnsOff(device);
        return
        [
            .. coverage.Home.DevicesOf(network).Where(device =>
                isOn(device)
                && (device.Id == network.Coordinator
                    || (network.Radio.Topology == Topology.Mesh && device.Role == Role.Router && reached.Contains(device.Id)))),
        ];
    }

    /// <summary>Margin of a battery device at every point of a grid, dB, to the best of those whom it could speak to.</summary>
    public static Field Over(NetworkCoverage coverage, FieldGrid grid)
    {
        Home home = coverage.Home;
        IPathLossModel model = home.ModelOf(coverage.Network, coverage.Model, coverage.State);
        return BestMargin(coverage, RelaysOf(coverage), model, grid);
    }

    /// <summary>
    /// Margin at every point of a grid, dB: worse direction between a device on the surface with the profile's power and a relay,
    /// best relay; negative infinity when there is no relay.
    /// </summary>
    public static Field BestMargin(NetworkCoverage coverage, ImmutableArray<Device> relays, IPathLossModel model, FieldGrid grid)
    {
        RadioProfile radio = coverage.Network.Radio;
        var budget = new LinkBudget(radio, coverage.Home.ParametersOf(coverage.Network).Shadowing);
        var surroundings = new Surroundings(coverage.Home, coverage.Network, model, budget);
        if (NeededLevels.At(surroundings, coverage.Home, model, grid) is { } needed)
            return BestAmongInterference(coverage, relays, model, surroundings, budget, needed);

        Server[] servers = [.. relays.Select(ServerAt)];
        return model is LogDistance walls
            ? walls.FieldsOver(grid).BestOf(servers, coverage.DesignMargin.Value, CancellationToken.None).Best
            : BestPathByPath(servers, model, grid);

        // The margin falls with the path loss decibel for decibel, so what is left without any is the level to start from.
        Server ServerAt(Device relay)
        {
            PowerLevel power = relay.TransmitPower ?? radio.TransmitPower, neededAtRelay = surroundings.At(relay).PlanningLevel;
            Decibels mounting = coverage.Network.LossOf(relay.Mounting);
            return new(coverage.Home.PositionOf(relay), budget.Margin(radio.TransmitPower, power, mounting, budget.RequiredLevel, neededAtRelay).Value);
        }
    }

    // Where interference counts, each point needs another level than its neighbour.
    private static Field BestAmongInterference(
        NetworkCoverage coverage, ImmutableArray<Device> relays, IPathLossModel model, Surroundings surroundings, LinkBudget budget, NeededLevels needed)
    {
        PowerLevel probePower = coverage.Network.Radio.TransmitPower;
        var best = new float[needed.Grid.Count];
        Array.Fill(best, float.NegativeInfinity);
        Func<Position, Field> lossFrom = NeededLevels.LossesOver(model, needed.Grid);
        foreach (Device relay in relays)
        {
            Decibels mounting = coverage.Network.LossOf(relay.Mounting);
            PowerLevel power = relay.TransmitPower ?? probePower, neededAtRelay = surroundings.At(relay).PlanningLevel;
            Field loss = lossFrom(coverage.Home.PositionOf(relay));
            for (int i = 0; i < best.Length; i++)
            {
                Decibels margin = budget.Margin(probePower, power, mounting + new Decibels(loss.Values[i]), needed.Levels[i], neededAtRelay);
                best[i] = Math.Max(best[i], (float)margin.Value);
            }
        }

        return new Field(needed.Grid, best);
    }

    // The models for comparison have no walls whose shadows could be cast, or by category only.
    private static Field BestPathByPath(Server[] servers, IPathLossModel model, FieldGrid grid)
    {
        var best = new float[grid.Count];
        Array.Fill(best, float.NegativeInfinity);
        foreach (Server server in servers)
        {
            Field loss = FieldTracer.PathLoss(model, server.Position, grid, CancellationToken.None);
            for (int i = 0; i < best.Length; i++)
                best[i] = Math.Max(best[i], (float)(server.Level - loss.Values[i]));
        }

        return new Field(grid, best);
    }

    /// <summary>Share of a room's grid points below a margin, 0 to 1; not-a-number when no point of the grid lies in the room.</summary>
    public static double DarkShare(Room room, Field margin, Decibels designMargin)
    {
        int inside = 0, dark = 0;
        for (int row = 0; row < margin.Grid.Rows; row++)
        {
            for (int column = 0; column < margin.Grid.Columns; column++)
            {
                if (!room.Outline.Contains(margin.Grid.At(column, row).Plan)) continue;
                inside++;
                if (margin[column, row] < designMargin.Value) dark++;
            }
        }

        return dark / (double)inside;
    }
}
