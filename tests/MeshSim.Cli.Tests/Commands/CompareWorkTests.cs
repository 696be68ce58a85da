using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class CompareWorkTests
{
    [Fact]
    public async Task What_was_changed_and_what_came_of_it_is_as_approved()
    {
        using var temporary = new TemporaryFolder();
        string after = await Changed(temporary, text => text
            .Replace("lamp,standing lamp,plugs,bulb,mains,,ground,9,2,1,", "lamp,standing lamp,plugs,bulb,mains,,ground,6,2,1,", StringComparison.Ordinal)
            .Replace(
                "near-plug,plug beside the stick,plugs,plug,mains,,ground,4,2,1,first,surface,sockets,",
                "new-plug,plug of the desk,plugs,plug,mains,,ground,4,3,1,first,surface,sockets,",
                StringComparison.Ordinal));

        Run run = await Run.Of("compare", Run.SwitchedLamp, after, "--step", "0.5");

        run.Code.Should().Be(1, "the lamp no longer reaches the last room");
        Approval.Verify(run.Output, "compare-switched-lamp.txt");
        run.Output.Split('\n').Should().OnlyContain(line => line.Length <= 100);
    }

    [Fact]
    public async Task A_change_for_the_better_ends_with_0()
    {
        using var temporary = new TemporaryFolder();
        string after = await Changed(temporary, text => text + "spare,plug beside the lamp,plugs,plug,mains,,ground,9,2.5,1,second,surface,spare,,,\n");

        Run run = await Run.Of("compare", Run.SwitchedLamp, after, "--step", "1", "--json", "--network", "plugs");

        run.Code.Should().Be(0);
        JsonElement evening = run.Json.GetProperty("networks")[0].GetProperty("outages").EnumerateArray().First(outage => outage.GetProperty("name").GetString() == "evening");
        evening.GetProperty("dropsNoLonger").EnumerateArray().Select(id => id.GetString()).Should().Equal("far-sensor");
        evening.GetProperty("mustHold").GetBoolean().Should().BeTrue();
    }

    [Fact]
    public async Task The_same_home_twice_is_the_same_and_ends_with_0()
    {
        Run run = await Run.Of("compare", Run.SwitchedLamp, Run.SwitchedLamp, "--step", "1");

        run.Code.Should().Be(0);
        run.Output.Should().StartWith("The two homes are the same.\n").And.Contain("plugs: all as before.");
    }

    [Fact]
    public async Task Pictures_go_into_a_folder_that_appears_whole()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("compare", Run.TwoRooms, Run.TwoRooms, "--step", "1", "--network", "plugs", "--out", temporary["maps"], "--json");

        run.Code.Should().Be(0);
        string picture = run.Json.GetProperty("networks")[0].GetProperty("pictures")[0].GetString()!;
        picture.Should().Be("change_plugs_ground.png");
        File.ReadAllBytes(Path.Combine(temporary["maps"], picture))[1..4].Should().Equal("PNG"u8.ToArray());
    }

    [Fact]
    public async Task Problems_of_both_homes_come_in_one_run()
    {
        using var temporary = new TemporaryFolder();
        string one = await Changed(temporary, text => text.Replace("battery", "batery", StringComparison.Ordinal), "one");
        string other = await Changed(temporary, text => text.Replace(",plugs,", ",plug,", StringComparison.Ordinal), "other");

        Run run = await Run.Of("compare", one, other, "--out", temporary["maps"]);

        (run.Code, run.Output).Should().Be((2, ""));
        run.ErrorLines.Should().Contain(line => line.StartsWith(one, StringComparison.Ordinal)).And.Contain(line => line.StartsWith(other, StringComparison.Ordinal));
        Directory.Exists(temporary["maps"]).Should().BeFalse();
    }

    [Fact]
    public async Task Homes_with_nothing_in_common_are_refused_with_the_reason()
    {
        string plans = Path.Combine(Run.Root, "floorplans");

        Run run = await Run.Of("compare", Path.Combine(plans, "quay-terrace"), Path.Combine(plans, "harbour-flat"));

        (run.Code, run.Output).Should().Be((2, ""));
        run.Error.Should().Contain("no storey in common");
    }

    [Fact]
    public async Task A_network_of_one_home_alone_is_named()
    {
        Run run = await Run.Of("compare", Run.SwitchedLamp, Run.TwoRooms, "--step", "1");

        run.Output.Should().Contain("Not compared, because only one of the homes has it: meters and lighting.").And.Contain("The building itself is different");
    }

    private static async Task<string> Changed(TemporaryFolder temporary, Func<string, string> change, string name = "after")
    {
        string folder = Directory.CreateDirectory(temporary[name]).FullName;
        foreach (string file in Directory.GetFiles(Run.SwitchedLamp))
        {
            string text = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
            string target = Path.Combine(folder, Path.GetFileName(file));
            await File.WriteAllTextAsync(target, file.EndsWith("devices.csv", StringComparison.Ordinal) ? change(text) : text, TestContext.Current.CancellationToken);
        }

        return folder;
    }
}
