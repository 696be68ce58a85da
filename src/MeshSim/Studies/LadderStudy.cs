using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Radio;

namespace MeshSim.Studies;

/// <summary>The ladder of one network: what each repeater buys, in devices, second ways and floor.</summary>
public static class LadderStudy
{
    /// <summary>Distance between the points at which the floor is asked, m: a step of a person who carries a device around.</summary>
    public const double FloorStepMetres = 0.5;

    /// <summary>Climbs the ladder; null when the coordinator has no power, and in a star, which has no repeaters.</summary>
    /// <param name="coverage">The network, with model and state.</param>
    /// <param name="most">The highest number of repeaters.</param>
    /// <param name="options">Height at which a device is carried around.</param>
    /// <param name="limit">The work to put into each proof.</param>
    public static RepeaterLadder? Run(NetworkCoverage coverage, int most, StudyOptions options, WorkLimit? limit = null)
    {
        ArgumentNullException.ThrowIfNull(coverage);
        if (coverage.Network.Radio.Topology == Topology.Star) return null;
        StateGraphs graphs = new(coverage.Home, coverage.Network, coverage.Model);
        if (graphs.In(coverage.State).Coordinator < 0) return null;
        RepeaterSurvey survey = RepeaterSurvey.Of(coverage.Home, coverage.Network, graphs, coverage.State, []);
        ImmutableArray<FloorPatch> floor = FloorOf(coverage, survey, options);
        return new()
        {
            Network = coverage.Network.Name,
            Outlets = survey.Outlets,
            Devices = survey.Situations[0].Devices.Count(),
            Points = floor.Sum(patch => patch.Points),
            Rungs = CoverageLadder.Climb(survey.Situations[0], floor, most, limit),
        };
    }

    /// <summary>The points of all storeys that have rooms, those together at which the same nodes are heard.</summary>
    private static ImmutableArray<FloorPatch> FloorOf(NetworkCoverage coverage, RepeaterSurvey survey, StudyOptions options)
    {
        IPathLossModel model = CoverageStudy.ModelOf(coverage.Home, coverage.Network, options with { Model = coverage.Model, State = coverage.State });
        Device[] relays = [.. survey.Devices, .. survey.Outlets.Select(outlet => RepeaterAt(coverage, outlet))];
        FloorPatches patches = new(relays.Length);
        foreach (Storey storey in coverage.Home.FloorPlan.Storeys.Where(storey => !storey.Rooms.IsEmpty))
        {
            var grid = FieldGrid.Over(coverage.Home.FloorPlan, storey.Name, FloorStepMetres, options.ProbeHeightMetres);
            Field?[] margins = [.. relays.Select((relay, node) => survey.Problem.CanRelay(node) ? MarginMapping.BestMargin(coverage, [relay], model, grid) : null)];
            patches.Add(storey, grid, margins, coverage.DesignMargin);
        }

        return patches.All();
    }

    private static Device RepeaterAt(NetworkCoverage coverage, Outlet outlet)
    {
        Device coordinator = coverage.Home.Devices.First(device => device.Id == coverage.Network.Coordinator);
        return HubSites.MovedTo(coverage.Home, coordinator, outlet) with { Id = new(outlet.Id.Value), TransmitPower = null, Role = Role.Router };
    }
}
