using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class LinksWorkTests
{
    /// <summary>Each figure of JSON is rounded at its twelfth digit, and a link has a handful of items below 100 dB.</summary>
    private const double RoundingDb = 1e-8;

    [Fact]
    public async Task The_text_says_what_was_approved()
    {
        Run run = await Run.Of("links", Run.TwoRooms);

        run.Code.Should().Be(0);
        Approval.Verify(run.Output, "links-two-rooms.txt");
    }

    [Fact]
    public async Task The_items_of_each_link_sum_to_its_path_loss()
    {
        Run run = await Run.Of("links", Run.LongHouse, "--json");

        run.Json.GetProperty("home").GetString().Should().Be("Long House");
        JsonElement links = run.Json.GetProperty("links");
        links.GetArrayLength().Should().Be(3, "three devices make three pairs");
        foreach (JsonElement link in links.EnumerateArray())
            Losses(link).Sum().Should().BeApproximately(link.GetProperty("pathLossDb").GetDouble(), RoundingDb);
    }

    [Fact]
    public async Task Several_networks_make_an_array_and_one_is_an_object()
    {
        Run all = await Run.Of("links", Run.TwoRooms, "--json");
        Run one = await Run.Of("links", Run.TwoRooms, "--json", "--network", "meters");

        all.Json.EnumerateArray().Select(network => network.GetProperty("network").GetString()).Should().Equal("plugs", "meters");
        one.Json.GetProperty("network").GetString().Should().Be("meters");
    }

    [Fact]
    public async Task A_home_with_access_points_compares_the_channels()
    {
        Run text = await Run.Of("links", Path.Combine(Run.Root, "floorplans", "quay-terrace"), "--network", "plugs");
        Run json = await Run.Of("links", Path.Combine(Run.Root, "floorplans", "quay-terrace"), "--network", "plugs", "--json");

        JsonElement air = json.Json.GetProperty("air");
        int best = air.GetProperty("bestChannel").GetInt32();
        text.Output.Should().Contain(FormattableString.Invariant($"Channel {best} is the least disturbed by the home's access points; 20 is in use."));
        air.GetProperty("channels").GetArrayLength().Should().Be(16);
        json.Json.GetProperty("links")[0].GetProperty("atTo").GetProperty("interferers").GetArrayLength().Should().Be(2);
        text.Output.Split('\n').Should().OnlyContain(line => line.Length <= 100);
    }

    [Fact]
    public async Task Asking_twice_as_often_takes_twice_the_time_on_the_air()
    {
        string terrace = Path.Combine(Run.Root, "floorplans", "quay-terrace");
        Run text = await Run.Of("links", terrace, "--network", "lighting", "--poll", "30");
        double atThirty = await ShareAt("30"), atSixty = await ShareAt("60");

        text.OutputInOneLine.Should().Contain("devices every 30 s takes");
        atThirty.Should().BeApproximately(2 * atSixty, RoundingDb);
        (await Run.Of("links", terrace, "--poll", "0")).Code.Should().Be((int)ExitCode.BadInput);

        async Task<double> ShareAt(string seconds)
        {
            Run run = await Run.Of("links", terrace, "--network", "lighting", "--poll", seconds, "--json");
            return run.Json.GetProperty("air").GetProperty("duty").GetProperty("pollingShare").GetDouble();
        }
    }

    [Fact]
    public async Task A_device_that_is_off_has_no_links()
    {
        Run run = await Run.Of("links", Run.TwoRooms, "--network", "plugs", "--state", "night", "--json");

        run.Output.Should().NotContain("right-plug").And.Contain("right-contact");
    }

    [Fact]
    public async Task Walls_without_rooms_are_crossed_like_any_other()
    {
        Run run = await Run.Of("links", Run.TracedDrawing);

        run.Output.Should().MatchRegex("stick – lamp .*middle wall").And.MatchRegex("stick – bell .*middle");
    }

    [Fact]
    public async Task Each_model_says_its_name()
    {
        foreach (string model in new[] { "log-distance", "detour", "multi-wall", "site-general" })
        {
            Run run = await Run.Of("links", Run.LongHouse, "--model", model, "--json");
            run.Json.GetProperty("model").GetString().Should().Be(model);
        }
    }

    [Fact]
    public async Task Pairs_that_do_not_hear_each_other_are_counted_and_shown_on_demand()
    {
        Run few = await Run.Of("links", Run.TinShed);
        Run all = await Run.Of("links", Run.TinShed, "--all");

        few.Code.Should().Be(1, "a device is unreachable");
        few.Output.Should().Contain("Not heard: 1 further pair").And.NotContain("none");
        all.Output.Should().NotContain("further pair").And.Contain("none");
    }

    [Theory]
    [InlineData("--network", "plug", "did you mean \"plugs\"?")]
    [InlineData("--state", "nihgt", "did you mean \"night\"?")]
    public async Task An_unknown_name_is_answered_with_the_nearest(string option, string name, string help)
    {
        Run run = await Run.Of("links", Run.TwoRooms, option, name);

        run.Code.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.ErrorLines.Should().ContainSingle().Which.Should().Contain(help);
    }

    private static IEnumerable<double> Losses(JsonElement link) => link.GetProperty("losses").EnumerateArray().Select(loss => loss.GetProperty("lossDb").GetDouble());
}
