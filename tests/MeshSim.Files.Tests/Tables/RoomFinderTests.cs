using MeshSim.Devices;
using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Tables;

/// <summary>Where devices are, and what is noticed about it.</summary>
public sealed class RoomFinderTests
{
    [Theory]
    [InlineData(
        ",,,0,",
        ",,,24,",
        "devices.csv(5,62): notice: \"door\" sends at 24.0 dBm, 2.0 dB above the limit of EU at 2450 MHz; check the law in force; docs and "
            + "datasets/band-limits.csv say where the limits come from")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,2,3,1.5,kitchen", "devices.csv(3,45): notice: the point (2, 3) lies on a wall of \"kitchen\"; it is moved into the room, to (2.05, 3)")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,6,4,1.5,", "devices.csv(3,45): notice: the point (6, 4) lies on a wall of \"kitchen\"; it is moved into the room, to (5.95, 3.95)")]
    public void A_point_on_a_wall_is_moved_and_a_strong_radio_noticed(string find, string replacement, params string[] said) =>
        ChangedSample.Says("devices.csv", find, replacement).Should().Equal(said);

    [Fact]
    public void Strong_radios_of_one_network_share_a_notice()
    {
        const string Many = """
            a,,plugs,plug,mains,,ground,1,1,1,hall,,,,24,
            b,,plugs,plug,mains,,ground,1,2,1,hall,,,,25,
            c,,plugs,plug,mains,,ground,1,3,1,hall,,,,20,
            d,,plugs,plug,mains,,ground,1,1.5,1,hall,,,,24,
            stick,
            """;
        ChangedSample.Says("devices.csv", "stick,", Many).Should().Equal(
            "devices.csv(2,43): notice: 3 devices send above the limit of EU at 2450 MHz, by up to 3.0 dB: \"a\", \"b\", \"d\"; "
            + "check the law in force; docs and datasets/band-limits.csv say where the limits come from");
    }

    [Theory]
    [InlineData("ground,4,3,1.5,kitchen", "ground,7,3,1.5,outdoors", "outdoors")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,-0.1,3,1.5,Outdoors", "outdoors")]
    public void A_device_outside_the_rooms_may_be_outdoors_and_is_written_so(string find, string replacement, string written)
    {
        using TemporaryFolder folder = ChangedSample.Folder("devices.csv", find, replacement);
        folder.Says().Should().BeEmpty();
        Home home = folder.Read().Home!;
        home.Devices.Single(device => device.Id.Value == "lamp").Room.Should().BeNull();

        HomeWriter.Write(home, folder.File("copy"));
        File.ReadAllText(Path.Combine(folder.File("copy"), "devices.csv")).Should().Contain($",{written},");
        HomeFolder.Read(folder.File("copy")).Home!.Devices.Should().Equal(home.Devices);
    }

    [Theory]
    [InlineData("ground,4,3,1.5,kitchen", "ground,4,3,1.5,outdoors", "devices.csv(3,53): error: the point (4, 3) lies in \"kitchen\", not outdoors; put the point outside, or name the room")]
    [InlineData(
        "ground,4,3,1.5,kitchen",
        "ground,6,3,1.5,outdoors",
        "devices.csv(3,53): error: the point (6, 3) lies on a wall of \"kitchen\", not outdoors; put the point outside, or name the room")]
    public void Outdoors_is_not_indoors(string find, string replacement, params string[] said) =>
        ChangedSample.Says("devices.csv", find, replacement).Should().Equal(said);

    [Fact]
    public void An_outlet_may_be_outdoors() =>
        ChangedSample.Says("outlets.csv", "ground,5.9,2,0.3,,", "ground,6.1,2,0.3,outdoors,").Should().BeEmpty();
}
