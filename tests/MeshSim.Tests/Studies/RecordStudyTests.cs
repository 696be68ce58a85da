using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Mesh;
using MeshSim.Studies;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Studies;

public sealed class RecordStudyTests
{
    private static readonly Home Terrace = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;
    private static readonly Network Plugs = Terrace.Networks[0];
    private static readonly ImmutableArray<DeviceRecord> Records = RecordStudy.Run(Terrace, Plugs, new());

    [Fact]
    public void Every_device_of_the_network_is_on_record_in_the_homes_order() =>
        Records.Select(record => record.Device).Should().Equal(Terrace.DevicesOf(Plugs));

    [Fact]
    public void Ways_are_those_of_the_coverage()
    {
        foreach (DeviceReach reach in CoverageStudy.Run(Terrace, Plugs, new()).Devices)
        {
            DeviceRecord record = Records.Single(one => one.Device.Id == reach.Device);
            (record.Parent.HasValue, record.Reach!.SecondRoute is null).Should().Be((reach.IsReached, reach.SecondRoute is null));
            if (reach.Route is { } route) record.Parent.Should().Be(route.Path[1]);
        }
    }

    [Fact]
    public void What_drops_with_a_device_or_its_circuit_is_what_the_house_without_it_leaves_without_a_way()
    {
        ImmutableArray<DeviceReach> before = CoverageStudy.Run(Terrace, Plugs, new()).Devices;
        foreach (DeviceRecord record in Records.Where(one => one.Device.Role == Role.Router))
        {
            record.Drops.Should().BeEquivalentTo(DroppedBy(before, new() { Name = "off", DevicesOff = [record.Device.Id] }), "{0} is off", record.Device.Id);
            if (record.Device.Circuit is { } circuit)
                record.DropsWithCircuit.Should().BeEquivalentTo(DroppedBy(before, new() { Name = "off", CircuitsOff = [circuit] }), "{0} is off", circuit);
        }

        Records.Should().Contain(record => !record.Drops.IsEmpty && record.Device.Role == Role.Router);
    }

    [Fact]
    public void The_same_circuit_is_the_homes_over_all_networks() =>
        Records.Single(record => record.Device.Id == Plugs.Coordinator).OnSameCircuit.Select(id => id.Value)
            .Should().Equal("stick-868", "receiver-868", "receiver-433");

    [Fact]
    public void Where_a_circuit_is_isolated_comes_from_the_home_and_from_nowhere_else()
    {
        Home home = Terrace with { Circuits = [new("kitchen", "way 3")] };
        foreach (DeviceRecord record in RecordStudy.Run(home, Plugs, new()))
            record.IsolatedAt.Should().Be(record.Device.Circuit == "kitchen" ? "way 3" : null);
    }

    [Fact]
    public void A_device_that_the_state_turns_off_has_no_way_and_stays_on_record()
    {
        State bedtime = Terrace.States[0];
        DeviceRecord off = RecordStudy.Run(Terrace, Plugs, new() { State = bedtime }).Single(record => record.Device.Id.Value == "lounge-lamp");
        (off.Reach, off.Parent).Should().Be((null, null));
    }

    private static IEnumerable<DeviceId> DroppedBy(ImmutableArray<DeviceReach> before, State state)
    {
        HashSet<DeviceId> lost = [.. CoverageStudy.Run(Terrace, Plugs, new() { State = state }).Devices.Where(reach => !reach.IsReached).Select(reach => reach.Device)];
        return before.Where(reach => reach.IsReached && lost.Contains(reach.Device)).Select(reach => reach.Device);
    }
}
