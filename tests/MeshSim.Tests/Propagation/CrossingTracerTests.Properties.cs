using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using static MeshSim.Tests.Propagation.PlanSketch;

namespace MeshSim.Tests.Propagation;

public sealed partial class CrossingTracerTests
{
    // Totals of a turned house are the same numbers, cosines computed from swapped coordinates: rounding of a few sums.
    private const double RoundingTolerance = 1e-12;

    private const long Samples = 2000;

    [Fact]
    public void A_path_meets_the_same_both_ways() => RandomPlans.Coarse.Sample((plan, from, to) =>
    {
        var forward = Met(plan, from, to);
        var back = Met(plan, to, from);
        forward.Should().Equal(back);
    }, iter: Samples);

    [Fact]
    public void The_list_holds_what_the_visitor_takes_in_order_along_the_path() => RandomPlans.Coarse.Sample((plan, from, to) =>
    {
        var crossings = new List<Crossing>();
        new CrossingTracer(plan).Trace(from, to, crossings);

        crossings.Should().BeEquivalentTo(Visited(new CrossingTracer(plan), from, to));
        crossings.Select(crossing => crossing.Share).Should().BeInAscendingOrder();
        crossings.Should().NotContain(c => !(c.Share >= 0 && c.Share <= 1 && c.Cosine >= 0 && c.Cosine <= 1));
    }, iter: Samples);

    [Fact]
    public void A_moved_house_is_the_same() => CheckTransformed(
        (p, by) => new(p.X + by.X, p.Y - by.Y));

    [Fact]
    public void A_house_turned_by_a_right_angle_is_the_same() => CheckTransformed(
        (p, _) => new(-p.Y, p.X));

    [Fact]
    public void A_mirrored_house_is_the_same() => CheckTransformed(
        (p, by) => new(by.X - p.X, p.Y));

    [Fact]
    public void Cutting_a_wall_in_two_changes_nothing() => RandomPlans.Coarse.Sample((plan, from, to) =>
    {
        // Ends at whole metres: the middle of a wall lies on the lattice.
        Storey ground = plan.Storeys[0];
        FloorPlan whole = plan with { Storeys = plan.Storeys.SetItem(0, ground with { Walls = [.. ground.Walls.Select(wall => wall with { Openings = [] })] }) };
        FloorPlan cut = plan with { Storeys = plan.Storeys.SetItem(0, ground with { Walls = [.. ground.Walls.SelectMany(CutInTwo)] }) };

        CompareTotals(Met(whole, from, to), Met(cut, from, to));
    }, iter: Samples);

    [Fact]
    public void Opening_the_doors_takes_crossings_away_and_adds_none() => RandomPlans.Coarse.Sample((plan, from, to) =>
    {
        FloorPlan closed = WithDoors(plan, isOpen: false), open = WithDoors(plan, isOpen: true);
        Without(Met(open, from, to), Met(closed, from, to)).Should().BeEmpty();
    }, iter: Samples);

    [Fact]
    public void One_wall_more_takes_no_crossing_away() => Gen.Select(RandomPlans.Coarse, Gen.Int[0, 8], Gen.Int[0, 7]).Sample((sample, x, y) =>
    {
        (FloorPlan plan, Position from, Position to) = sample;
        Storey ground = plan.Storeys[0];
        FloorPlan more = plan with { Storeys = plan.Storeys.SetItem(0, ground with { Walls = ground.Walls.Add(Wall("extra", Point(x, y), Point(8 - y, y + 1))) }) };

        Without(Met(plan, from, to), Met(more, from, to)).Should().BeEmpty();
    }, iter: Samples);

