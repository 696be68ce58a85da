using MeshSim.Devices;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Tests.Labels;

public sealed class MapLabelsTests
{
    public static TheoryData<string, double> Pictures => new() { { "ground", 110 }, { "ground", 45 }, { "upper", 110 }, { "upper", 45 } };

    [Theory]
    [MemberData(nameof(Pictures))]
    public void No_label_covers_another_or_a_symbol_or_leaves_the_map(string storey, double pixelsPerMetre)
    {
        MapContents map = Contents.Of(new(storey), PictureSize.OfScale(pixelsPerMetre));

        foreach (PlacedLabel label in map.Labels)
        {
            map.Layout.Map.Holds(label.Box).Should().BeTrue("{0} stays on the map", label.Request.Key);
            map.Marks.All.Should().NotContain(mark => mark.Box.Overlaps(label.Box), "{0} covers no symbol", label.Request.Key);
            map.Labels.Should().NotContain(other => other != label && other.Box.Overlaps(label.Box), "{0} covers no label", label.Request.Key);
        }
    }

    [Theory]
    [MemberData(nameof(Pictures))]
    public void A_label_covers_a_wall_only_where_no_free_place_is_near(string storey, double pixelsPerMetre)
    {
        MapContents map = Contents.Of(new(storey), PictureSize.OfScale(pixelsPerMetre));
        Obstacle[] walls = [.. MapLabels.WallsOf(map)];
        Dictionary<DeviceId, Pixel> places = map.Marks.Devices.ToDictionary(mark => mark.Device.Id, mark => mark.Centre);
        (Pixel From, Pixel To)[] lines =
        [
            .. map.Routes.Lines.Select(line => (places[line.From], places[line.To])),
            .. map.Labels.Where(label => label.LeaderFrom is not null).Select(label => (label.LeaderFrom!.Value, label.LeaderTo)),
        ];
        bool IsFree(LabelPlace place, PlacedLabel self)
        {
            PixelBox box = place.Box.Grown(LabelPlacer.Space);
            return map.Layout.Map.Holds(place.Box)
                && !Array.Exists(walls, wall => wall.IsUnder(place.Box))
                && !map.Marks.All.Any(mark => mark.Box.Overlaps(box))
                && !map.Labels.Any(other => other != self && other.Box.Overlaps(box))
                && !Array.Exists(lines, line => place.Box.IsMetBy(line.From, line.To));
        }

        foreach (PlacedLabel label in map.Labels.Where(label => Array.Exists(walls, wall => wall.IsUnder(label.Box))))
        {
            label.Request.Places.Where(place => place.Cost < MapLabels.NearbyCost).Any(place => place.LeaderFrom is null && IsFree(place, label))
                .Should().BeFalse("{0} would rather stand clear of walls", label.Request.Key);
        }
    }

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Every_device_room_repeater_and_stub_has_its_label(string storey, double pixelsPerMetre)
    {
        MapContents map = Contents.Of(new(storey), PictureSize.OfScale(pixelsPerMetre));

        KeysOf(map, LabelKind.Device).Should().BeEquivalentTo(map.Marks.Devices.Select(mark => mark.Device.Id.Value));
        KeysOf(map, LabelKind.Room).Should().BeEquivalentTo(map.Storey.Rooms.Select(room => room.Name.Value));
        KeysOf(map, LabelKind.Repeater).Should().HaveCount(map.Marks.Repeaters.Length);
        KeysOf(map, LabelKind.Stub).Should().HaveCount(map.Routes.Stubs.Length);
    }

    [Fact]
    public void Room_names_stand_in_their_rooms()
    {
        MapContents map = Contents.Of(TwoStoreyFlat.Ground);

        foreach (PlacedLabel label in map.Labels.Where(label => label.Request.Kind == LabelKind.Room))
            map.Storey.RoomAt(map.Layout.Projection.ToPlan(label.Box.Centre))!.Name.Should().Be(new RoomName(label.Request.Key));
    }

    [Fact]
    public void A_dark_room_says_how_much_of_it_is_dark()
    {
        MapContents map = Contents.Of(TwoStoreyFlat.Upper);
        double share = map.Map.Rooms.Single(row => row.Room.Value == "study").DarkShare;

        map.Labels.Single(label => label.Request.Key == "study").Request.Lines.Select(line => line.Text).Should()
            .Equal("study", FormattableString.Invariant($"{100 * share:0} % dark"));
    }

    [Fact]
    public void An_unreached_device_says_so_in_words() =>
        Contents.Of(TwoStoreyFlat.Upper).Labels.Single(label => label.Request.Key == "study-thermo").Request.Lines[0].Text.Should().Be("study-thermo: no reliable way");

    private static IEnumerable<string> KeysOf(MapContents map, LabelKind kind) =>
        map.Labels.Where(label => label.Request.Kind == kind).Select(label => label.Request.Key);
}
