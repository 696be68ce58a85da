using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Studies;
using MeshSim.Tests.Mesh;

namespace MeshSim.Tests.Placement.Zones;

/// <summary>Homes with their recommendation, surveyed.</summary>
internal static class PlacedHomes
{
    /// <summary>A recommendation and its survey.</summary>
    public static (RepeaterPlacement Placement, SurveyedPlacement Surveyed) Of(Home home, PlacementGoals goals)
    {
        Network network = home.Networks[0];
        StudyOptions options = new() { Goals = goals };
        RepeaterPlacement placement = CoverageStudy.Repeaters(CoverageStudy.Run(home, network, options), options);
        return (placement, Surveyed(home, placement));
    }

    /// <summary>The survey of a recommendation.</summary>
    public static SurveyedPlacement Surveyed(Home home, RepeaterPlacement placement) => SurveyedPlacement.Of(
        home,
        home.Networks[0],
        new StateGraphs(home, home.Networks[0], new StudyOptions().Model),
        null,
        placement.Goals,
        [.. placement.Repeaters.Select(repeater => repeater.Outlet)],
        [.. placement.KeptOn.Select(kept => kept.Device)])!;

    /// <summary>End devices and outlets on a line from the coordinator in the open; the reach at the design margin lies near 130 m.</summary>
    public static Home Row(int hopLimit, double[] deviceMetres, double[] outletMetres)
    {
        Network network = MeshSamples.Network(hopLimit);
        return new()
        {
            Name = "row",
            Region = "EU",
            FloorPlan = new FloorPlan([new Storey { Name = new("ground"), ElevationMetres = 0, CeilingMetres = 3 }]),
            Constructions = ImmutableDictionary<ConstructionName, MeshSim.Materials.Construction>.Empty,
            Networks = [network with { Radio = network.Radio with { TransmitPower = new(-6) } }],
            Devices =
            [
                .. deviceMetres.Prepend(0).Select((xMetres, i) =>
                    MeshSamples.Device(i, i == 0 ? Role.Coordinator : Role.EndDevice) with { Point = PlanPoint.FromMetres(xMetres, 0) }),
            ],
            Outlets =
            [
                .. outletMetres.Select((xMetres, i) => new Outlet
                {
                    Id = new(FormattableString.Invariant($"o{i}")), Storey = new("ground"), Point = PlanPoint.FromMetres(xMetres, 0), HeightMetres = 1,
                }),
            ],
        };
    }
}
