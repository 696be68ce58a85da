using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class RoutersWorkTests
{
    [Fact]
    public async Task The_lamp_that_a_sensor_needs_is_to_be_replaced()
    {
        Run run = await Run.Of("routers", Run.SwitchedLamp);

        run.Code.Should().Be(0);
        Approval.Verify(run.Output, "routers-switched-lamp.txt");
    }

    [Fact]
    public async Task Json_says_who_needs_whom_and_when_it_is_missed()
    {
        Run run = await Run.Of("routers", Run.SwitchedLamp, "--network", "plugs", "--json");

        JsonElement[] routers = [.. run.Json.GetProperty("routers").EnumerateArray()];
        routers.Select(router => router.GetProperty("device").GetString()).Should().Equal("near-plug", "lamp");
        routers.Select(router => router.GetProperty("verdict").GetString()).Should().Equal("harmless", "replace");
        routers[1].GetProperty("neededBy").EnumerateArray().Select(id => id.GetString()).Should().Equal("far-sensor");
        routers[1].GetProperty("missedIn").EnumerateArray().Select(outage => outage.GetProperty("name").GetString()).Should().Equal("evening", "lamp switch");
        run.Json.GetProperty("considered").GetInt32().Should().Be(1);
        run.Json.GetProperty("newRouters")[0].GetProperty("secondWay").EnumerateArray().Select(id => id.GetString()).Should().Contain("far-sensor");
    }

    [Fact]
    public async Task Without_the_lamp_the_light_module_would_bring_the_sensor_back()
    {
        Run run = await Run.Of("routers", Run.SwitchedLamp, "--network", "plugs", "--state", "evening", "--json");

        JsonElement best = run.Json.GetProperty("newRouters")[0];
        best.GetProperty("device").GetString().Should().Be("ceiling-light");
        best.GetProperty("networkNow").GetString().Should().Be("lighting");
        best.GetProperty("reached").EnumerateArray().Select(id => id.GetString()).Should().Equal("far-sensor");
    }

    [Fact]
    public async Task A_star_is_told_that_nobody_carries_anybody()
    {
        Run run = await Run.Of("routers", Run.TwoRooms, "--network", "meters");

        run.Output.Should().StartWith("Nobody carries anybody: every device of this network speaks to receiver itself.");
    }
}
