using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class RehearseWorkTests
{
    [Fact]
    public async Task A_state_that_must_hold_and_drops_a_device_is_the_answer()
    {
        Run run = await Run.Of("rehearse", Run.SwitchedLamp, "--pairs", "--draws", "6400");

        run.Code.Should().Be(1);
        Approval.Verify(run.Output, "rehearse-switched-lamp.txt");
    }

    [Fact]
    public async Task Where_every_such_state_holds_the_run_is_done()
    {
        Run run = await Run.Of("rehearse", Run.TwoRooms, "--draws", "0");

        run.Code.Should().Be(0);
        run.Output.Should().Contain("No state is marked that must hold.").And.NotContain("Chance:");
    }

    [Fact]
    public async Task Json_names_who_drops_in_each_outage()
    {
        Run run = await Run.Of("rehearse", Run.SwitchedLamp, "--network", "plugs", "--json", "--draws", "6400", "--seed", "9");

        run.Json.GetProperty("holds").GetBoolean().Should().BeFalse();
        JsonElement[] dropping = [.. run.Json.GetProperty("rehearsals").EnumerateArray().Where(outage => Strings(outage, "dropped").Contains("far-sensor"))];
        dropping.Select(outage => $"{outage.GetProperty("kind").GetString()}: {outage.GetProperty("name").GetString()}").Should().Equal(
            "state: evening", "switch: lamp switch", "circuit: lights", "router: lamp", "hub: stick");
        JsonElement chances = run.Json.GetProperty("chances");
        chances.GetProperty("draws").GetInt32().Should().Be(6400);
        chances.GetProperty("seed").GetInt32().Should().Be(9);
        foreach (JsonElement device in chances.GetProperty("devices").EnumerateArray())
            device.GetProperty("probability").GetDouble().Should().BeInRange(device.GetProperty("low").GetDouble(), device.GetProperty("high").GetDouble());
    }

    [Fact]
    public async Task The_seed_chooses_the_draws_and_nothing_else_does()
    {
        string[] line = ["rehearse", Run.SwitchedLamp, "--network", "plugs", "--draws", "6400"];
        Run first = await Run.Of([.. line, "--seed", "1"]), same = await Run.Of(line), other = await Run.Of([.. line, "--seed", "2"]);

        same.Output.Should().Be(first.Output);
        other.Output.Should().NotBe(first.Output);
    }

    [Fact]
    public async Task During_a_state_only_that_one_is_rehearsed_and_all_else_on_top()
    {
        Run run = await Run.Of("rehearse", Run.SwitchedLamp, "--network", "plugs", "--state", "evening", "--json", "--draws", "0");

        run.Code.Should().Be(1);
        run.Json.GetProperty("rehearsals").EnumerateArray().Select(outage => outage.GetProperty("name").GetString()).Should().Equal("evening", "sockets", "near-plug", "stick");
        Strings(run.Json, "unreachableBefore").Should().Equal("far-sensor");
        run.Json.GetProperty("chances").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Theory]
    [InlineData("--draws", "1.5", "not a whole number")]
    [InlineData("--draws", "-1", "outside")]
    [InlineData("--draws", "1e", "not a number")]
    [InlineData("--seed", "-3", "outside")]
    [InlineData("--correlation", "0.6", "outside")]
    public async Task Numbers_that_make_no_sense_are_refused(string option, string value, string reason)
    {
        Run run = await Run.Of("rehearse", Run.TwoRooms, option, value);

        run.Code.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain(option).And.Contain(reason);
    }

    private static string?[] Strings(JsonElement element, string name) => [.. element.GetProperty(name).EnumerateArray().Select(id => id.GetString())];
}
