using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Files;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Commands;

/// <summary>What is proposed for the dark rooms of Quay Terrace, done: written into a copy of the home folder and asked again.</summary>
public sealed class AppliedFixTests
{
    private const double MostlyDark = 0.5;

    private static readonly string QuayTerrace = Path.Combine(Run.Root, "floorplans", "quay-terrace");

    private static readonly StudyOptions Coarse = new() { GridStepMetres = 0.4 };

    [Theory]
    [InlineData("shower room")]
    [InlineData("workshop")]
    public async Task The_best_fix_of_a_dark_room_lights_it_and_reaches_its_devices(string name)
    {
        Home home = HomeFolder.Read(QuayTerrace).Home!;
        var room = new RoomName(name);
        RoomExplanation before = ExplainStudy.Room(home, home.Networks[0], room, Coarse);
        Device[] dropped = [.. home.DevicesOf(home.Networks[0]).Where(device => device.Room == room)];
        before.Now.DarkShare.Should().BeGreaterThan(MostlyDark);
        (await Run.Of("explain", QuayTerrace, dropped[0].Id.Value)).Code.Should().Be(1, "the device drops out as the house stands");

        using var temporary = new TemporaryFolder();
        HomeWriter.Write(before.Fixes[0].Fix.On(home), temporary["mended"]);

        Run after = await Run.Of("explain", temporary["mended"], name, "--step", "0.4", "--json");
        after.Code.Should().Be(0);
        after.Json.GetProperty("now").GetProperty("darkShare").GetDouble().Should().Be(before.Fixes[0].After.DarkShare).And.BeLessThan(MostlyDark);
        Home mended = HomeFolder.Read(temporary["mended"]).Home!;
        dropped.Should().OnlyContain(device => Reaches(mended, device.Id.Value));
    }

    [Theory]
    [InlineData("loft-climate")]
    [InlineData("shower-leak")]
    [InlineData("workshop-plug")]
    [InlineData("workshop-contact")]
    public void Every_fix_of_a_device_that_drops_out_reaches_it_after_it_went_through_the_files(string id)
    {
        Home home = HomeFolder.Read(QuayTerrace).Home!;
        DeviceExplanation before = ExplainStudy.Device(home, Named(home, id), Coarse);
        before.Now.IsReached.Should().BeFalse();
        before.Fixes.Should().NotBeEmpty();
        foreach (Fix fix in before.Fixes.Select(fix => fix.Fix))
        {
            using var temporary = new TemporaryFolder();
            HomeWriter.Write(fix.On(home), temporary["mended"]);
            Home mended = HomeFolder.Read(temporary["mended"]).Home!;

            Reaches(mended, id).Should().BeTrue(fix.Words);
        }
    }

    private static bool Reaches(Home home, string id)
    {
        Network network = home.Networks.First(network => network.Name == Named(home, id).Network);
        return CoverageStudy.Run(home, network, new()).Devices.First(reach => reach.Device.Value == id).IsReached;
    }

    private static Device Named(Home home, string id) => home.Devices.First(device => device.Id.Value == id);
}
