using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Tables;

/// <summary>Where devices are, and what is noticed about it.</summary>
public sealed class RoomFinderTests
{
    [Theory]
    [InlineData(",,,0,", ",,,24,", "devices.csv(5,62): notice: \"door\" sends at 24.0 dBm, 2.0 dB above the limit of EU at 2450 MHz; check the law in force; docs and datasets/band-limits.csv say where the limits come from")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,2,3,1.5,kitchen", "devices.csv(3,45): notice: the point (2, 3) lies on a wall of \"kitchen\"; it is moved into the room, to (2.05, 3)")]
    [InlineData("ground,4,3,1.5,kitchen", "ground,6,4,1.5,", "devices.csv(3,45): notice: the point (6, 4) lies on a wall of \"kitchen\"; it is moved into the room, to (5.95, 3.95)")]
    public void A_point_on_a_wall_is_moved_and_a_strong_radio_noticed(string find, string replacement, params string[] said) =>
        ChangedSample.Says("devices.csv", find, replacement).Should().Equal(said);
}
