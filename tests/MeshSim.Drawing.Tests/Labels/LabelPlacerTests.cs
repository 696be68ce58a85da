using CsCheck;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Tests.Labels;

public sealed class LabelPlacerTests
{
    private static readonly PixelBox Frame = new(0, 0, 1100, 900);

    private static readonly Gen<(Pixel Place, float Width)[]> Scenes =
        Gen.Select(Gen.Int[0, 26], Gen.Int[0, 22], Gen.Float[30, 150], (column, row, width) => (Place: new Pixel(30 + (column * 40), 20 + (row * 40)), width))
            .Array[1, 60]
            .Select(scene => scene.DistinctBy(item => item.Place).ToArray());

    [Fact]
    public void Labels_never_cover_each_other_or_a_symbol_or_leave_the_frame_and_all_find_room() =>
        Scenes.Sample(scene =>
        {
            PixelBox[] symbols = [.. scene.Select(item => PixelBox.About(item.Place, 30, 30))];
            var placer = new LabelPlacer(Frame, symbols, []);

            PlacedLabel?[] labels = [.. scene.Select((item, i) => placer.Place(Request(symbols[i], item.Width)))];

            labels.Should().NotContainNulls();
            PixelBox[] boxes = [.. labels.Select(label => label!.Box)];
            Array.TrueForAll(boxes, Frame.Holds).Should().BeTrue();
            Array.Exists(boxes, box => symbols.Any(box.Overlaps)).Should().BeFalse();
            for (int i = 0; i < boxes.Length; i++)
                for (int j = 0; j < i; j++)
                    boxes[i].Overlaps(boxes[j]).Should().BeFalse();
        });

    [Fact]
    public void A_label_alone_stands_right_beside_its_symbol_without_a_leader()
    {
        PixelBox symbol = PixelBox.About(new(300, 300), 30, 30);

        PlacedLabel label = new LabelPlacer(Frame, [symbol], []).Place(Request(symbol, 60))!;

        label.Box.Left.Should().Be(symbol.Right + 3);
        label.LeaderFrom.Should().BeNull();
    }

    [Fact]
    public void A_label_gives_way_to_a_route()
    {
        PixelBox symbol = PixelBox.About(new(300, 300), 30, 30);

        PlacedLabel label = new LabelPlacer(Frame, [symbol], [new(new(300, 300), new(600, 300), Cost: 4)]).Place(Request(symbol, 60))!;

        label.Box.Right.Should().BeLessThan(symbol.Left);
    }

    [Fact]
    public void A_label_gives_way_to_a_wall_as_thick_as_it_is_drawn()
    {
        PixelBox symbol = PixelBox.About(new(300, 300), 30, 30);
        const float halfWidth = 8;
        var wall = new Obstacle(new(300, 276), new(500, 276), Cost: 30, halfWidth);

        PlacedLabel label = new LabelPlacer(Frame, [symbol], [wall]).Place(Request(symbol, 60))!;

        wall.IsUnder(label.Box).Should().BeFalse();
        label.Box.Grown(halfWidth).IsMetBy(wall.Start, wall.End).Should().BeFalse();
    }

    [Fact]
    public void Where_all_sides_are_taken_a_leader_joins_label_and_symbol()
    {
        PixelBox symbol = PixelBox.About(new(300, 300), 30, 30);
        PixelBox[] ring = [.. Enumerable.Range(0, 8).Select(i => PixelBox.About(new(300 + (45 * MathF.Cos(i * MathF.Tau / 8)), 300 + (45 * MathF.Sin(i * MathF.Tau / 8))), 28, 28))];

        PlacedLabel label = new LabelPlacer(Frame, [symbol, .. ring], []).Place(Request(symbol, 60))!;

        label.LeaderFrom.Should().Be(symbol.Centre);
    }

    [Fact]
    public void Where_there_is_no_room_there_is_no_label()
    {
        PixelBox frame = new(0, 0, 60, 60), symbol = PixelBox.About(new(30, 30), 30, 30);

        new LabelPlacer(frame, [symbol], []).Place(Request(symbol, 60)).Should().BeNull();
    }

    private static LabelRequest Request(PixelBox symbol, float width) => new()
    {
        Kind = LabelKind.Device,
        Key = "a",
        Lines = [new("a", TextStyle.Label, Tone.Text)],
        Places = LabelPlaces.Beside(symbol, symbol.Centre, width, 20),
    };
}
