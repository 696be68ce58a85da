using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Radio;
using MeshSim.Tests.Mesh;

namespace MeshSim.Tests.Dropouts;

public sealed class FixTests
{
    private static readonly Home Sample = HouseOfRooms.Of(3) with { States = [new State { Name = "night", DevicesOff = [MeshSamples.Id(1)] }] };

    private static readonly Outlet Outlet = Sample.Outlets[0];

    [Fact]
    public void A_raised_device_is_higher_and_nothing_else() =>
        Changed(new RaiseDevice(MeshSamples.Id(1), 1.5), 1).Should().Be(Sample.Devices[1] with { HeightMetres = 1.5 });

    [Fact]
    public void A_device_taken_out_of_its_box_hangs_in_the_open()
    {
        Home boxed = Sample with { Devices = [.. Sample.Devices.Select(device => device with { Mounting = device.Mounting with { Name = "box", Losses = [(new(2440), new(8))] } })] };

        Device open = new UnboxDevice(MeshSamples.Id(1), boxed.Devices[1].Mounting, Wired: true).On(boxed).Devices[1];

        open.Mounting.Name.Should().Be("surface");
        open.Mounting.LossAt(new(868)).Value.Should().Be(0);
    }

    [Fact]
    public void A_device_plugged_in_elsewhere_takes_the_place_of_the_outlet()
    {
        Device moved = Changed(new MoveToOutlet(MeshSamples.Id(1), Outlet), 1);

        (moved.Point, moved.HeightMetres, moved.Circuit, moved.SwitchedBy).Should().Be((Outlet.Point, Outlet.HeightMetres, Outlet.Circuit, null));
    }

    [Fact]
    public void A_hub_that_moves_runs_on_the_circuit_of_its_new_outlet()
    {
        Outlet shed = Outlet with { Circuit = "shed" };

        Device moved = Changed(new MoveCoordinator(Sample.Networks[0].Coordinator, shed), Sample.Devices.Select(device => device.Id).ToList().IndexOf(Sample.Networks[0].Coordinator));

        (moved.Point, moved.Circuit, moved.SwitchedBy).Should().Be((shed.Point, "shed", null));
    }

    [Fact]
    public void No_hub_is_moved_to_a_circuit_that_a_state_switches_off()
    {
        Home home = Sample with
        {
            Outlets = [Outlet with { Circuit = "shed" }, Outlet with { Id = new("hall"), Circuit = "hall" }],
            States = [new State { Name = "away", CircuitsOff = ["shed"] }],
        };

        FixCandidates.ForNetwork(home, home.Networks[0], null, []).OfType<MoveCoordinator>().Select(fix => fix.To.Id.Value).Should().Equal("hall");
    }

    [Fact]
    public void A_repeater_is_one_more_router()
    {
        Home after = new AddRepeater(Sample.Networks[0].Name, Outlet).On(Sample);

        after.Devices[..^1].Should().Equal(Sample.Devices);
        (after.Devices[^1].Role, after.Devices[^1].Power, after.Devices[^1].Point).Should().Be((Role.Router, PowerSource.Mains, Outlet.Point));
    }

    [Fact]
    public void A_channel_is_changed_in_its_network_alone()
    {
        Home after = new ChangeChannel(Sample.Networks[0].Name, 25).On(Sample);

        after.Networks[0].Channel.Should().Be(25);
        after.Networks[1].Should().Be(Sample.Networks[1]);
    }

    [Fact]
    public void A_device_kept_powered_is_off_in_no_state_and_behind_no_switch()
    {
        Home after = new KeepPowered(MeshSamples.Id(1), "switch").On(Sample);

        after.Devices[1].SwitchedBy.Should().BeNull();
        after.States[0].DevicesOff.Should().BeEmpty();
    }

    [Theory]
    [InlineData(PowerSource.Mains, Topology.Mesh, Role.Router)]
    [InlineData(PowerSource.Mains, Topology.Star, Role.EndDevice)]
    [InlineData(PowerSource.Battery, Topology.Mesh, Role.EndDevice)]
    public void In_another_network_the_supply_decides_the_part(PowerSource power, Topology topology, Role role)
    {
        Network other = Sample.Networks[1] with { Radio = Sample.Networks[1].Radio with { Topology = topology } };

        Device joined = ChangeNetwork.Joined(Sample.Devices[1] with { Power = power }, other);

        (joined.Network, joined.Role, joined.TransmitPower).Should().Be((other.Name, role, null));
    }

    [Fact]
    public void Only_a_door_left_open_is_a_habit()
    {
        Fix[] fixes = [new LeaveOpen("door"), new RaiseDevice(MeshSamples.Id(1), 2), new AddRepeater(Sample.Networks[0].Name, Outlet), new KeepPowered(MeshSamples.Id(1), null)];

        fixes.Where(fix => fix.IsHabit).Should().ContainSingle().Which.Should().BeOfType<LeaveOpen>();
    }

    [Theory]
    [InlineData("switch", true)]
    [InlineData(null, false)]
    public void Feeding_a_lamp_past_its_switch_is_work_on_the_mains(string? manual, bool touches) =>
        new KeepPowered(MeshSamples.Id(1), manual).TouchesWiring.Should().Be(touches);

    private static Device Changed(Fix fix, int device) => fix.On(Sample).Devices[device];
}
