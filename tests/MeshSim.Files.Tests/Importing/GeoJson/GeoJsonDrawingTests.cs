using System.Text;
using System.Text.Json;
using CsCheck;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing;
using MeshSim.Files.Importing.GeoJson;
using MeshSim.Files.Sources;
using NetTopologySuite.Features;
using NetTopologySuite.Geometries;
using NetTopologySuite.IO.Converters;

namespace MeshSim.Files.Tests.Importing.GeoJson;

public sealed class GeoJsonDrawingTests
{
    private static readonly JsonSerializerOptions Independent = new() { Converters = { new GeoJsonConverterFactory() } };

    private static readonly Gen<Coordinate[]> Corners =
        Gen.Select(Gen.Int[-9000, 9000], Gen.Int[-9000, 9000], (x, y) => new Coordinate(x / 1000.0, y / 1000.0)).Array[2, 6];

    [Fact]
    public void Lines_written_by_an_independent_library_read_back_to_the_same() =>
        Corners.Array[1, 5].Sample(lines =>
        {
            FeatureCollection written = [];
            foreach (Coordinate[] line in lines)
                written.Add(new Feature(new LineString(line), new AttributesTable { { "layer", "cavity-brick" }, { "name", "wall" } }));

            Drawing drawing = Read(JsonSerializer.Serialize(written, Independent));

            drawing.Shapes.Should().HaveCount(lines.Length);
            for (int i = 0; i < lines.Length; i++)
            {
                drawing.Shapes[i].Names.Layers.Should().Equal("cavity-brick");
                drawing.Shapes[i].Lines.Single().Points.Should().Equal(lines[i].Select(corner => new DrawnPoint(corner.X, corner.Y)));
            }
        });

    [Fact]
    public void Every_kind_of_geometry_gives_its_lines_and_what_is_lost_is_named()
    {
        Drawing drawing = Read("""
            {"type":"FeatureCollection","features":[
             {"type":"Feature","id":7,"properties":{"level":0,"layer":"rooms","name":"hall"},
              "geometry":{"type":"Polygon","coordinates":[[[0,0],[4,0],[4,3],[0,0]],[[1,1],[2,1],[2,1.5],[1,1]]]}},
             {"type":"Feature","properties":{"class":"a b","power":"mains"},"geometry":{"type":"MultiLineString","coordinates":[[[0,0],[1,0]],[[2,0],[3,0]]]}},
             {"type":"Feature","properties":null,"geometry":null},
             {"type":"Feature","properties":{"layer":"room names","name":"den"},"geometry":{"type":"Point","coordinates":[1,2]}}
            ]}
            """);

        drawing.Shapes.Select(shape => shape.Lines.Length).Should().Equal(1, 2, 1);
        drawing.Shapes[0].Lines[0].IsClosed.Should().BeTrue();
        drawing.Shapes[0].Names.Should().BeEquivalentTo(new ShapeNames { Layers = ["0", "rooms"], Id = "7", Title = "hall" });
        drawing.Shapes[1].Names.Classes.Should().Equal("a", "b", "mains");
        drawing.Shapes[2].Text.Should().Be("den");
        drawing.LeftOut.Select(one => FormattableString.Invariant($"{one.Place.Line}: {one.What}: {one.Why}")).Should().Equal(
            "2: a hole of feature \"hall\": an outline has no holes", "5: feature without a name: it has no geometry");
    }

    [Fact]
    public void Degrees_become_metres_about_the_middle()
    {
        // A hundred-thousandth of a degree of latitude is 1.112 m; of longitude at 60° half of that.
        Drawing drawing = Read("""{"type":"Feature","properties":{},"geometry":{"type":"LineString","coordinates":[[10,60],[10.00001,60.00001]]}}""", null);

        DrawnLine line = drawing.Shapes.Single().Lines.Single();
        (line.Points[1].XMetres - line.Points[0].XMetres).Should().BeApproximately(0.556, 0.001);
        (line.Points[1].YMetres - line.Points[0].YMetres).Should().BeApproximately(1.112, 0.001);
    }

    [Theory]
    [InlineData("[]", "plan.geojson(1,1): error: the file holds no features")]
    [InlineData("{\"type\":\"FeatureCollection\"}", "plan.geojson(1,1): error: the file holds no features")]
    [InlineData("{\n \"a\":\n  nonsense}", "plan.geojson(3,4): error: this is not well-formed JSON")]
    public void What_is_no_drawing_is_said(string text, string message) => Says(text).Should().ContainSingle().Which.Should().StartWith(message);

    [Fact]
    public void Every_bad_feature_is_said_at_its_line() =>
        Says("""
            {"type":"FeatureCollection","features":[
             {"type":"Feature","properties":{},"geometry":{"type":"LineString","coordinates":[[0,0],[1,0]]}},
             {"type":"Feature","properties":{},"geometry":{"type":"LineString","coordinates":[[0,0]]}},
             {"type":"Feature","properties":{},"geometry":{"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1]]]}},
             {"type":"Feature","properties":{},"geometry":{"type":"Spiral","coordinates":[]}},
             {"type":"Feature","properties":{},"geometry":{"type":"LineString","coordinates":"far"}}
            ]}
            """).Select(line => line[..line.IndexOf(':', StringComparison.Ordinal)]).Should().Equal("plan.geojson(3,2)", "plan.geojson(4,2)", "plan.geojson(5,2)", "plan.geojson(6,2)");

    private static Drawing Read(string text, double? metresPerUnit = 1)
    {
        DiagnosticList problems = new(["plan.geojson"]);
        Drawing? drawing = GeoJsonDrawing.Read(SourceFile.FromBytes("plan.geojson", Encoding.UTF8.GetBytes(text), problems)!, metresPerUnit, problems);
        problems.Sorted(Severity.Error).Should().BeEmpty();
        return drawing!;
    }

    private static string[] Says(string text)
    {
        DiagnosticList problems = new(["plan.geojson"]);
        GeoJsonDrawing.Read(SourceFile.FromBytes("plan.geojson", Encoding.UTF8.GetBytes(text), problems)!, 1, problems);
        return [.. problems.Sorted(Severity.Error).Select(problem => problem.ToString())];
    }
}
