using MeshSim.Devices;
using MeshSim.Files.Homes;
using MeshSim.Files.Tables;
using MeshSim.Files.Tests.Fixtures;
using MeshSim.Files.Yaml;
using MeshSim.Propagation;
using MeshSim.Radio;

namespace MeshSim.Files.Tests;

/// <summary>The page that explains the home folder must not lie.</summary>
public sealed class DocumentationTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "home-folder.md"));

    [Fact]
    public void The_example_of_the_page_is_a_home_without_problems()
    {
        using TemporaryFolder folder = new();
        foreach (string name in new[] { "home.yaml", "devices.csv", "outlets.csv", "readings.csv" })
            File.WriteAllText(folder.File(name), Block(name));

        HomeReadResult result = folder.Read();

        result.Problems.Should().BeEmpty();
        result.Notices.Should().BeEmpty();
        result.Home!.Devices.Should().HaveCount(6);
        result.Home.Readings.Should().HaveCount(2);
    }

    [Fact]
    public void Every_column_is_on_the_page() =>
        DeviceTable.Required.AddRange(DeviceTable.Optional).AddRange(OutletTable.Required).AddRange(OutletTable.Optional).AddRange(ReadingTable.Required)
            .Should().OnlyContain(column => Page.Contains($"`{column}`", StringComparison.Ordinal));

    [Fact]
    public void Stated_defaults_and_limits_are_those_of_the_code()
    {
        Page.Should().Contain(FormattableString.Invariant($"{ConstructionReader.AssumedSpread.Value} (assumed)"));
        Page.Should().Contain(FormattableString.Invariant($"clear height, {StoreyReader.CeilingMetres}"));
        PlanningParameters defaults = new();
        Page.Should().Contain(FormattableString.Invariant(
            $"`exponent` (path-loss exponent, {LogDistance.Exponent.Min} to {LogDistance.Exponent.Max}, default {defaults.Exponent})"));
        Page.Should().Contain(FormattableString.Invariant($"{Detour.ExtraDb.Min} to {Detour.ExtraDb.Max} dB, default {defaults.Detour.Value})"));
        Page.Should().Contain(FormattableString.Invariant(
            $"`shadowing` (standard deviation, dB, {FadingMargin.ShadowingDb.Min} to {FadingMargin.ShadowingDb.Max}, default {defaults.Shadowing.Value})"));
        Page.Should().Contain(FormattableString.Invariant(
            $"{FadingMargin.Availability.Min} to {FadingMargin.Availability.Max}, default {defaults.Availability})"));
        Page.Should().Contain(FormattableString.Invariant($"`{DeviceTable.DefaultMounting}` when blank"));
        Page.Should().Contain(FormattableString.Invariant($"moved {OffWall.DistanceMetres * 100} cm into the room"));
        Page.Should().Contain(FormattableString.Invariant($"beyond {HomeFolder.LongestHomeFileBytes / 1024 / 1024} MB or {YamlTree.DeepestLevel} levels"));
    }

    [Fact]
    public void Stated_costs_are_those_of_the_code()
    {
        PlacementCosts costs = new();
        Page.Should().Contain(FormattableString.Invariant($"plugged in; {PlacementCosts.RepeaterUnits.Min} to {PlacementCosts.RepeaterUnits.Max}, default {costs.Repeater} |"));
        Page.Should().Contain(FormattableString.Invariant($"sticks in it; {PlacementCosts.OtherUnits.Min} to {PlacementCosts.OtherUnits.Max}, default {costs.HubMove} |"));
        Page.Should().Contain(FormattableString.Invariant($"manual switch; {PlacementCosts.OtherUnits.Min} to {PlacementCosts.OtherUnits.Max}, default {costs.SwitchGivenUp} |"));
    }

    // The fenced block that follows the name of its file on a line of its own.
    private static string Block(string name)
    {
        int heading = Page.IndexOf($"\n`{name}`:\n", StringComparison.Ordinal);
        int start = Page.IndexOf('\n', Page.IndexOf("```", heading, StringComparison.Ordinal)) + 1;
        return Page[start..Page.IndexOf("```", start, StringComparison.Ordinal)];
    }
}