    private static void CheckTransformed(Func<PlanPoint, PlanPoint, PlanPoint> map) =>
        Gen.Select(RandomPlans.Coarse, Gen.Int[-99_999, 99_999], Gen.Int[-99_999, 99_999]).Sample((sample, dx, dy) =>
        {
            (FloorPlan plan, Position start, Position end) = sample;
            PlanPoint Moved(PlanPoint p) => map(p, new(dx, dy));
            Polygon MovedOutline(Polygon outline) => new([.. outline.Corners.Select(Moved)]);
            var moved = new FloorPlan([.. plan.Storeys.Select(storey => storey with
            {
                Walls = [.. storey.Walls.Select(wall => wall with { Start = Moved(wall.Start), End = Moved(wall.End) })],
                Rooms = [.. storey.Rooms.Select(room => room with { Outline = MovedOutline(room.Outline) })],
                Objects = [.. storey.Objects.Select(item => item with { Footprint = MovedOutline(item.Footprint) })],
                Floor = storey.Floor is { } floor ? floor with { Stairwells = [.. floor.Stairwells.Select(s => new Stairwell(MovedOutline(s.Outline)))] } : null,
            })]);

            CompareTotals(Met(plan, start, end), Met(moved, start with { Plan = Moved(start.Plan) }, end with { Plan = Moved(end.Plan) }));
        }, iter: Samples);

    /// <summary>Every crossing as what it costs depends on, without its place along the path.</summary>
    private static List<(string Name, ConstructionName Construction, LossKind Kind, double Cosine, double Weight)> Met(FloorPlan plan, Position from, Position to)
    {
        var tracer = new CrossingTracer(plan);
        return [.. Visited(tracer, from, to).Select(c => (tracer.NameOf(c), tracer.Constructions[c.Construction], c.Kind, c.Cosine, c.Weight))];
    }

    /// <summary>What is left of the items after taking each of the others away once.</summary>
    private static List<T> Without<T>(IEnumerable<T> items, IEnumerable<T> others)
    {
        List<T> left = [.. items];
        foreach (T other in others)
            left.Remove(other);
        return left;
    }

    private static List<Crossing> Visited(CrossingTracer tracer, Position from, Position to)
    {
        var visitor = new ListingVisitor([]);
        tracer.Visit(from, to, ref visitor);
        return visitor.Crossings;
    }

    private static void CompareTotals(
        IEnumerable<(string Name, ConstructionName Construction, LossKind Kind, double Cosine, double Weight)> expected,
        IEnumerable<(string Name, ConstructionName Construction, LossKind Kind, double Cosine, double Weight)> actual)
    {
        // A weight that grows with the angle stands for a loss: any function of construction and cosine would do.
        Dictionary<ConstructionName, double> Totals(IEnumerable<(string Name, ConstructionName Construction, LossKind Kind, double Cosine, double Weight)> met) =>
            met.GroupBy(c => c.Construction).ToDictionary(g => g.Key, g => g.Sum(c => c.Weight * (2 - c.Cosine)));

        Dictionary<ConstructionName, double> wanted = Totals(expected), got = Totals(actual);
        got.Keys.Should().BeEquivalentTo(wanted.Keys);
        foreach ((ConstructionName construction, double total) in wanted)
            got[construction].Should().BeApproximately(total, RoundingTolerance);
    }

    private static IEnumerable<Wall> CutInTwo(Wall wall)
    {
        var middle = new PlanPoint((wall.Start.X + wall.End.X) / 2, (wall.Start.Y + wall.End.Y) / 2);
        return [wall with { End = middle, Openings = [] }, wall with { Start = middle, Openings = [] }];
    }

    private static FloorPlan WithDoors(FloorPlan plan, bool isOpen) => new([.. plan.Storeys.Select(storey => storey with
    {
        Walls = [.. storey.Walls.Select(wall => wall with { Openings = [.. wall.Openings.Select(opening => opening with { IsOpen = isOpen })] })],
    })]);

    private readonly struct ListingVisitor(List<Crossing> crossings) : ICrossingVisitor
    {
        public List<Crossing> Crossings { get; } = crossings;

        public void Take(in Crossing crossing) => Crossings.Add(crossing);
    }
}
