using CsCheck;
using MeshSim.Devices;
using MeshSim.Files.Tests.Fixtures;
using MeshSim.FloorPlans;
using MeshSim.Materials;

namespace MeshSim.Files.Tests;

public sealed class HomeWriterTests
{
    private const int RandomHomes = 60;

    [Fact]
    public void The_sample_home_is_read_back_with_the_same_meaning()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();

        ReadBackShouldMeanTheSame(folder.Read().Home!);
    }

    [Theory]
    [InlineData("quay-terrace")]
    [InlineData("harbour-flat")]
    public void A_shipped_home_is_read_back_with_the_same_meaning(string name) =>
        ReadBackShouldMeanTheSame(HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", name)).Home!);

    [Fact]
    public void Random_homes_are_read_back_with_the_same_meaning() => RandomHome.Folder.Sample(
        files =>
        {
            using TemporaryFolder folder = new();
            File.WriteAllText(folder.File("home.yaml"), files.Home);
            File.WriteAllText(folder.File("devices.csv"), files.Devices);
            folder.Says().Should().BeEmpty();
            ReadBackShouldMeanTheSame(folder.Read().Home!);
        },
        iter: RandomHomes);

    [Fact]
    public void Writing_twice_gives_the_same_bytes_with_line_feeds()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        Home home = folder.Read().Home!;

        HomeWriter.Write(home, folder.File("a"));
        HomeWriter.Write(HomeFolder.Read(folder.File("a")).Home!, folder.File("b"));

        foreach (string name in new[] { "home.yaml", "devices.csv", "outlets.csv", "readings.csv" })
        {
            string written = File.ReadAllText(Path.Combine(folder.File("a"), name));
            File.ReadAllText(Path.Combine(folder.File("b"), name)).Should().Be(written).And.NotContain("\r").And.EndWith("\n");
        }
    }

    [Fact]
    public void Other_files_in_the_target_stay_and_old_tables_go()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        Home home = folder.Read().Home! with { Readings = [] };
        File.WriteAllText(folder.File("remarks.txt"), "mine");

        HomeWriter.Write(home, folder.Path);

        Directory.EnumerateFiles(folder.Path).Select(Path.GetFileName).Should().BeEquivalentTo("home.yaml", "devices.csv", "outlets.csv", "remarks.txt");
        Meaning.Of(folder.Read().Home!).Should().Equal(Meaning.Of(home));
    }

    [Fact]
    public void Assumed_outlets_are_not_written()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        File.Delete(folder.File("outlets.csv"));

        HomeWriter.Write(folder.Read().Home!, folder.File("copy"));

        File.Exists(Path.Combine(folder.File("copy"), "outlets.csv")).Should().BeFalse();
        File.Exists(Path.Combine(folder.File("copy"), "readings.csv")).Should().BeTrue();
    }

    [Fact]
    public void What_a_folder_cannot_say_is_refused_and_nothing_is_written()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        Home home = folder.Read().Home!;
        string before = File.ReadAllText(folder.File("home.yaml"));
        Construction brick = home.Constructions[new ConstructionName("brick-full")];

        ShouldRefuse(home with { Constructions = home.Constructions.SetItem(brick.Name, brick with { Spread = new(9) }) }, "the construction \"brick-full\" is not as in the catalogue*");
        ShouldRefuse(home with { Networks = [home.Networks[0] with { Radio = home.Networks[0].Radio with { HopLimit = 99 } }] }, "the radio \"ieee802154-2450\" is not as in the catalogue*");
        ShouldRefuse(
            home with { FloorPlan = new([home.FloorPlan.Storeys[0], home.FloorPlan.Storeys[1] with { ElevationMetres = 9 }]) },
            "the storey \"first\" does not stand on the one below*");
        ShouldRefuse(home with { Devices = [home.Devices[0] with { Name = "two\nlines" }, .. home.Devices[1..]] }, "*cannot say this*");

        File.ReadAllText(folder.File("home.yaml")).Should().Be(before);
        Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(folder.Path)!, Path.GetFileName(folder.Path) + "*").Should().Equal(folder.Path);

        void ShouldRefuse(Home changed, string message) =>
            FluentActions.Invoking(() => HomeWriter.Write(changed, folder.Path)).Should().Throw<ArgumentException>().WithMessage(message);
    }

    private static void ReadBackShouldMeanTheSame(Home home)
    {
        using TemporaryFolder folder = new();
        HomeWriter.Write(home, folder.File("copy"));

        HomeReadResult result = HomeFolder.Read(folder.File("copy"));

        result.Problems.Should().BeEmpty();
        Meaning.Of(result.Home!).Should().Equal(Meaning.Of(home));
    }
}
