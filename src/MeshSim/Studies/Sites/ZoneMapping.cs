using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Placement;
using MeshSim.Placement.Zones;
using MeshSim.Propagation.Fields;

namespace MeshSim.Studies.Sites;

/// <summary>Asks every point of the house whether a repeater, or the hub, would do as well there.</summary>
internal static class ZoneMapping
{
    /// <summary>Distance between the points, m: an outlet is chosen to a hand's breadth by nobody.</summary>
    public const double StepMetres = 0.25;

    /// <summary>A part whose middle lies nearer to that of its room, as a share of the root of its area, is on no side of it.</summary>
    private const double AsideShare = 0.08;

    /// <summary>The zone of a recommended repeater.</summary>
    /// <param name="placement">The recommendation.</param>
    /// <param name="choice">The outlet as a choice of the survey.</param>
    public static SiteZone OfRepeater(SurveyedPlacement placement, int choice) => Of(
        placement.Home.FloorPlan,
        placement.Home.Parameters.NorthDegrees,
        placement.Survey.Outlets[choice].HeightMetres,
        grid => SpareOver(placement, SiteDuties.OfRepeater(placement, choice), isHub: false, grid));

    /// <summary>The zone of the hub: where it serves every network.</summary>
    /// <param name="placements">The recommendation of each network.</param>
    /// <param name="heightMetres">Height of the hub above the floor, m.</param>
    public static SiteZone OfHub(ImmutableArray<SurveyedPlacement> placements, double heightMetres)
    {
        ImmutableArray<(SurveyedPlacement Placement, SiteDuties Duties)> networks = [.. placements.Select(placement => (placement, SiteDuties.OfHub(placement)))];
        return Of(placements[0].Home.FloorPlan, placements[0].Home.Parameters.NorthDegrees, heightMetres, LeastOver);

        float[] LeastOver(FieldGrid grid) => networks
            .Select(network => SpareOver(network.Placement, network.Duties, isHub: true, grid))
            .Aggregate((least, other) => [.. least.Zip(other, Math.Min)]);
    }

    private static SiteZone Of(FloorPlan plan, double northDegrees, double heightMetres, Func<FieldGrid, float[]> spareOver)
    {
        List<Field> fields = [];
        List<ZonePart> parts = [];
        foreach (Storey storey in plan.Storeys.Where(storey => !storey.Rooms.IsEmpty || !storey.Walls.IsEmpty))
        {
            FieldGrid grid = FieldGrid.Over(plan, storey.Name, StepMetres, heightMetres);
            Field spare = new(grid, spareOver(grid));
            ImmutableArray<ZoneRoom> rooms = ZoneRoom.Of(storey, grid);
            parts.AddRange(rooms.Select(room => PartIn(room, spare, northDegrees)).OfType<ZonePart>());
            fields.Add(Masked(spare, rooms));
        }

        return new() { Spare = [.. fields], Parts = [.. parts] };
    }

    /// <summary>What a thing at each point has to spare, dB.</summary>
    private static float[] SpareOver(SurveyedPlacement placement, SiteDuties duties, bool isHub, FieldGrid grid)
    {
        Field?[][] margins = new PlaceMargins(placement, isHub).Over(grid);
        double designDb = placement.Survey.Problem.DesignMargin.Value;
        ImmutableArray<int> nodes = placement.Present;
        var spare = new float[grid.Count];
        Parallel.For(0, grid.Rows, row =>
        {
            double[][] at = [.. margins.Select(fields => new double[fields.Length])];
            for (int i = row * grid.Columns; i < (row + 1) * grid.Columns; i++)
            {
                foreach (int node in nodes)
                    for (int situation = 0; situation < at.Length; situation++) at[situation][node] = margins[situation][node]!.Values[i];
                spare[i] = (float)(duties.StrengthDb(at) - designDb);
            }
        });
        return spare;
    }

    private static ZonePart? PartIn(ZoneRoom room, Field spare, double northDegrees)
    {
        int[] inside = [.. room.Points.Where(point => spare.Values[point] >= 0)];
        if (inside.Length == 0) return null;

        (double x, double y) = Middle(inside);
        (double roomX, double roomY) = Middle(room.Points);
        double areaOfPoint = StepMetres * StepMetres, areaSquareMetres = room.Points.Length * areaOfPoint;
        bool isAside = Math.Sqrt(((x - roomX) * (x - roomX)) + ((y - roomY) * (y - roomY))) >= AsideShare * Math.Sqrt(areaSquareMetres);
        return new(
            room.Storey,
            room.Room,
            inside.Length * areaOfPoint,
            inside.Length / (double)room.Points.Length,
            isAside ? Compass.MainSide(x - roomX, y - roomY, northDegrees) : null,
            new(inside.Max(point => spare.Values[point])));

        (double X, double Y) Middle(IEnumerable<int> points)
        {
            PlanPoint[] places = [.. points.Select(point => spare.Grid.At(point % spare.Grid.Columns, point / spare.Grid.Columns).Plan)];
            return (places.Average(place => place.XMetres), places.Average(place => place.YMetres));
        }
    }

    private static Field Masked(Field spare, ImmutableArray<ZoneRoom> rooms)
    {
        var values = new float[spare.Values.Length];
        Array.Fill(values, float.NaN);
        foreach (int point in rooms.SelectMany(room => room.Points)) values[point] = spare.Values[point];
        return new(spare.Grid, values);
    }
}
