using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class ExplainWorkTests
{
    /// <summary>Sums of a dozen figures of twelve digits.</summary>
    private const double RoundingDb = 1e-8;

    [Theory]
    [InlineData("long-house", "far-sensor", 1)]
    [InlineData("switched-lamp", "far-sensor", 0)]
    [InlineData("switched-lamp", "near-plug", 0)]
    [InlineData("switched-lamp", "stick", 0)]
    public async Task A_device_is_explained_as_approved(string home, string device, int code)
    {
        Run run = await Run.Of("explain", Path.Combine(Run.Data, home), device);

        run.Code.Should().Be(code);
        run.Error.Should().BeEmpty();
        Approval.Verify(run.Output, $"explain-{home}-{device}.txt");
    }

    [Fact]
    public async Task What_a_way_round_saves_is_a_line_of_the_budget()
    {
        Run straight = await Run.Of("explain", Run.TracedDrawing, "bell", "--model", "log-distance");
        Run round = await Run.Of("explain", Run.TracedDrawing, "bell");

        straight.Output.Should().NotContain("way round");
        round.Output.Should().MatchRegex(@"way round, through doors and corridors +\+\d+\.\d ");
    }

    [Fact]
    public async Task A_room_is_explained_as_approved()
    {
        Run run = await Run.Of("explain", Run.SwitchedLamp, "fourth", "--state", "evening", "--step", "0.5");

        run.Code.Should().Be(1, "more than half of it is dark");
        Approval.Verify(run.Output, "explain-switched-lamp-fourth.txt");
    }

    [Fact]
    public async Task A_room_that_is_covered_is_no_failure()
    {
        Run run = await Run.Of("explain", Run.SwitchedLamp, "first", "--step", "0.5");

        run.Code.Should().Be(0);
        run.Output.Should().Contain("is covered everywhere").And.NotContain("What helps");
    }

    [Theory]
    [InlineData("far-sensr", "far-sensor")]
    [InlineData("forth", "fourth")]
    public async Task An_unknown_name_is_answered_with_the_nearest(string written, string meant)
    {
        Run run = await Run.Of("explain", Run.SwitchedLamp, written);

        run.Code.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.Error.Should().Be($"error: \"{written}\" is neither a device nor a room of the home; did you mean \"{meant}\"?\n");
    }

    [Fact]
    public async Task A_device_of_another_network_than_asked_for_is_refused()
    {
        Run run = await Run.Of("explain", Run.SwitchedLamp, "lamp", "--network", "lighting");

        run.Code.Should().Be(2);
        run.Error.Should().Contain("lamp belongs to network plugs");
    }

    [Fact]
    public async Task A_device_without_power_has_nothing_to_explain()
    {
        Run run = await Run.Of("explain", Run.SwitchedLamp, "lamp", "--state", "evening");

        run.Code.Should().Be(0);
        run.Output.Should().StartWith("lamp has no power in this state");
    }

    [Fact]
    public async Task Wifi_is_named_as_the_reason_where_it_costs_more_than_any_wall()
    {
        using var temporary = new TemporaryFolder();
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        foreach (string file in Directory.GetFiles(Run.LongHouse))
            File.Copy(file, Path.Combine(temporary.Path, Path.GetFileName(file)));
        await File.AppendAllTextAsync(
            Path.Combine(temporary.Path, "home.yaml"),
            "\nwifi:\n  - { access point: ceiling, storey: ground, at: [1, 1, 2.4], channel: 9, width: 20, power: 20, busy: 0.9 }\n",
            cancellation);

        Run run = await Run.Of("explain", temporary.Path, "far-sensor");

        run.Code.Should().Be(1);
        run.Output.ReplaceLineEndings(" ").Should().Contain("Wi-Fi in the channel costs most");
    }

    [Fact]
    public async Task Json_has_every_number_of_the_budget()
    {
        JsonElement answer = (await Run.Of("explain", Run.LongHouse, "far-sensor", "--json")).Json;

        JsonElement budget = answer.GetProperty("budget");
        double figure(string name) => budget.GetProperty(name).GetDouble();
        double lossesDb = budget.GetProperty("losses").EnumerateArray().Sum(loss => loss.GetProperty("lossDb").GetDouble());
        (figure("transmitPowerDbm") + (2 * figure("antennaGainDb")) - lossesDb).Should().BeApproximately(figure("receivedDbm"), RoundingDb);
        (figure("receivedDbm") - figure("undisturbedRequiredDbm") - figure("disturbanceDb")).Should().BeApproximately(figure("marginDb"), RoundingDb);
        (figure("designMarginDb") - figure("marginDb")).Should().BeApproximately(figure("missingDb"), RoundingDb);
        JsonElement best = answer.GetProperty("fixes")[0];
        best.GetProperty("fix").GetProperty("kind").GetString().Should().Be("add-repeater");
        best.GetProperty("after").GetProperty("isReached").GetBoolean().Should().BeTrue();
    }

    [Fact]
    public async Task Json_of_a_room_names_the_worst_place()
    {
        JsonElement answer = (await Run.Of("explain", Run.SwitchedLamp, "fourth", "--json", "--step", "0.5")).Json;

        answer.GetProperty("now").GetProperty("worstXMetres").GetDouble().Should().BeInRange(15, 20);
        answer.GetProperty("darkerWhen").EnumerateArray().Select(outage => outage.GetProperty("name").GetString()).Should().Contain("evening").And.Contain("lamp switch");
    }
}
