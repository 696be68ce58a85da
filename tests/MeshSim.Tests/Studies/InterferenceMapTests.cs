using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Studies;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Studies;

/// <summary>Maps, links and channels of a shipped home whose access point never stops.</summary>
public sealed class InterferenceMapTests
{
    /// <summary>The field takes angles in steps of 0.1 dB for each of a handful of walls, towards the access point and the relay alike.</summary>
    private const double AngleStepsDb = 1;

    private static readonly StudyOptions Coarse = new() { GridStepMetres = 0.5 };
    private static readonly Home Flat = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "harbour-flat")).Home!;
    private static readonly Home Loud = Flat with { AccessPoints = [.. Flat.AccessPoints.Select(point => point with { Busy = 0.9 })] };

    [Fact]
    public void An_access_point_that_counts_darkens_the_map_and_one_that_retries_absorb_does_not()
    {
        float[] quiet = Map(Flat with { AccessPoints = [] }), shipped = Map(Flat), loud = Map(Loud);
        shipped.Should().Equal(quiet);
        loud.Zip(quiet).Should().OnlyContain(pair => pair.First <= pair.Second).And.Contain(pair => pair.First < pair.Second - 3);
    }

    [Theory]
    [InlineData(ModelName.LogDistance, AngleStepsDb)]
    [InlineData(ModelName.Detour, AngleStepsDb)]
    [InlineData(ModelName.SiteGeneral, 1e-3)]
    public void A_point_of_the_map_has_the_margin_of_a_device_put_there(ModelName model, double allowedDb)
    {
        Network network = Loud.Networks[0];
        StudyOptions options = Coarse with { Model = model };
        NetworkCoverage coverage = CoverageStudy.Run(Loud, network, options);
        Field map = CoverageStudy.Map(coverage, Loud.FloorPlan.Storeys[0].Name, options).Margin;
        ImmutableArray<Device> relays = MarginMapping.RelaysOf(coverage);
        Room kitchen = Loud.FloorPlan.Storeys[0].Rooms.Single(room => room.Name.Value == "kitchen");
        foreach ((int column, int row) in Inside(map.Grid, kitchen))
        {
            Device probe = Probe(network, map.Grid.At(column, row).Plan);
            Home home = Loud with { Devices = [probe, .. relays] };
            double best = LinkTable.Compute(home, network, CoverageStudy.ModelOf(home, network, options), state: null)
                .Where(link => link.From == probe.Id)
                .Max(link => link.Margin.Value);
            ((double)map[column, row]).Should().BeApproximately(best, allowedDb);
        }
    }

    [Fact]
    public void The_channel_in_use_is_among_the_least_disturbed_of_the_shipped_flat()
    {
        NetworkCoverage coverage = CoverageStudy.Run(Flat, Flat.Networks[0], Coarse);
        NetworkAir air = AirStudy.Run(coverage);
        ChannelSurvey.Least(air.Channels).Select(channel => channel.Channel).Should().Contain(Flat.Networks[0].Channel);
        air.Duty.Should().BeNull();
        air.Polled.Should().Be(coverage.Devices.Length);
    }

    private static float[] Map(Home home) =>
        CoverageStudy.Map(CoverageStudy.Run(home, home.Networks[0], Coarse), home.FloorPlan.Storeys[0].Name, Coarse).Margin.Values;

    private static IEnumerable<(int Column, int Row)> Inside(FieldGrid grid, Room room) =>
        from row in Enumerable.Range(0, grid.Rows)
        from column in Enumerable.Range(0, grid.Columns)
        where room.Outline.Contains(grid.At(column, row).Plan)
        select (column, row);

    private static Device Probe(Network network, MeshSim.FloorPlans.Geometry.PlanPoint place) => Flat.Devices[0] with
    {
        Id = new("probe"),
        Network = network.Name,
        Role = Role.EndDevice,
        Point = place,
        HeightMetres = 1,
        Mounting = Catalogues.Mountings.Single(mounting => mounting.Name == "surface"),
        TransmitPower = null,
    };
}
