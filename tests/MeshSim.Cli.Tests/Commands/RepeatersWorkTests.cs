using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class RepeatersWorkTests
{
    [Fact]
    public async Task One_repeater_is_told_with_place_gain_and_proof()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse, "--ways", "1");

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

    [Fact]
    public async Task A_state_that_must_hold_is_told_with_the_repeater_that_holds_it()
    {
        Run run = await Run.Of("repeaters", Run.SwitchedLamp, "--network", "plugs", "--ways", "1");

        run.Code.Should().Be(0);
        Approval.Verify(run.Output, "repeaters-switched-lamp-state.txt");
        (await Run.Of("repeaters", Run.SwitchedLamp, "--network", "plugs", "--ways", "1", "--everyday")).Output.Should().StartWith("No repeater is needed", "that is what the state costs");
    }

    [Fact]
    public async Task What_two_ways_cannot_have_is_told_and_is_no_success()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse);

        run.Code.Should().Be(1);
        Approval.Verify(run.Output, "repeaters-long-house-two-ways.txt");
    }

    [Fact]
    public async Task Json_of_what_cannot_be_had_names_the_link_and_what_giving_in_comes_to()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse, "--json");

        JsonElement infeasible = run.Json.GetProperty("infeasible");
        infeasible.GetProperty("devices")[0].GetString().Should().Be("far-sensor");
        JsonElement obstacle = infeasible.GetProperty("obstacles").EnumerateArray().Should().ContainSingle().Subject;
        obstacle.GetProperty("lost").GetString().Should().Be("the repeater at second-outlet");
        obstacle.GetProperty("link").GetProperty("shortfallDb").GetDouble().Should().BePositive();
        JsonElement best = infeasible.GetProperty("concessions")[0];
        best.GetProperty("kind").GetString().Should().Be("one-way");
        best.GetProperty("unserved").GetArrayLength().Should().Be(0);
        best.GetProperty("isProven").GetBoolean().Should().BeTrue();
        (await Run.Of("repeaters", Run.LongHouse, "--ways", "1", "--json")).Json.GetProperty("infeasible").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Fact]
    public async Task Giving_in_on_quay_terrace_is_told_with_two_repeaters_at_an_outlet()
    {
        Run run = await Run.Of("repeaters", Path.Combine(Run.Root, "floorplans", "quay-terrace"), "--network", "plugs", "--draws", "0");

        run.Code.Should().Be(1);
        string[] table = [.. run.Output.Split('\n').SkipWhile(line => !line.StartsWith("Giving in on", StringComparison.Ordinal)).TakeWhile(line => line.Length > 0)];
        table.Should().OnlyContain(line => line.Length <= 80);
        Approval.Verify(string.Join('\n', table) + "\n", "repeaters-quay-terrace-giving-in.txt");
    }

    [Fact]
    public async Task Json_names_the_outlets_that_take_two()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse, "--json");

        JsonElement[] concessions = [.. run.Json.GetProperty("infeasible").GetProperty("concessions").EnumerateArray()];
        JsonElement two = concessions.Should().ContainSingle(concession => concession.GetProperty("kind").GetString() == "two-at-an-outlet").Subject;
        two.GetProperty("doubled").EnumerateArray().Select(outlet => outlet.GetString()).Should().Equal("second-outlet");
        two.GetProperty("repeaters").GetInt32().Should().Be(2);
        two.GetProperty("unserved").GetArrayLength().Should().Be(0);
        concessions.Should().OnlyContain(concession => concession.GetProperty("kind").GetString() == "two-at-an-outlet" || concession.GetProperty("doubled").GetArrayLength() == 0);
    }

    [Fact]
    public async Task Once_applied_a_second_repeater_is_still_told_of_where_somebody_hangs_on_the_first()
    {
        using TemporaryFolder folder = new();
        string applied = Path.Combine(folder.Path, "applied");
        await Run.Of("repeaters", Run.LongHouse, "--draws", "0", "--apply", applied);

        Run run = await Run.Of("repeaters", applied, "--draws", "0");

        Run.InOneLine(run.Output).Should().Contain("one more repeater in the outlet of nobody 1 20 repeater-second-outlet").And.NotContain("two repeaters at second-outlet");
        JsonElement two = (await Run.Of("repeaters", applied, "--draws", "0", "--json")).Json.GetProperty("infeasible").GetProperty("concessions").EnumerateArray()
            .Should().ContainSingle(concession => concession.GetProperty("kind").GetString() == "two-at-an-outlet").Subject;
        two.GetProperty("beside").EnumerateArray().Select(device => device.GetString()).Should().Equal("repeater-second-outlet");
        two.GetProperty("doubled").GetArrayLength().Should().Be(0);
        two.GetProperty("repeaters").GetInt32().Should().Be(1);
    }

    [Fact]
    public async Task Json_names_the_case_in_which_a_repeater_serves()
    {
        Run run = await Run.Of("repeaters", Run.SwitchedLamp, "--network", "plugs", "--json");

        run.Json.GetProperty("ways").GetInt32().Should().Be(2);
        run.Json.GetProperty("statesHeld")[0].GetString().Should().Be("evening");
        JsonElement repeater = run.Json.GetProperty("repeaters").EnumerateArray().Should().ContainSingle().Subject;
        repeater.GetProperty("serves").GetArrayLength().Should().Be(0);
        JsonElement[] cases = [.. repeater.GetProperty("servesWhen").EnumerateArray()];
        cases.Select(when => (when.GetProperty("state").GetString(), when.GetProperty("lost").GetString())).Should().Equal(("evening", null), (null, "lamp"));
        cases.Select(when => when.GetProperty("devices")[0].GetString()).Should().AllBe("far-sensor");
    }

    [Fact]
    public async Task The_ladder_tells_what_each_repeater_buys()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse, "--ways", "1", "--ladder", "4");

        run.Code.Should().Be(0);
        Approval.Verify(run.Output, "repeaters-long-house-ladder.txt");
    }

    [Fact]
    public async Task A_network_of_one_hop_says_that_it_has_no_ladder()
    {
        string terrace = Path.Combine(Run.Root, "floorplans", "quay-terrace");
        Run text = await Run.Of("repeaters", terrace, "--network", "remotes", "--draws", "0", "--ladder", "3");
        Run json = await Run.Of("repeaters", terrace, "--network", "remotes", "--draws", "0", "--ladder", "3", "--json");

        Run.InOneLine(text.Output).Should().EndWith("There is no ladder: in a network of one hop no device passes frames on, so it has no repeaters.")
            .And.NotContain("Floor %");
        json.Json.GetProperty("ladder").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Fact]
    public async Task A_coordinator_that_is_off_is_said_to_be_in_the_way_of_a_ladder()
    {
        using TemporaryFolder folder = new();
        foreach (string file in Directory.GetFiles(Run.LongHouse)) File.Copy(file, Path.Combine(folder.Path, Path.GetFileName(file)));
        File.AppendAllText(Path.Combine(folder.Path, "home.yaml"), "\nstates: [ { state: dark, off: [stick] } ]\n");

        Run run = await Run.Of("repeaters", folder.Path, "--state", "dark", "--ladder", "3");

        run.Output.Should().EndWith("\nThere is no ladder: stick is off in state dark.\n");
    }

    [Fact]
    public async Task Json_of_the_ladder_begins_with_none_and_never_falls()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse, "--ladder", "4", "--json");

        JsonElement[] rungs = [.. run.Json.GetProperty("ladder").GetProperty("rungs").EnumerateArray()];
        rungs[0].GetProperty("repeaters").GetInt32().Should().Be(0);
        rungs.Select(rung => rung.GetProperty("atOnce").GetProperty("reached").GetInt32()).Should().BeInAscendingOrder();
        rungs.Should().OnlyContain(rung => rung.GetProperty("isProven").GetBoolean());
        (await Run.Of("repeaters", Run.LongHouse, "--json")).Json.GetProperty("ladder").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Fact]
    public async Task A_device_kept_powered_is_told_where_it_costs_less_than_a_repeater()
    {
        using TemporaryFolder folder = new();
        foreach (string file in Directory.GetFiles(Run.SwitchedLamp)) File.Copy(file, Path.Combine(folder.Path, Path.GetFileName(file)));
        File.AppendAllText(Path.Combine(folder.Path, "home.yaml"), "\ncosts: { repeater: 20, switch given up: 5 }\n");

        Run run = await Run.Of("repeaters", folder.Path, "--network", "plugs", "--ways", "1");

        run.Code.Should().Be(0);
        Approval.Verify(run.Output, "repeaters-switched-lamp-kept.txt");
    }

    [Fact]
    public async Task Two_ways_and_the_states_that_must_hold_are_asked_for_unless_told_otherwise()
    {
        string terrace = Path.Combine(Run.Root, "floorplans", "quay-terrace");
        Run byDefault = await Run.Of("repeaters", terrace, "--network", "plugs", "--draws", "0", "--json");
        Run spelled = await Run.Of("repeaters", terrace, "--network", "plugs", "--draws", "0", "--json", "--ways", "2");
        Run oneWay = await Run.Of("repeaters", terrace, "--network", "plugs", "--draws", "0", "--json", "--ways", "1", "--everyday");

        byDefault.Output.Should().Be(spelled.Output);
        AskedOf(byDefault).Should().Be((2, true, "bedtime"));
        Outlets(byDefault).Should().Equal("utility-socket", "workshop-bench", "loft-stairhead");
        byDefault.Code.Should().Be(1, "not every device can have two ways");
        AskedOf(oneWay).Should().Be((1, false, ""));
        Outlets(oneWay).Should().Equal("workshop-bench", "loft-stairhead");
        oneWay.Code.Should().Be(0);

        static (int Ways, bool HoldStates, string States) AskedOf(Run run) => (
            run.Json.GetProperty("ways").GetInt32(), run.Json.GetProperty("holdStates").GetBoolean(),
            string.Join(' ', run.Json.GetProperty("statesHeld").EnumerateArray().Select(state => state.GetString())));
        static IEnumerable<string?> Outlets(Run run) => run.Json.GetProperty("repeaters").EnumerateArray().Select(repeater => repeater.GetProperty("outlet").GetString());
    }

    [Fact]
    public async Task Three_ways_are_refused()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse, "--ways", "3");

        run.Code.Should().Be(2);
        run.ErrorLines.Should().ContainSingle().Which.Should().Contain("--ways: 3 is outside 1 to 2");
    }

    [Fact]
    public async Task Applied_on_quay_terrace_the_recommendation_leaves_every_state_that_must_hold_clean()
    {
        string terrace = Path.Combine(Run.Root, "floorplans", "quay-terrace");
        using TemporaryFolder folder = new();
        Run before = await Run.Of("rehearse", terrace, "--network", "plugs", "--draws", "0", "--json");
        before.Code.Should().Be(1, "as it stands bedtime drops a device");

        Run run = await Run.Of("repeaters", terrace, "--draws", "0", "--apply", folder["with-repeaters"]);
        run.Code.Should().Be(1, "three devices hang on one repeater each, whatever is plugged in");
        run.Output.Should().Contain("21 then have two").And.Contain("3 only one").And.Contain("nobody drops in bedtime");
        run.Error.Should().Contain("meshsim compare");

        foreach (string network in new[] { "plugs", "lighting", "meters", "remotes" })
            (await Run.Of("rehearse", folder["with-repeaters"], "--network", network, "--draws", "0")).Code.Should().Be(0, "{0} holds once the repeaters are in", network);
        Run again = await Run.Of("repeaters", folder["with-repeaters"], "--draws", "0", "--json");
        again.Output.Should().NotContain("\"outlet\"", "nothing more is needed");
        again.Output.Should().Contain("\"unreachableNow\": 0").And.NotContain("\"unreachableNow\": 1", "each device has a way");
        Run compare = await Run.Of("compare", terrace, folder["with-repeaters"], "--network", "plugs", "--step", "0.5");
        compare.Code.Should().Be(0, "nothing got worse");
        compare.Output.Should().Contain("repeater-loft-stairhead").And.Contain("repeater-workshop-bench").And.Contain("repeater-utility-socket");
    }

    [Fact]
    public async Task A_folder_that_holds_something_is_refused_before_any_work()
    {
        using TemporaryFolder folder = new();
        File.WriteAllText(folder["mine.txt"], "mine");

        Run run = await Run.Of("repeaters", Run.LongHouse, "--apply", folder.Path);

        run.Code.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.ErrorLines.Should().ContainSingle().Which.Should().Contain("never replaced");
        Directory.GetFiles(folder.Path).Should().ContainSingle();
    }

    [Fact]
    public async Task Pictures_of_sites_are_written_for_the_storeys_that_have_one()
    {
        using TemporaryFolder folder = new();

        Run run = await Run.Of("repeaters", Run.LongHouse, "--ways", "1", "--draws", "0", "--maps", folder["maps"], "--format", "svg");

        run.Code.Should().Be(0);
        string picture = Directory.GetFiles(folder["maps"], "*.svg").Should().ContainSingle().Subject;
        string svg = await File.ReadAllTextAsync(picture, TestContext.Current.CancellationToken);
        svg.Should().Contain("add repeater: second-outlet").And.Contain("zone 1");
    }

    [Fact]
    public async Task Json_of_the_review_has_zone_second_best_and_chances()
    {
        Run run = await Run.Of("repeaters", Run.LongHouse, "--json", "--draws", "640", "--seed", "5");

        JsonElement review = run.Json.GetProperty("review");
        JsonElement site = review.GetProperty("sites").EnumerateArray().Should().ContainSingle().Subject;
        site.GetProperty("spareDb").GetDouble().Should().BePositive();
        site.GetProperty("zone").GetProperty("areaSquareMetres").GetDouble().Should().BePositive();
        site.GetProperty("secondBest").GetProperty("repeaters").ValueKind.Should().Be(JsonValueKind.Array);
        review.GetProperty("chances").GetProperty("draws").GetInt32().Should().Be(640);
        review.GetProperty("chances").GetProperty("seed").GetInt32().Should().Be(5);
        JsonElement both = review.GetProperty("chances").GetProperty("goal").GetProperty("both");
        both.GetProperty("low").GetDouble().Should().BeLessThanOrEqualTo(both.GetProperty("probability").GetDouble());
        review.GetProperty("pessimistic").GetProperty("isProven").GetBoolean().Should().BeTrue();
        (await Run.Of("repeaters", Run.LongHouse, "--json", "--draws", "0")).Json.GetProperty("review").GetProperty("chances").ValueKind.Should().Be(JsonValueKind.Null);
    }
}
