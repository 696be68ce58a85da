using MeshSim.Files.Tests.Fixtures;
using MeshSim.FloorPlans;

namespace MeshSim.Files.Tests;

public sealed class HomeTemplatesTests
{
    public static TheoryData<string> Names => [.. HomeTemplates.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_is_in_order_as_it_stands(string name)
    {
        using TemporaryFolder folder = new();
        HomeTemplates.Write(name, folder.Path);

        folder.Says().Should().BeEmpty();
        HomeReadResult result = folder.Read();
        result.Home!.Devices.Should().HaveCountGreaterThan(5);
        result.Home.FloorPlan.Storeys.Should().OnlyContain(storey => storey.Rooms.Length >= 3 && storey.Walls.Any(wall => wall.Openings.Any(opening => opening.Kind == OpeningKind.Window)));
        File.ReadAllLines(folder.File("home.yaml")).Count(line => line.Contains('#', StringComparison.Ordinal)).Should().BeGreaterThan(10, "a person learns the format from it");
    }

    [Theory]
    [InlineData("terrace", "brick-full")]
    [InlineData("semi-detached", "cavity-brick")]
    [InlineData("flat", "concrete-150")]
    [InlineData("bungalow", "cavity-brick-insulated")]
    [InlineData("loft", "timber-frame-outer")]
    public void Its_outer_walls_are_those_of_its_kind(string name, string construction)
    {
        using TemporaryFolder folder = new();
        HomeTemplates.Write(name, folder.File("home"));

        HomeFolder.Read(folder.File("home")).Home!.FloorPlan.Storeys[0].Walls
            .Where(wall => wall.Rooms.Length == 1).Select(wall => wall.Construction.Value).Should().Contain(construction);
    }

    [Fact]
    public void One_that_is_not_there_is_refused() =>
        FluentActions.Invoking(() => HomeTemplates.Write("castle", "x")).Should().Throw<ArgumentException>().WithMessage("no template is called \"castle\"*");
}
