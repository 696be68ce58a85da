using MeshSim.Devices;
using MeshSim.Files.Importing;
using MeshSim.Files.Tests.Fixtures;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Tests.Importing;

public sealed class DrawingImportTests
{
    private static readonly string Fern = Path.Combine(SourceTree.Root, "floorplans", "drawings", "fern-court.svg");

    [Fact]
    public void The_shipped_drawing_becomes_the_flat_that_it_shows()
    {
        ImportResult result = DrawingImport.Read(Fern, new() { Length = new("tape", 4) });

        Home home = result.Home!;
        Storey storey = home.FloorPlan.Storeys.Single();
        storey.Rooms.Select(room => (room.Name.Value, SquareMetres(room))).Should().Equal(
            ("living room", 23.2), ("hall", 17.4), ("bedroom", 8.12), ("store", 4.64), ("bathroom", 4.64));
        storey.Walls.Select(wall => wall.Construction.Value).Distinct().Should().BeEquivalentTo("cavity-brick", "brick-half-plastered", "stud-partition");
        Opening(storey, "bathroom-door").Should().Be(("hall | bathroom", 0.4, 0.8));
        Opening(storey, "bedroom-door").Should().Be(("hall | bedroom", 1.1, 0.8));
        Opening(storey, "living-window").Should().Be(("living room, south", 0.6, 2));
        home.Devices.Select(device => $"{device.Id.Value}: {device.Role} in {device.Room?.Value}").Should().Contain(
            ["hub: Coordinator in living room", "bedroom-plug: Router in bedroom", "leak-sensor: EndDevice in bathroom"]);
        home.Outlets.Select(outlet => outlet.Id.Value).Should().Equal("living-socket", "hall-socket", "store-socket");
        result.LeftOut.Select(one => one.Message).Should().Equal("rect is left out", "g \"old-furniture\" is left out");
    }

    [Fact]
    public void What_is_written_reads_back_and_twice_gives_the_same_bytes()
    {
        using TemporaryFolder folder = new();
        string[] texts =
        [
            .. Enumerable.Range(0, 2).Select(i =>
            {
                string target = folder.File(i == 0 ? "first" : "second");
                HomeWriter.Write(DrawingImport.Read(Fern, new() { Length = new("tape", 4) }).Home!, target);
                HomeFolder.Read(target).Problems.Should().BeEmpty();
                return File.ReadAllText(Path.Combine(target, "home.yaml")) + File.ReadAllText(Path.Combine(target, "devices.csv"));
            }),
        ];

        texts[1].Should().Be(texts[0]);
    }

    [Fact]
    public void Without_a_scale_a_sheet_of_paper_is_no_flat() =>
        Says(DrawingImport.Read(Fern, new())).Should().ContainSingle().Which.Should().Contain("what is drawn would be 0.2 m wide and 0.116 m deep");

    [Fact]
    public void Walls_drawn_as_faces_in_two_storeys_over_each_other()
    {
        using TemporaryFolder folder = new();
        File.WriteAllText(folder.File("plan.svg"), """
            <svg xmlns="http://www.w3.org/2000/svg" width="20000mm" height="10000mm" viewBox="0 0 20 10">
              <g id="low"><circle id="a0" cx="0" cy="0" r="0.1"/>
                <g id="walls"><path d="M0 0h5v4h-5z M.3 .3h4.4v3.4h-4.4z"/><rect id="spare" x="2" y="1" width="0.1" height="0.1" display="none"/></g></g>
              <g id="high"><circle id="a1" cx="10" cy="0" r="0.1"/>
                <g id="walls2" class="walls"><path d="M10 0h5v4h-5z M10.3 .3h2.1v3.4h-2.1z M12.5 .3h2.2v3.4h-2.2z"/></g><rect id="stairs" x="10.5" y="0.5" width="1" height="2"/></g>
            </svg>
            """);
        File.WriteAllText(folder.File("map.yaml"), """
            storeys:
              - { storey: ground, layer: low, ceiling: 2.4, anchor: a0 }
              - { storey: upstairs, layer: high, ceiling: 2.2, anchor: a1, floor: joists-boards-lath, structure: 0.25 }
            take:
              - { layer: walls, as: wall, by thickness: { 0: stud-partition, 0.2: cavity-brick } }
              - { class: walls, as: wall, by thickness: { 0: stud-partition, 0.2: cavity-brick } }
              - { id: stairs, as: stairwell }
            """);

        ImportResult result = DrawingImport.Read(folder.File("plan.svg"), new() { MappingFile = folder.File("map.yaml") });

        Says(result).Should().BeEmpty();
        FloorPlan plan = result.Home!.FloorPlan;
        plan.Storeys[0].Rooms.Single().Outline.Corners.Should().BeEquivalentTo(Box(0.15, 0.15, 4.85, 3.85));
        plan.Storeys[1].Rooms.Select(room => room.Outline.Corners.Min(p => p.XMetres)).Should().Equal(0.15, 2.45);
        plan.Storeys[1].Walls.Single(wall => wall.Rooms.Length == 2).Construction.Value.Should().Be("stud-partition");
        plan.Storeys[1].Floor!.Stairwells.Single().Outline.Corners.Min(p => p.XMetres).Should().BeApproximately(0.5, 1e-4);
        plan.Storeys[1].ElevationMetres.Should().BeApproximately(2.65, 1e-9);
    }

