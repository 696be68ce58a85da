using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class RepeatersWorkTests
{
    [Fact]
    public async Task One_repeater_is_told_with_place_gain_and_proof()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse);

        run.Code.Should().Be(0, "the goal is met once it is plugged in");
        Approval.Verify(run.Output, "repeaters-long-house.txt");
    }

    [Fact]
    public async Task Json_names_the_outlet_and_the_device_that_it_serves()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse, "--json");

        run.Json.GetProperty("isProven").GetBoolean().Should().BeTrue();
        run.Json.GetProperty("unreachableNow").GetInt32().Should().Be(1);
        JsonElement repeater = run.Json.GetProperty("repeaters").EnumerateArray().Should().ContainSingle().Subject;
        repeater.GetProperty("outlet").GetString().Should().Be("second-outlet");
        repeater.GetProperty("serves")[0].GetString().Should().Be("far-sensor");
    }

    [Fact]
    public async Task Not_possible_says_which_device_lacks_how_many_decibels()
    {
        Run run = await Run.Of("repeaters", Run.TinShed);

        run.Code.Should().Be(1);
        Approval.Verify(run.Output, "repeaters-tin-shed.txt");
    }

    [Fact]
    public async Task Nothing_is_recommended_where_nothing_is_lacking()
    {
        Run run = await Run.Of("repeaters", Run.TwoRooms, "--network", "plugs");

        run.Code.Should().Be(0);
        run.Output.Should().StartWith("No repeater is needed");
    }
}
