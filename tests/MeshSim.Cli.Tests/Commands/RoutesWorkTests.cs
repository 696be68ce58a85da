using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class RoutesWorkTests
{
    [Fact]
    public async Task Unreachable_devices_come_first_with_what_they_lack()
    {
        Run run = await Run.Of("routes", Run.LongHouse);

        run.Code.Should().Be(1);
        Approval.Verify(run.Output, "routes-long-house.txt");
    }

    [Fact]
    public async Task Every_device_but_the_coordinator_is_in_json()
    {
        Run run = await Run.Of("routes", Run.TwoRooms, "--network", "plugs", "--json");

        run.Code.Should().Be(0);
        JsonElement[] devices = [.. run.Json.GetProperty("devices").EnumerateArray()];
        devices.Select(device => device.GetProperty("device").GetString()).Should().Equal("left-plug", "right-plug", "right-contact");
        devices.Should().OnlyContain(device => device.GetProperty("isReached").GetBoolean());
        foreach (JsonElement device in devices)
        {
            string?[] route = [.. device.GetProperty("route").EnumerateArray().Select(id => id.GetString())];
            route[0].Should().Be(device.GetProperty("device").GetString());
            route[^1].Should().Be("stick");
            device.GetProperty("hops").GetInt32().Should().Be(route.Length - 1);
        }
    }

    [Fact]
    public async Task The_result_can_go_to_a_file()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("routes", Run.TwoRooms, "--json", "--out", temporary["routes.json"]);

        run.Output.Should().BeEmpty();
        JsonDocument.Parse(await File.ReadAllTextAsync(temporary["routes.json"], TestContext.Current.CancellationToken)).RootElement.GetArrayLength().Should().Be(2);
    }

    [Fact]
    public async Task A_command_says_how_many_arrive_and_how_long_they_take()
    {
        Run run = await Run.Of("routes", Path.Combine(Run.Root, "floorplans", "quay-terrace"), "--network", "plugs", "--json");

        JsonElement[] reached = [.. run.Json.GetProperty("devices").EnumerateArray().Where(device => device.GetProperty("isReached").GetBoolean())];
        reached.Should().NotBeEmpty();
        foreach (JsonElement device in reached)
        {
            device.GetProperty("commandDelivery").GetDouble().Should().BeGreaterThan(device.GetProperty("delivery").GetDouble(), "access points are about and retries help");
            device.GetProperty("commandP95Milliseconds").GetDouble().Should().BeInRange(device.GetProperty("commandExpectedMilliseconds").GetDouble(), 200);
        }
    }

    [Fact]
    public async Task The_table_fits_its_width()
    {
        Run run = await Run.Of("routes", Path.Combine(Run.Root, "floorplans", "quay-terrace"));
        run.Output.Split('\n').Should().OnlyContain(line => line.Length <= 100);
    }
}
