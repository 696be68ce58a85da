using System.Globalization;
using System.Text;
using MeshSim.Files.Importing;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.OpenData.Tests.Importing;

/// <summary>
/// The walls of a real office floor, drawn by others, against the centre lines that were derived of them by other means: most of its
/// walls are single lines, a few are drawn twice within 0.3 m.
/// </summary>
public sealed class OfficeFloorTests
{
    /// <summary>Half of the distance within which the derived lines were drawn together, and the snapping tolerance on top, m.</summary>
    private const double ToleranceMetres = 0.2;

    private const double SampleMetres = 0.25;

    [Fact]
    public void The_walls_of_a_drawing_lie_where_an_independent_derivation_has_them()
    {
        string folder = DataFolders.Of("sodindoorloc-wifi-2400");
        (double X1, double Y1, double X2, double Y2)[] drawn = [.. Lines(Path.Combine(folder, "faces_CETC331_F1.csv"), 2, "wall,")];
        (double X1, double Y1, double X2, double Y2)[] derived = [.. Lines(Path.Combine(folder, "walls_centreline_CETC331_F1_derived.csv"), 0, "")];
        (double left, double low) = (drawn.Min(line => Math.Min(line.X1, line.X2)), drawn.Min(line => Math.Min(line.Y1, line.Y2)));

        ImportResult result = Import(drawn);

        result.Problems.Should().BeEmpty();
        Storey storey = result.Home!.FloorPlan.Storeys.Single();
        double[] missing =
        [
            .. Samples(derived).Where(
                place => storey.DistanceMetresToNearestWall(PlanPoint.FromMetres(place.X - left, place.Y - low)) > ToleranceMetres).Select(place => place.X),
        ];
        missing.Should().BeEmpty("every derived line has a wall of the home within {0} m", ToleranceMetres);
        storey.Walls.Sum(wall => wall.LengthMetres).Should().BeGreaterThan(0.95 * derived.Sum(line => double.Hypot(line.X2 - line.X1, line.Y2 - line.Y1)));
    }

    private static ImportResult Import(IEnumerable<(double X1, double Y1, double X2, double Y2)> lines)
    {
        StringBuilder text = new("{\"type\":\"FeatureCollection\",\"features\":[");
        text.AppendJoin(",\n", lines.Select(line => FormattableString.Invariant(
            $"{{\"type\":\"Feature\",\"properties\":{{\"layer\":\"brick-half\"}},\"geometry\":{{\"type\":\"LineString\",\"coordinates\":[[{line.X1},{line.Y1}],[{line.X2},{line.Y2}]]}}}}")));
        string file = Path.Combine(Path.GetTempPath(), $"meshsim-{Guid.NewGuid():N}.geojson");
        File.WriteAllText(file, text.Append("]}").ToString());
        try
        {
            return DrawingImport.Read(file, new());
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static IEnumerable<(double X1, double Y1, double X2, double Y2)> Lines(string file, int skip, string beginning) =>
        from line in File.ReadLines(file).Skip(1)
        where line.StartsWith(beginning, StringComparison.Ordinal)
        let numbers = line.Split(',').Skip(skip).Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray()
        select (numbers[0], numbers[1], numbers[2], numbers[3]);

    private static IEnumerable<(double X, double Y)> Samples(IEnumerable<(double X1, double Y1, double X2, double Y2)> lines) =>
        from line in lines
        let count = Math.Max(1, (int)(double.Hypot(line.X2 - line.X1, line.Y2 - line.Y1) / SampleMetres))
        from i in Enumerable.Range(0, count + 1)
        select (line.X1 + ((line.X2 - line.X1) * i / count), line.Y1 + ((line.Y2 - line.Y1) * i / count));
}
