using MeshSim.Cli.Wording;
using MeshSim.FloorPlans.Descriptions;

namespace MeshSim.Cli.Tests.Wording;

public sealed class ZoneWordsTests
{
    [Theory]
    [InlineData(1, "all of loft")]
    [InlineData(0.7, "most of loft, more to its west")]
    [InlineData(0.5, "the west half of loft")]
    [InlineData(0.3, "the west end of loft")]
    [InlineData(0.03, "a small part of the west end of loft")]
    public void A_part_is_called_by_its_share_of_the_room(double share, string words) =>
        ZoneWords.PartOf(new(new("top"), new("loft"), 26 * share, share, CompassSide.West, new(1))).Should().Be(words);

    [Fact]
    public void A_small_part_in_the_middle_has_no_end() =>
        ZoneWords.PartOf(new(new("top"), new("loft"), 0.8, 0.03, null, new(1))).Should().Be("a small part of loft");
}
