using MeshSim.Devices;
using MeshSim.Tests.Dropouts;

namespace MeshSim.Tests.Devices;

public sealed class AlarmsTests
{
    private static readonly Device Sample = HouseOfRooms.Of(3).Devices[1];

    [Theory]
    [InlineData("smoke alarm", true)]
    [InlineData("Gas detector", true)]
    [InlineData("gas-detector", true)]
    [InlineData("heat detector", true)]
    [InlineData("monoxide sensor", true)]
    [InlineData("siren", true)]
    [InlineData("panic button", true)]
    [InlineData("gas meter", false)]
    [InlineData("leak sensor", false)]
    [InlineData("motion sensor", false)]
    [InlineData("plug", false)]
    public void Alarms_are_known_by_what_the_home_calls_them(string words, bool isAlarm)
    {
        Alarms.Includes(Sample with { Kind = words }).Should().Be(isAlarm);
        Alarms.Includes(Sample with { Name = words }).Should().Be(isAlarm);
    }
}
