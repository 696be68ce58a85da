using MeshSim.Cli.Outputs;

namespace MeshSim.Cli.Tests.Outputs;

public sealed class FileNamesTests
{
    [Theory]
    [InlineData("plugs", "plugs")]
    [InlineData("Ground floor", "ground-floor")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("1. Stock (Süd)", "1-stock-s-d")]
    [InlineData("地下", "x")]
    public void A_slug_is_safe_in_any_folder(string name, string slug) => FileNames.Slug(name).Should().Be(slug);

    [Fact]
    public void Names_that_come_out_alike_are_numbered() =>
        FileNames.DistinctSlugs(["loft", "Loft", "loft 2", "loft!"]).Should().Equal("loft", "loft-2", "loft-2-2", "loft-3");
}
