using CsCheck;
using MeshSim.Devices;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Tests.Scenes;

namespace MeshSim.Drawing.Tests.Symbols;

public sealed class MarkPlacerTests
{
    private static readonly PixelBox Frame = new(0, 0, 800, 600);
    private static readonly Device Lamp = TwoStoreyFlat.Home.Devices[1];

    [Fact]
    public void Symbols_never_cover_each_other_or_leave_the_frame() =>
        Gen.Select(Gen.Float[0, 800], Gen.Float[0, 600], (x, y) => new Pixel(x, y)).Array[2, 60].Sample(places =>
        {
            var placer = new MarkPlacer(Frame);

            PixelBox[] boxes = [.. places.Select(place => placer.Place(MarkAt(place)).Box)];

            Array.TrueForAll(boxes, Frame.Holds).Should().BeTrue();
            for (int i = 0; i < boxes.Length; i++)
                for (int j = 0; j < i; j++)
                    boxes[i].Overlaps(boxes[j]).Should().BeFalse();
        });

    [Fact]
    public void The_first_symbol_stays_on_its_place() =>
        new MarkPlacer(Frame).Place(MarkAt(new(300, 200))).IsMoved.Should().BeFalse();

    [Fact]
    public void A_second_symbol_on_the_same_place_moves_by_little_more_than_its_size()
    {
        var placer = new MarkPlacer(Frame);
        placer.Place(MarkAt(new(300, 200)));

        DeviceMark second = placer.Place(MarkAt(new(300, 200)));

        second.IsMoved.Should().BeTrue();
        second.Centre.DistanceTo(second.TruePlace).Should().BeInRange(2 * Mark.Radius, 3 * Mark.Radius);
    }

    private static DeviceMark MarkAt(Pixel place) => new() { Device = Lamp, Standing = Standing.Reached, TruePlace = place, Centre = place };
}
