using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class HubWorkTests
{
    [Fact]
    public async Task The_best_site_is_told_with_what_it_takes_and_what_the_present_one_takes()
    {
        Run run = await Run.Of("hub", Run.LongHouse);

        run.Code.Should().Be(0);
        Approval.Verify(run.Output, "hub-long-house.txt");
    }

    [Fact]
    public async Task A_device_that_no_site_serves_is_no_success()
    {
        Run run = await Run.Of("hub", Run.TinShed);

        run.Code.Should().Be(1);
        Approval.Verify(run.Output, "hub-tin-shed.txt");
    }

    [Fact]
    public async Task Json_has_the_sites_best_first_with_what_each_network_needs()
    {
        Run run = await Run.Of("hub", Run.SwitchedLamp, "--json");

        run.Json.GetProperty("statesHeld")[0].GetString().Should().Be("evening");
        run.Json.GetProperty("costs").GetProperty("hubMove").GetInt32().Should().Be(60);
        JsonElement[] sites = [.. run.Json.GetProperty("sites").EnumerateArray()];
        sites.Should().HaveCountLessThanOrEqualTo(run.Json.GetProperty("sitesConsidered").GetInt32());
        sites.Where(site => site.GetProperty("outlet").ValueKind == JsonValueKind.Null).Should().ContainSingle();
        sites[0].GetProperty("networks").GetArrayLength().Should().Be(run.Json.GetProperty("networks").GetArrayLength());
        run.Json.GetProperty("apart").GetArrayLength().Should().BePositive();
    }

    [Fact]
    public async Task One_network_and_one_room_can_be_named()
    {
        Run run = await Run.Of("hub", Path.Combine(Run.Root, "floorplans", "quay-terrace"), "--network", "plugs", "--room", "hall", "--json");

        run.Json.GetProperty("networks").EnumerateArray().Select(name => name.GetString()).Should().Equal("plugs");
        run.Json.GetProperty("sites").EnumerateArray().Select(site => site.GetProperty("room").GetString()).Should().OnlyContain(room => room == null || room == "hall");
        run.Json.GetProperty("sitesConsidered").GetInt32().Should().Be(3);
    }

    [Theory]
    [InlineData("--network", "plug", "is none of the home's networks")]
    [InlineData("--room", "kitchn", "is none of the home's rooms")]
    public async Task An_unknown_name_is_bad_input(string option, string name, string said)
    {
        Run run = await Run.Of("hub", Run.TwoRooms, option, name);

        run.Code.Should().Be(2);
        run.ErrorLines.Should().ContainSingle().Which.Should().Contain(said);
    }

    [Fact]
    public async Task Sites_are_drawn_and_the_best_one_can_be_applied()
    {
        using TemporaryFolder folder = new();

        Run run = await Run.Of("hub", Run.LongHouse, "--draws", "0", "--maps", folder["maps"], "--format", "svg", "--apply", folder["moved"]);

        run.Code.Should().Be(0);
        string picture = Directory.GetFiles(folder["maps"], "hub_*.svg").Should().ContainSingle().Subject;
        (await File.ReadAllTextAsync(picture, TestContext.Current.CancellationToken)).Should().Contain("zone of the hub").And.Contain("site of the hub by rank");
        (await Run.Of("routes", folder["moved"])).Code.Should().Be(0, "everybody has a way where the hub and its repeaters stand now");
    }

    [Fact]
    public async Task Json_of_the_review_has_the_zone_and_the_chances_of_each_network()
    {
        Run run = await Run.Of("hub", Run.LongHouse, "--draws", "640", "--json");

        JsonElement review = run.Json.GetProperty("review");
        review.GetProperty("zone").GetProperty("areaSquareMetres").GetDouble().Should().BePositive();
        review.GetProperty("networks").GetArrayLength().Should().Be(run.Json.GetProperty("networks").GetArrayLength());
    }
}
