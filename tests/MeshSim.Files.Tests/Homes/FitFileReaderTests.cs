using MeshSim.Devices;
using MeshSim.Files.Tests.Fixtures;
using MeshSim.Files.Writing;
using MeshSim.Propagation;

namespace MeshSim.Files.Tests.Homes;

public sealed class FitFileReaderTests
{
    private const string Good = """
        fits:
          - network: plugs
            model: log-distance
            readings: 12
            shadowing: 4.5
            exponent: { value: 2.2, error: 0.1, readings: 12 }
            constructions:
              - { construction: brick-half, correction: 1.5, error: 0.5, readings: 7 }
            mountings:
              - { mounting: surface, correction: 0.5, error: 1, readings: 12 }
            common offset: { offset: -2, error: 1, readings: 12 }
            offsets:
              - { device: stick-24, offset: 3, error: 1, readings: 6 }
            correlations:
              - [-0.4]
              - [0.1, -0.2]

        """;

    [Fact]
    public void Fitted_values_come_with_the_home_and_change_what_is_computed()
    {
        Home plain = Read("").Home!, fitted = Read(Good).Home!;
        Network network = fitted.Networks[0];

        network.Fit!.Exponent.Should().Be(2.2);
        network.Fit.Covariance(0, 1).Should().BeApproximately(-0.4 * 0.1 * 0.5, 1e-12);
        network.Fit.Offsets.Should().HaveCount(2);
        fitted.ParametersOf(network).Shadowing.Value.Should().Be(4.5);
        Losses(fitted).Should().NotEqual(Losses(plain));
        fitted.Networks.Skip(1).Should().OnlyContain(other => other.Fit == null, "each network has its own");
    }

    [Fact]
    public void A_way_round_is_fitted_beside_the_exponent_and_needs_not_be()
    {
        const string detour = "    detour: { value: 14, error: 3, readings: 9 }\n    constructions:";
        string text = Good.Replace("model: log-distance", "model: detour", StringComparison.Ordinal)
            .Replace("    constructions:", detour, StringComparison.Ordinal)
            .Replace("      - [-0.4]\n", "      - [0.3]\n      - [-0.4, 0]\n", StringComparison.Ordinal)
            .Replace("[0.1, -0.2]", "[0.1, -0.2, 0]", StringComparison.Ordinal);
        Home fitted = Read(text).Home!, without = Read(Good).Home!;

        fitted.ParametersOf(fitted.Networks[0]).Detour.Value.Should().Be(14);
        fitted.Networks[0].Fit!.Covariance(0, 1).Should().BeApproximately(0.3 * 0.1 * 3, 1e-12);
        FitText.Of(fitted).Should().Contain(detour.Split('\n')[0]);
        without.ParametersOf(without.Networks[0]).Detour.Should().Be(without.Parameters.Detour);
    }

    [Fact]
    public void Deleting_the_file_restores_the_catalogue()
    {
        using TemporaryFolder folder = Folder(Good);
        double[] fitted = Losses(HomeFolder.Read(folder.Path).Home!);

        File.Delete(Path.Combine(folder.Path, HomeFileNames.Fit));

        Losses(HomeFolder.Read(folder.Path).Home!).Should().Equal(Losses(Read("").Home!)).And.NotEqual(fitted);
    }

    [Fact]
    public void What_is_written_reads_the_same_and_a_written_home_carries_it_along()
    {
        Home home = Read(Good).Home!;
        using var target = new TemporaryFolder();

        HomeWriter.Write(home, target.Path);
        Home again = HomeFolder.Read(target.Path).Home!;

        FitText.Of(again).Should().Be(FitText.Of(home)).And.Be(File.ReadAllText(Path.Combine(target.Path, HomeFileNames.Fit)));
        Losses(again).Should().Equal(Losses(home));
        HomeWriter.Write(Read("").Home!, target.Path);
        File.Exists(Path.Combine(target.Path, HomeFileNames.Fit)).Should().BeFalse("that home has nothing fitted");
    }

    [Theory]
    [InlineData("network: plugs", "network: plugz", "(2,14): error: no network is called \"plugz\"; did you mean \"plugs\"?; fit again, or delete the file")]
    [InlineData("model: log-distance", "model: multi-wall", "(3,12): error: \"multi-wall\" is no model that can be fitted; write detour or log-distance")]
    [InlineData("value: 2.2", "value: 9", "(6,24): error: \"value\" is 9; it must be 1 to 6")]
    [InlineData("    constructions:", "    detour: { value: 70, error: 1 }\n    constructions:", "(7,22): error: \"value\" is 70; it must be 5 to 60")]
    [InlineData("brick-half", "brick-hall", "(8,25): error: no construction is called \"brick-hall\"; did you mean \"brick-half\"?; fit again, or delete the file")]
    [InlineData("error: 0.5", "error: -1", "(8,61): error: \"error\" is -1; it must be 0 to 1000")]
    [InlineData("mounting: surface", "mounting: surfase", "(10,21): error: no mounting is called \"surfase\"; did you mean \"surface\"?; fit again, or delete the file")]
    [InlineData("device: stick-24", "device: stick-25", "(13,19): error: no device is called \"stick-25\"")]
    [InlineData("[0.1, -0.2]", "[0.1]", "(16,9): error: row 2 of the correlations has 1 numbers; it must have 2; fit again")]
    [InlineData("      - [0.1, -0.2]\n", "", "(15,7): error: 1 rows of correlations for 3 parameters; there must be 2; fit again")]
    [InlineData("[-0.4]", "[-1.4]", "(15,10): error: a correlation is -1.4; it must be -1 to 1")]
    [InlineData("readings: 12\n    shadowing", "reading: 12\n    shadowing", "(4,5): error: a fit has no key \"reading\"; did you mean \"readings\"?")]
    public void What_is_wrong_is_said_with_its_place(string good, string bad, string message)
    {
        HomeReadResult result = Read(Good.Replace(good, bad, StringComparison.Ordinal));

        result.Home.Should().BeNull();
        result.Problems.Select(problem => problem.ToString()).Should().ContainSingle(line => line.Contains("fit.yaml" + message, StringComparison.Ordinal));
    }

    private static double[] Losses(Home home)
    {
        IPathLossModel model = home.ModelOf(home.Networks[0], ModelName.LogDistance, state: null);
        Device[] devices = [.. home.DevicesOf(home.Networks[0])];
        return [.. devices.Skip(1).Select(device => model.Between(home.PositionOf(devices[0]), home.PositionOf(device)).Total.Value)];
    }

    private static HomeReadResult Read(string fit)
    {
        using TemporaryFolder folder = Folder(fit);
        return HomeFolder.Read(folder.Path);
    }

    private static TemporaryFolder Folder(string fit)
    {
        var folder = new TemporaryFolder();
        string terrace = Path.Combine(SourceTree.Root, "floorplans", "quay-terrace");
        foreach (string name in new[] { HomeFileNames.Home, HomeFileNames.Devices, HomeFileNames.Outlets })
            File.Copy(Path.Combine(terrace, name), Path.Combine(folder.Path, name));
        if (fit.Length > 0) File.WriteAllText(Path.Combine(folder.Path, HomeFileNames.Fit), fit);
        return folder;
    }
}
