using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class BandsWorkTests
{
    [Fact]
    public async Task Rooms_and_devices_are_compared_as_approved()
    {
        Run run = await Run.Of("bands", Run.SwitchedLamp, "--step", "0.5");

        run.Code.Should().Be(0);
        Approval.Verify(run.Output, "bands-switched-lamp.txt");
    }

    [Fact]
    public async Task The_other_way_round_every_sign_turns()
    {
        string[] line = ["bands", Run.SwitchedLamp, "--step", "1", "--json", "--between"];
        JsonElement one = (await Run.Of([.. line, "lighting", "plugs"])).Json, other = (await Run.Of([.. line, "plugs", "lighting"])).Json;

        foreach ((JsonElement there, JsonElement back) in one.GetProperty("devices").EnumerateArray().Zip(other.GetProperty("devices").EnumerateArray()))
        {
            if (there.GetProperty("difference").ValueKind == JsonValueKind.Null) continue;
            there.GetProperty("difference").GetProperty("totalDb").GetDouble().Should().Be(-back.GetProperty("difference").GetProperty("totalDb").GetDouble());
        }
    }

    [Fact]
    public async Task Pictures_go_into_a_folder_that_appears_whole()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("bands", Run.SwitchedLamp, "--step", "1", "--out", temporary["maps"], "--json");

        run.Code.Should().Be(0);
        string picture = run.Json.GetProperty("pictures")[0].GetString()!;
        picture.Should().Be("difference_lighting_plugs_ground.png");
        File.ReadAllBytes(Path.Combine(temporary["maps"], picture))[1..4].Should().Equal("PNG"u8.ToArray());
    }

    [Theory]
    [InlineData("plugs", "plugs", "two different")]
    [InlineData("plugs", "lightning", "did you mean \"lighting\"?")]
    public async Task Networks_that_cannot_be_compared_are_refused(string first, string second, string reason)
    {
        Run run = await Run.Of("bands", Run.SwitchedLamp, "--between", first, second);

        run.Code.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain(reason);
    }

    [Fact]
    public async Task A_home_of_one_band_is_told_what_to_name()
    {
        Run run = await Run.Of("bands", Run.LongHouse);

        run.Code.Should().Be(2);
        run.Error.Should().Contain("--between");
    }
}
