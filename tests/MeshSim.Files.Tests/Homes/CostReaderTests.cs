using MeshSim.Devices;
using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Homes;

public sealed class CostReaderTests
{
    private const string Before = "region: EU";

    [Fact]
    public void Costs_arrive_and_are_written()
    {
        using TemporaryFolder folder = ChangedSample.Folder("home.yaml", Before, $"{Before}\ncosts: {{ repeater: 25, hub move: 100, switch given up: 0 }}");
        PlacementCosts costs = folder.Read().Home!.Costs;
        costs.Should().Be(new PlacementCosts { Repeater = 25, HubMove = 100, SwitchGivenUp = 0 });

        HomeWriter.Write(folder.Read().Home!, folder.File("copy"));
        HomeFolder.Read(folder.File("copy")).Home!.Costs.Should().Be(costs);
    }

    [Fact]
    public void What_is_not_said_has_its_default()
    {
        using TemporaryFolder folder = ChangedSample.Folder("home.yaml", Before, $"{Before}\ncosts: {{ hub move: 5 }}");
        folder.Read().Home!.Costs.Should().Be(new PlacementCosts { HubMove = 5 });
        using TemporaryFolder plain = new TemporaryFolder().WithSample();
        plain.Read().Home!.Costs.Should().Be(new PlacementCosts());
    }

    [Theory]
    [InlineData("costs: { repeater: 0 }", "home.yaml(3,20): error: \"repeater\" is 0; it must be 1 to 10000 (units)")]
    [InlineData("costs: { repeater: 2.5 }", "home.yaml(3,20): error: \"repeater\" must be a whole number; write 2 or 3")]
    [InlineData("costs: { hub: 3 }", "home.yaml(3,10): error: the list of costs has no key \"hub\"; did you mean \"hub move\"?")]
    [InlineData("costs: 3", "home.yaml(3,8): error: the list of costs is written as keys with values, not as \"3\"; known keys: repeater, hub move, switch given up")]
    public void Costs_that_cannot_be_are_errors(string line, params string[] said) =>
        ChangedSample.Says("home.yaml", Before, $"{Before}\n{line}").Should().Equal(said);
}
