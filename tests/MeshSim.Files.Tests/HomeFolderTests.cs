using System.Globalization;
using System.Text;
using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests;

public sealed class HomeFolderTests
{
    [Fact]
    public void The_sample_home_has_no_problems()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();

        folder.Says().Should().BeEmpty();
    }

    [Theory]
    [InlineData("quay-terrace")]
    [InlineData("harbour-flat")]
    public void A_shipped_home_has_no_problems(string name)
    {
        HomeReadResult result = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", name));

        result.Problems.Should().BeEmpty();
        result.Notices.Should().BeEmpty();
        result.Home.Should().NotBeNull();
    }

    [Fact]
    public void A_folder_that_is_not_there_is_reported()
    {
        using TemporaryFolder folder = new();

        HomeReadResult result = HomeFolder.Read(folder.File("nowhere"));

        result.Home.Should().BeNull();
        result.Problems.Select(problem => problem.ToString())
            .Should().Equal(folder.File("nowhere") + "(1,1): error: there is no such folder; name a folder that holds a home.yaml, or make one with meshsim new");
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_named()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        string file = folder.File("home.yaml");

        HomeFolder.Read(file).Problems.Select(problem => problem.ToString())
            .Should().Equal(file + "(1,1): error: this is a file, not a folder; name a folder that holds a home.yaml, or make one with meshsim new");
    }

    [Fact]
    public void Missing_files_are_reported_together()
    {
        using TemporaryFolder folder = new();

        folder.Says().Should().Equal(
            "home.yaml(1,1): error: the file is missing; every home folder has it",
            "devices.csv(1,1): error: the file is missing; every home folder has it");
    }

    [Fact]
    public void A_misspelt_file_name_is_found()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        File.Move(folder.File("devices.csv"), folder.File("device.csv"));
        File.Move(folder.File("outlets.csv"), folder.File("outlet.csv"));

        folder.Says().Should().Equal(
            "devices.csv(1,1): error: the file is missing; is \"device.csv\" meant? Then rename it",
            "outlets.csv(1,1): notice: there is no such file; is \"outlet.csv\" meant? It is not read under that name");
    }

    [Fact]
    public void Outlets_and_readings_may_be_missing()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        File.Delete(folder.File("outlets.csv"));
        File.Delete(folder.File("readings.csv"));

        HomeReadResult result = folder.Read();

        result.Problems.Should().BeEmpty();
        result.Home!.Outlets.Should().NotBeEmpty().And.OnlyContain(outlet => outlet.IsAssumed);
        result.Home.Readings.Should().BeEmpty();
    }

    [Theory]
    [InlineData("home.yaml", "home.yaml(1,1): error: the file is empty; write a home, starting with \"home:\" and its name")]
    [InlineData(
        "devices.csv",
        "devices.csv(1,1): error: the file is empty; the first line names the columns: "
            + "id,network,power,storey,x,y,height,name,kind,role,room,mounting,circuit,switched_by,tx_dbm,note,before,after")]
    public void An_empty_file_is_reported(string name, string said)
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        File.WriteAllText(folder.File(name), "");

        folder.Says().Should().Equal(said);
    }

    [Fact]
    public void Bytes_that_are_no_text_are_reported_at_their_place()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        File.WriteAllBytes(folder.File("home.yaml"), [.. "home: é\nx: "u8, 0, 1, 2]);
        File.WriteAllBytes(folder.File("outlets.csv"), [.. "id,storey\ncaf"u8, 0xE9]);
        File.WriteAllBytes(folder.File("readings.csv"), [.. Encoding.Unicode.Preamble, .. "from"u8]);

        folder.Says().Should().Equal(
            "home.yaml(2,4): error: the file is not text: it holds a zero byte; this must be a text file in UTF-8",
            "outlets.csv(2,4): error: the file is not UTF-8 text: it holds the byte 0xE9; save it as UTF-8",
            "readings.csv(1,1): error: the file is UTF-16 text; save it as UTF-8");
    }

    [Fact]
    public void A_file_that_is_too_long_or_no_file_is_refused()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        File.WriteAllText(folder.File("home.yaml"), new string('#', HomeFolder.LongestHomeFileBytes + 1));
        File.Delete(folder.File("devices.csv"));
        Directory.CreateDirectory(folder.File("devices.csv"));

        folder.Says().Should().Equal(
            "home.yaml(1,1): error: the file is longer than 4 MB; a home folder holds text of a few hundred kB at most",
            "devices.csv(1,1): error: the file cannot be read; check that it is a file and that you may read it");
    }

    [Fact]
    public void All_problems_come_in_one_run_by_file_line_and_column()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample(
            home: text =>
                text.Replace("region: EU", "region: UE", StringComparison.Ordinal)
                    .Replace("width: 1.2", "width: 1,2", StringComparison.Ordinal)
                    .Replace("to: [2, 4] }", "to: [2.5, 4] }", StringComparison.Ordinal),
            devices: text => text.Replace("mains,router", "mians,ruter", StringComparison.Ordinal),
            outlets: text => text.Replace("0.1,3,0.3", "0.1,3,9", StringComparison.Ordinal),
            readings: text => text.Replace("-61", "-61 dBm", StringComparison.Ordinal));

        folder.Says().Should().Equal(
            "home.yaml(2,9): error: unknown region \"UE\"; did you mean \"EU\"?",
            "home.yaml(15,27): error: \"kitchen\" overlaps \"hall\" near (2, 0); outlines along the centre lines of walls, so that neighbours share an edge",
            "home.yaml(22,76): error: an opening has no key \"2\"; if the comma before it is meant as a decimal comma, use a point",
            "devices.csv(4,22): error: power: unknown word \"mians\"; did you mean \"mains\"?",
            "devices.csv(4,28): error: role: unknown word \"ruter\"; did you mean \"router\"?",
            "outlets.csv(2,21): error: height is 9, above the ceiling of \"ground\"; it must be 0 to 2.5 m above the floor of its storey",
            "readings.csv(2,12): error: rssi_dbm: \"-61 dBm\" is not a number; leave the unit out: -61");
    }

    [Fact]
    public void Another_culture_says_and_reads_the_same()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        german.NumberFormat.NumberDecimalSeparator = ",";
        german.NumberFormat.NumberGroupSeparator = ".";
        german.NumberFormat.NegativeSign = "−";
        using TemporaryFolder good = new TemporaryFolder().WithSample();
        using TemporaryFolder bad = new TemporaryFolder().WithSample(home: text => text.Replace("at: [1, 1, 2.2]", "at: [1, 1, -2.25]", StringComparison.Ordinal));
        string[] said = bad.Says();
        try
        {
            CultureInfo.CurrentCulture = german;
            bad.Says().Should().Equal(said);
            good.Says().Should().BeEmpty();
            good.Read().Home!.FloorPlan.Storeys[0].CeilingMetres.Should().Be(2.5);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