    [Fact]
    public void Mistakes_of_drawing_and_mapping_come_in_one_run()
    {
        using TemporaryFolder folder = new();
        File.WriteAllText(folder.File("plan.svg"), """
            <svg xmlns="http://www.w3.org/2000/svg" width="10000mm" height="10000mm" viewBox="0 0 10 10">
              <path id="bad" class="brick-half" d="M 0 0 Q"/>
              <rect class="brick-half" width="5" height="4"/>
              <rect class="door-timber" id="wide" x="1" y="-0.05" width="3" height="0.1"/>
              <rect class="door-timber" id="over" x="2" y="-0.05" width="1" height="0.1"/>
            </svg>
            """);
        File.WriteAllText(folder.File("map.yaml"), "take:\n  - { layer: x, as: wall, is: straw }\n");

        string[] said = [.. Says(DrawingImport.Read(folder.File("plan.svg"), new() { MappingFile = folder.File("map.yaml") }))];

        said.Should().HaveCount(3);
        said[0].Should().Contain("(2,3): error: path \"bad\"");
        said[1].Should().Contain("(5,3): error: \"over\" overlaps \"wide\"");
        said[2].Should().Contain("(2,31): error: no construction is called \"straw\"");
    }

    [Fact]
    public void A_drawing_without_a_hub_gets_one_and_says_so()
    {
        using TemporaryFolder folder = new();
        File.WriteAllText(folder.File("plan.geojson"), """
            {"type":"FeatureCollection","features":[
             {"type":"Feature","properties":{"layer":"brick-half"},"geometry":{"type":"LineString","coordinates":[[500000,10],[500006,10],[500006,14],[500000,14],[500000,10]]}}]}
            """);

        ImportResult result = DrawingImport.Read(folder.File("plan.geojson"), new());

        Device hub = result.Home!.Devices.Single();
        (hub.Id.Value, hub.Point).Should().Be(("hub", PlanPoint.FromMetres(3, 2)));
        result.Notices.Should().Contain(notice => notice.Message.Contains("coordinator \"hub\" of network \"mesh\" is not drawn"));
        result.Home.FloorPlan.Storeys[0].Walls.Should().HaveCount(4);
    }

    [Fact]
    public void A_file_of_another_kind_is_refused() =>
        Says(DrawingImport.Read("plan.bmp", new())).Should().ContainSingle().Which.Should().Contain("says neither SVG nor GeoJSON");

    private static IEnumerable<string> Says(ImportResult result)
    {
        (result.Home is null).Should().Be(!result.Problems.IsEmpty);
        return result.Problems.Select(problem => problem.ToString());
    }

    private static double SquareMetres(Room room) => Math.Round((double)Int128.Abs(room.Outline.TwiceSignedArea) / 2 / 1e8, 4);

    private static (string Wall, double At, double Width) Opening(Storey storey, string name) =>
        storey.Walls.SelectMany(wall => wall.Openings.Select(opening => (wall, opening)))
            .Where(one => one.opening.Name == name)
            .Select(one => (one.wall.Name, Math.Round(one.opening.OffsetMetres, 4), Math.Round(one.opening.WidthMetres, 4))).Single();

    private static PlanPoint[] Box(double left, double low, double right, double high) =>
        [PlanPoint.FromMetres(left, low), PlanPoint.FromMetres(right, low), PlanPoint.FromMetres(right, high), PlanPoint.FromMetres(left, high)];
}
