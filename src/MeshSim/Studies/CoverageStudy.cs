using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Studies;

/// <summary>Who reaches the coordinator of one network, through what, with what margin.</summary>
public sealed record NetworkCoverage
{
    /// <summary>The home.</summary>
    public required Home Home { get; init; }

    /// <summary>The network.</summary>
    public required Network Network { get; init; }

    /// <summary>The model that made the figures.</summary>
    public required ModelName Model { get; init; }

    /// <summary>The state of the house, or null.</summary>
    public State? State { get; init; }

    /// <summary>The margin that a link must have to count.</summary>
    public required Decibels DesignMargin { get; init; }

    /// <summary>Every pair of devices that are on, whatever their margin, in the order of the home's devices.</summary>
    public required ImmutableArray<Link> Links { get; init; }

    /// <summary>How each device that is on, the coordinator excepted, reaches the coordinator; in the home's order.</summary>
    public required ImmutableArray<DeviceReach> Devices { get; init; }
}

/// <summary>Where one storey is dark for one network.</summary>
public sealed record MarginMap
{
    /// <summary>The network.</summary>
    public required NetworkName Network { get; init; }

    /// <summary>The storey.</summary>
    public required StoreyName Storey { get; init; }

    /// <summary>
    /// Margin (dB) of a battery device carried around the storey, to the best of the coordinator and the routers that are
    /// reached with a link to spare in the hop limit; mounted on the surface, sending with the profile's power. Negative
    /// infinity everywhere when nobody can be spoken to.
    /// </summary>
    public required Field Margin { get; init; }

    /// <summary>The margin that counts as covered.</summary>
    public required Decibels DesignMargin { get; init; }

    /// <summary>
    /// Share of each room's floor below the design margin, 0 to 1, in the storey's order; not-a-number for a room between the
    /// points of the grid.
    /// </summary>
    public required ImmutableArray<(RoomName Room, double DarkShare)> Rooms { get; init; }
}

/// <summary>The main flow: from a home to who reaches whom, where it is dark, and where repeaters should go.</summary>
public static class CoverageStudy
{
    /// <summary>Links and routes of one network.</summary>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public static NetworkCoverage Run(Home home, Network network, StudyOptions options)
    {
        IPathLossModel model = ModelOf(home, network, options);
        ImmutableArray<Link> links = LinkTable.Compute(home, network, model, options.State);
        Decibels designMargin = FadingMargin.LogNormal(home.Parameters.Shadowing, home.Parameters.Availability);
        IEnumerable<Device> devices = home.DevicesOf(network).Where(device => options.State?.TurnsOff(device) != true);
        var graph = new MeshGraph(network, devices, links, designMargin);
        return new NetworkCoverage
        {
            Home = home,
            Network = network,
            Model = options.Model,
            State = options.State,
            DesignMargin = designMargin,
            Links = links,
            Devices = Routing.ReachOf(graph),
        };
    }

    /// <summary>Where one storey is dark, given the routes.</summary>
    /// <exception cref="ArgumentException">The home has no such storey, or it has neither rooms nor walls.</exception>
    public static MarginMap Map(NetworkCoverage coverage, StoreyName storey, StudyOptions options)
    {
        Home home = coverage.Home;
        IPathLossModel model = ModelOf(home, coverage.Network, options with { Model = coverage.Model, State = coverage.State });
        var grid = FieldGrid.Over(home.FloorPlan, storey, options.GridStepMetres, options.ProbeHeightMetres);
        Field margin = MarginMapping.BestMargin(coverage, MarginMapping.RelaysOf(coverage), model, grid);
        return new MarginMap
        {
            Network = coverage.Network.Name,
            Storey = storey,
            Margin = margin,
            DesignMargin = coverage.DesignMargin,
            Rooms = [.. home.FloorPlan.Storey(storey).Rooms.Select(room => (room.Name, MarginMapping.DarkShare(room, margin, coverage.DesignMargin)))],
        };
    }

    /// <summary>Where repeaters should go.</summary>
    public static RepeaterPlacement Repeaters(NetworkCoverage coverage, StudyOptions options) => throw new NotSupportedException();

    private static IPathLossModel ModelOf(Home home, Network network, StudyOptions options)
    {
        FloorPlan plan = home.FloorPlan.WithOpen(options.State?.Open ?? []);
        return PathLossModels.Create(options.Model, plan, home.Constructions, network.Carrier, home.Parameters.Exponent);
    }
}
