using MeshSim.Devices;
using MeshSim.Files.Tables;
using MeshSim.Files.Tests.Fixtures;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Quantities;

namespace MeshSim.Files.Tests.Tables;

/// <summary>What is said about devices.csv.</summary>
public sealed class DeviceTableTests
{
    [Fact]
    public void More_devices_than_can_be_worked_through_are_refused_at_once()
    {
        string[] rows = [.. Enumerable.Range(0, 100_000).Select(i => FormattableString.Invariant($"d{i},,plugs,plug,mains,,ground,1,1,1,hall,,,,,"))];
        ChangedSample.Says("devices.csv", "stick,hub", string.Join('\n', rows) + "\nstick,hub").Should().Equal(
            "devices.csv(502,1): error: there are 100006 devices; a home has at most 500; plan a larger building in parts, each with its own folder");
    }

    [Theory]
    [InlineData("id,name", "id,nmae", "devices.csv(1,4): error: unknown column \"nmae\"; did you mean \"name\"? (else say in columns.yaml what it is)")]
    [InlineData("id,name,network", "id,name", "devices.csv(1,1): error: the column \"network\" is missing; add it to the first line; needed are id, network, power, storey, x, y, height")]
    [InlineData("id,name", "id,id", "devices.csv(1,4): error: the column \"id\" is there twice; keep one")]
    [InlineData(
        "stick,hub stick,",
        "lamp,hub stick,",
        "home.yaml(34,73): error: the network \"plugs\" has no coordinator: no device is called \"stick\"; known devices of this network: \"lamp\", "
            + "\"bed-lamp\", \"door\"",
        "devices.csv(3,1): error: two devices are called \"lamp\"; the first one is in line 2; give this one another name",
        "readings.csv(2,1): error: no device is called \"stick\"; known devices: \"lamp\", \"bed-lamp\", \"door\", \"receiver\", \"meter\"")]
    [InlineData("stick,hub stick,plugs", "stick,hub stick,plug", "devices.csv(2,17): error: no network is called \"plug\"; did you mean \"plugs\"?")]
    [InlineData("bulb,mains,,ground", "bulb,mians,,ground", "devices.csv(3,31): error: power: unknown word \"mians\"; did you mean \"mains\"?")]
    [InlineData("bulb,mains,router", "bulb,mains,ruter", "devices.csv(4,28): error: role: unknown word \"ruter\"; did you mean \"router\"?")]
    [InlineData("bulb,mains,,ground", "bulb,mains,,gruond", "devices.csv(3,38): error: no storey is called \"gruond\"; did you mean \"ground\"?")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,4,3,1.5,kitchn", "devices.csv(3,53): error: no room of storey \"ground\" is called \"kitchn\"; did you mean \"kitchen\"?")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,4,3,1.5,bedroom", "devices.csv(3,53): error: no room of storey \"ground\" is called \"bedroom\"; \"bedroom\" is on storey \"first\"")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,4,3,1.5,hall", "devices.csv(3,53): error: the point (4, 3) lies in \"kitchen\", not in \"hall\"; put the point or the room right")]
    [InlineData(
        "ground,4,3,1.5,kitchen",
        "ground,4,30,1.5,kitchen",
        "devices.csv(3,54): error: the point (4, 30) lies outside every room, not in \"kitchen\"; put the point or the room right, or write \"outdoors\" as "
            + "its room")]
    [InlineData(
        "ground,4,3,1.5,kitchen",
        "ground,4,30,1.5,",
        "devices.csv(3,45): error: the point (4, 30) lies outside every room; the rooms of \"ground\" lie between (0, 0) and (6, 4); if it hangs outside, "
            + "write \"outdoors\" as its room")]
    [InlineData(
        "ground,4,3,1.5,kitchen",
        "ground,2,3,1.5,",
        "devices.csv(3,45): error: the point (2, 3) lies on a wall between rooms; say in the column \"room\" which side it is on: \"hall\" or \"kitchen\"")]
    [InlineData(
        "ground,4,3,1.5,kitchen",
        "ground,4,3,2.6,kitchen",
        "devices.csv(3,49): error: height is 2.6, above the ceiling of \"ground\"; it must be 0 to 2.5 m above the floor of its storey")]
    [InlineData(
        "ground,4,3,1.5,kitchen",
        "ground,4,3,-0.1,kitchen",
        "devices.csv(3,49): error: height is -0.1, below the floor of \"ground\"; it must be 0 to 2.5 m above the floor of its storey")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,\"4,2\",3,1.5,kitchen", "devices.csv(3,45): error: x: \"4,2\" has a decimal comma; use a point: 4.2")]
    [InlineData(
        "ground,4,3,1.5,kitchen",
        "ground,4,2,3,1.5,kitchen",
        "devices.csv(3,1): error: the line has 17 fields, the header 16; one field per column, a point as decimal mark, text that holds a comma in quotes")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,nan,3,1.5,kitchen", "devices.csv(3,45): error: x: \"nan\" is not a finite number; write an ordinary number such as 2.45")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,∞,3,1.5,kitchen", "devices.csv(3,45): error: x: \"∞\" is not a finite number; write an ordinary number such as 2.45")]
    [InlineData("lamp-shade", "lamp-shde", "devices.csv(3,61): error: no mounting is called \"lamp-shde\"; did you mean \"lamp-shade\"?")]
    [InlineData(
        "bulb,mains,,ground",
        "bulb,mains,coordinator,ground",
        "devices.csv(3,37): error: the network \"plugs\" has two coordinators: \"stick\" and this one; leave the role blank, or name this device as "
            + "\"coordinator:\" in home.yaml")]
    [InlineData("stick,usb,,", "stick,usb,router,", "devices.csv(2,33): error: the network \"plugs\" names this device as its coordinator; write coordinator, or leave the role blank")]
    [InlineData(
        "bulb,mains,,ground",
        "bulb,battery,router,ground",
        "devices.csv(3,31): error: a router listens all the time, a battery device sleeps; write mains or usb, or role end device")]
    [InlineData(
        "meter,battery,end device",
        "meter,mains,router",
        "devices.csv(7,27): error: the radio of network \"meters\" has no routers: each device speaks to the coordinator itself; write end device, or leave "
            + "the role blank")]
    [InlineData("stick,hub stick,plugs", ",hub stick,plugs", "devices.csv(2,1): error: id is blank; fill it in")]
    [InlineData("\"goes off, often\"", "\"goes off, often", "devices.csv(4,77): error: a quote opens here and is never closed; close it, or take it away")]
    [InlineData("\"goes off, often\"", "go\"es off", "devices.csv(4,79): error: a quote stands inside a field; put the whole field in quotes and double the quotes within")]
    public void A_bad_field_is_reported_at_its_first_character(string find, string replacement, params string[] said) =>
        ChangedSample.Says("devices.csv", find, replacement).Should().Equal(said);

    [Fact]
    public void Byte_order_mark_carriage_returns_capitals_and_blank_rows_make_no_difference()
    {
        using TemporaryFolder plain = new TemporaryFolder().WithSample();
        using TemporaryFolder spreadsheet = new TemporaryFolder().WithSample(devices: text =>
            "\uFEFF" + text.Replace("id,name", "ID, Name", StringComparison.Ordinal).Replace("mains", "Mains", StringComparison.Ordinal)
                .Replace("\n", "\r\n", StringComparison.Ordinal) + "\r\n,,,,,,,,,,,,,,,\r\n");

        spreadsheet.Says().Should().BeEmpty();
        spreadsheet.Read().Home!.Devices.Should().Equal(plain.Read().Home!.Devices);
    }

    [Fact]
    public void A_carriage_return_alone_ends_a_line()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample(devices: text =>
            text.Replace('\n', '\r').Replace("\"goes off, often\"", "\"goes off, often", StringComparison.Ordinal));

        folder.Says().Should().Equal("devices.csv(4,77): error: a quote opens here and is never closed; close it, or take it away");
    }

    [Fact]
    public void Roles_follow_from_power_and_network()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample(devices: text => text.Replace("meter,battery,end device", "meter,mains,", StringComparison.Ordinal));

        folder.Read().Home!.Devices.Select(device => (device.Id.Value, device.Role)).Should().Equal(
            ("stick", Role.Coordinator),
            ("lamp", Role.Router),
            ("bed-lamp", Role.Router),
            ("door", Role.EndDevice),
            ("receiver", Role.Coordinator),
            ("meter", Role.EndDevice));
    }

    [Fact]
    public void Every_column_arrives()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();

        Device device = folder.Read().Home!.Devices[2];

        device.Should().BeEquivalentTo(new
        {
            Name = "bed-lamp",
            Kind = "bulb",
            Network = new NetworkName("plugs"),
            Power = PowerSource.Mains,
            Storey = new StoreyName("first"),
            Point = PlanPoint.FromMetres(3, 3),
            HeightMetres = 1.5,
            Room = new RoomName("bedroom"),
            Circuit = "lights",
            SwitchedBy = "bed switch",
            TransmitPower = (PowerLevel?)null,
            Note = "goes off, often",
        });
        device.Mounting.Name.Should().Be("surface");
        folder.Read().Home!.Devices[3].TransmitPower.Should().Be(new PowerLevel(0));
    }

    [Fact]
    public void As_many_devices_as_a_home_may_have_are_read()
    {
        const int InTheSample = 6;
        string rows = string.Join(
            '\n',
            Enumerable.Range(InTheSample, DeviceTable.MostDevices - InTheSample)
                .Select(i => FormattableString.Invariant($"d{i},,plugs,,mains,,ground,4,3,1,,,,,,")));
        using TemporaryFolder folder = new TemporaryFolder().WithSample(devices: text => text + "\n" + rows);

        HomeReadResult result = folder.Read();

        result.Problems.Should().BeEmpty();
        result.Home!.Devices.Should().HaveCount(DeviceTable.MostDevices);
    }
}
