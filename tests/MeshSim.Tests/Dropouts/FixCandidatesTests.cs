using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Radio;
using MeshSim.Tests.Mesh;

namespace MeshSim.Tests.Dropouts;

public sealed class FixCandidatesTests
{
    private static readonly Home Sample = InRooms(HouseOfRooms.Of(3));

    private static readonly Network Network = Sample.Networks[0];

    private static readonly Device Sensor = Sample.Devices[1] with { Power = PowerSource.Battery, Role = Role.EndDevice, HeightMetres = 1.4 };

    [Fact]
    public void A_battery_device_can_be_put_higher_below_the_ceiling_and_not_by_a_hand_s_breadth() =>
        For(Sensor).OfType<RaiseDevice>().Select(fix => fix.HeightMetres).Should().Equal(2.0);

    [Fact]
    public void What_is_wired_stays_where_it_is()
    {
        Fix[] fixes = For(Sensor with { Power = PowerSource.Mains, Kind = "switch module", HeightMetres = 0.3 });

        fixes.OfType<RaiseDevice>().Should().BeEmpty();
        fixes.OfType<MoveToOutlet>().Should().BeEmpty();
    }

    [Fact]
    public void A_plug_can_go_into_each_outlet_of_its_room_and_the_rooms_beside() =>
        For(Sensor with { Power = PowerSource.Mains, Kind = "Plug", Room = HouseOfRooms.Left }).OfType<MoveToOutlet>()
            .Select(fix => fix.To.Room).Should().NotBeEmpty().And.OnlyContain(room => room == HouseOfRooms.Left);

    [Fact]
    public void A_repeater_helps_a_mesh_alone()
    {
        Network star = Network with { Radio = Network.Radio with { Topology = Topology.Star } };

        For(Sensor).OfType<AddRepeater>().Select(fix => fix.At).Should().Equal(Sample.Outlets);
        FixCandidates.ForDevice(Sample, star, Sensor, null, []).OfType<AddRepeater>().Should().BeEmpty();
    }

    [Fact]
    public void Channels_are_tried_only_where_somebody_disturbs_one()
    {
        Home disturbed = Sample with
        {
            AccessPoints =
            [
                new() { Name = "wifi", Storey = new("ground"), Point = default, HeightMetres = 2, Channel = 6, WidthMegahertz = 20, Power = new(20), Busy = 0.3 },
            ],
        };

        For(Sensor).OfType<ChangeChannel>().Should().BeEmpty();
        FixCandidates.ForDevice(disturbed, Network, Sensor, null, []).OfType<ChangeChannel>()
            .Select(fix => fix.Channel).Should().NotContain(Network.Channel).And.HaveCount(Network.Radio.LastChannel - Network.Radio.FirstChannel);
    }

    [Fact]
    public void Only_networks_of_another_band_are_another_way() =>
        For(Sensor).OfType<ChangeNetwork>().Select(fix => fix.To).Should().Equal(Sample.Networks[1]);

    [Fact]
    public void Doors_on_the_way_can_be_left_open_and_walls_and_windows_not()
    {
        Link link = MeshSamples.Link(0, 1) with
        {
            PathLoss = new("sample", 1, [Item(LossKind.Wall, "wall"), Item(LossKind.Door, "hall door"), Item(LossKind.Window, "window"), Item(LossKind.Door, "hall door")]),
        };

        FixCandidates.ForDevice(Sample, Network, Sensor, link, []).OfType<LeaveOpen>().Select(fix => fix.Door).Should().Equal("hall door");
    }

    [Fact]
    public void Routers_that_were_missed_can_be_kept_powered_and_end_devices_need_not() =>
        FixCandidates.ForNetwork(Sample, Network, null, [Sensor, Sensor with { Id = new("lamp"), Role = Role.Router, SwitchedBy = "switch" }])
            .OfType<KeepPowered>().Should().Equal(new KeepPowered(new("lamp"), "switch"));

    private static Fix[] For(Device device) => [.. FixCandidates.ForDevice(Sample, Network, device, null, [])];

    private static LossItem Item(LossKind kind, string name) => new() { Kind = kind, Name = name, Loss = new(1) };

    /// <summary>Every other outlet is in the one room, the rest in the other; no wall knows both.</summary>
    private static Home InRooms(Home home) => home with
    {
        Outlets = [.. home.Outlets.Select((outlet, i) => outlet with { Room = i % 2 == 0 ? HouseOfRooms.Left : HouseOfRooms.Right })],
    };
}
