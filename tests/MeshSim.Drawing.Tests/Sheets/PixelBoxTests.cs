using CsCheck;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Tests.Sheets;

public sealed class PixelBoxTests
{
    private static readonly PixelBox Box = new(10, 20, 30, 40);

    [Theory]
    [InlineData(0, 30, 50, 30, true)]
    [InlineData(15, 25, 20, 30, true)]
    [InlineData(0, 0, 9, 50, false)]
    [InlineData(0, 45, 35, 45, false)]
    [InlineData(5, 35, 15, 45, true)]
    [InlineData(0, 35, 14, 50, false)]
    public void A_line_meets_the_box_when_it_passes_through(float x1, float y1, float x2, float y2, bool expected) =>
        Box.IsMetBy(new(x1, y1), new(x2, y2)).Should().Be(expected);

    [Fact]
    public void A_line_with_a_point_well_inside_meets_the_box() =>
        Gen.Select(Gen.Float[11, 29], Gen.Float[21, 39], Gen.Float[-90, 90], Gen.Float[-90, 90]).Sample((x, y, dx, dy) =>
            Box.IsMetBy(new(x - dx, y - dy), new(x + dx, y + dy)).Should().BeTrue());

    [Fact]
    public void Boxes_that_share_an_edge_do_not_overlap()
    {
        Box.Overlaps(new(30, 20, 50, 40)).Should().BeFalse();
        Box.Overlaps(new(29, 39, 50, 60)).Should().BeTrue();
    }

    [Fact]
    public void A_box_holds_itself_and_nothing_that_sticks_out()
    {
        Box.Holds(Box).Should().BeTrue();
        Box.Holds(Box.Grown(0.5f)).Should().BeFalse();
    }

    [Fact]
    public void The_nearest_point_of_a_place_inside_is_the_place() => Box.NearestTo(new(12, 22)).Should().Be(new Pixel(12, 22));
}
