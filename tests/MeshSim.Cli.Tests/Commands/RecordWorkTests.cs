using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class RecordWorkTests
{
    private static readonly string Wired = Path.Combine(Run.Data, "wired-house");

    [Fact]
    public async Task The_record_says_what_was_approved_and_fits_80_columns()
    {
        Run run = await Run.Of("record", Wired);

        run.Code.Should().Be(0);
        run.Output.Split('\n').Should().OnlyContain(line => line.Length <= 80);
        Approval.Verify(run.Output, "record-wired-house.txt");
    }

    [Fact]
    public async Task The_table_for_the_binder_has_a_line_for_each_device_of_all_networks()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("record", Path.Combine(Run.Root, "floorplans", "quay-terrace"), "--out", temporary["record.csv"]);

        run.Code.Should().Be(0);
        string[] lines = (await File.ReadAllTextAsync(temporary["record.csv"], TestContext.Current.CancellationToken)).Split('\n');
        lines.Should().HaveCount(48 + 2, "48 devices, a heading, and nothing after the last line feed");
        lines[0].Should().StartWith("id,name,network,kind,power,role,storey,room,x_m,y_m,height_m,mounting,hidden,circuit,isolated_at,");
        lines[1].Should().StartWith("stick-24,2.4 GHz stick of the hub,plugs,stick,usb,coordinator,ground,hall,0.3,6.9,0.6,in-cupboard,");
    }

    [Fact]
    public async Task Json_has_the_steps_as_words_and_as_names()
    {
        JsonElement light = (await Run.Of("record", Wired, "--json")).Json.GetProperty("devices")[2];

        light.GetProperty("isolatedAt").GetString().Should().Be("consumer unit in the hall, way 1");
        light.GetProperty("takeOut").EnumerateArray().Select(step => step.GetString()).Should().Equal(
            "call-electrician", "do-not-rely-on-switch", "isolate-circuit", "lock-off", "prove-dead", "disconnect", "put-back");
        light.GetProperty("takeOutWords")[2].GetString().Should().Be("3. Isolate circuit \"lights\" at: consumer unit in the hall, way 1.");
        light.GetProperty("before").GetString().Should().Be("a plain two-way switch\ndrawing E3, sheet 2");
    }

    [Fact]
    public async Task A_file_of_the_home_is_not_overwritten()
    {
        Run run = await Run.Of("record", Wired, "--out", Path.Combine(Wired, "devices.csv"));

        (run.Code, run.Output).Should().Be((2, ""));
    }
}
