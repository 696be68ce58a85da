using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Propagation.Fields;

/// <summary>Field against tracer on the shipped homes: every device, every carrier, every storey, every point of the 5 cm grid.</summary>
public sealed class ShippedHomesFieldTests
{
    private const double StepMetres = 0.05, ProbeHeightMetres = 1;

    [Theory]
    [InlineData("quay-terrace")]
    [InlineData("harbour-flat")]
    public void Every_point_equals_the_tracer_within_half_a_step_a_crossing(string name)
    {
        Home home = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", name)).Home!;
        Position[] transmitters = [.. home.Devices.Select(home.PositionOf).Distinct()];
        long points = 0;
        foreach (Network network in home.Networks.DistinctBy(network => network.Carrier))
        {
            foreach (Storey storey in home.FloorPlan.Storeys)
            {
                var grid = FieldGrid.Over(home.FloorPlan, storey.Name, StepMetres, ProbeHeightMetres);
                points += FieldOracle.Check(home.FloorPlan, home.Constructions, network.Carrier, grid, transmitters);
                points += FieldOracle.Check(home.FloorPlan, home.Constructions, network.Carrier, grid, transmitters.Take(1), Detour.UsualDb);
            }
        }

        points.Should().BeGreaterThan(100_000);
    }
}
