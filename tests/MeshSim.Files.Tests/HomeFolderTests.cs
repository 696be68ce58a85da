using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests;

public sealed class HomeFolderTests
{
    [Fact]
    public void The_sample_home_has_no_problems()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();

        HomeReadResult result = folder.Read();

        result.Problems.Should().BeEmpty();
        result.Notices.Should().BeEmpty();
        result.Home.Should().NotBeNull();
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
}
