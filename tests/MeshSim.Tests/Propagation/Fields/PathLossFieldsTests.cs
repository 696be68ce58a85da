using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using static MeshSim.Tests.Propagation.PlanSketch;

namespace MeshSim.Tests.Propagation.Fields;

public sealed class PathLossFieldsTests
{
    private const int RandomBuildings = 1000;

    // One wall of 7.3 dB along y at x = 2 m and grid points on it.
    private static readonly FloorPlan OneWall = Plan(Wall("wall", Point(2, 0), Point(2, 4)));
    private static readonly FieldGrid Grid = new(new("ground"), Point(0, 0), 5_000, 9, 9, Lattice.FromMetres(1));

    private static readonly Server[] Servers = [new(At(1, 1, 1), 60), new(At(3.1, 2.2, 1.5), 61), new(At(3.1, 2.2, 1.5), 61), new(At(2, 2, 1), 55)];

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public void Constant_losses_equal_the_tracer_at_every_point_of_random_buildings() =>
        RandomHomes.Constant.Sample(FieldOracle.Check, iter: RandomBuildings, print: home => home.ToString());

    [Fact]
    public void Losses_at_an_angle_stay_within_half_a_step_a_crossing_in_random_buildings() =>
        RandomHomes.Angled.Sample(FieldOracle.Check, iter: RandomBuildings, print: home => home.ToString());

    [Fact]
    public void With_a_way_round_losses_equal_the_tracer_too()
    {
        RandomHomes.Constant.Sample(FieldOracle.CheckDetour, iter: RandomBuildings, print: home => home.ToString());
        RandomHomes.Angled.Sample(FieldOracle.CheckDetour, iter: RandomBuildings, print: home => home.ToString());
    }

    [Theory]
    [InlineData(3, 0)]
    [InlineData(4, 0.5)]
    [InlineData(5, 1)]
    public void A_point_exactly_on_a_wall_gets_half_of_it(int column, double share)
    {
        Position transmitter = At(1, 1, 1);
        Field walls = FieldsOver(OneWall).PathLoss(transmitter), air = FieldsOver(Plan(Storey())).PathLoss(transmitter);
        (walls[column, 4] - air[column, 4]).Should().BeApproximately((float)(share * 7.3), (float)FieldOracle.SinglePrecisionDb);
    }

    [Fact]
    public void The_point_of_the_transmitter_itself_has_the_loss_of_the_shortest_distance() =>
        FieldsOver(OneWall).PathLoss(At(2, 2, 1))[4, 4].Should().BeApproximately(
            (float)new LogDistance(OneWall, RandomHomes.Constructions, new(2440), exponent: 2).TotalBetween(At(2, 2, 1), At(2, 2, 1)).Value,
            (float)FieldOracle.SinglePrecisionDb);

    [Fact]
    public void The_best_of_many_equals_the_maximum_of_all_fields()
    {
        PathLossFields fields = FieldsOver(OneWall);
        ServiceField service = fields.BestOf(Servers, enough: 5, Token);
        Field[] each = [.. Servers.Select(server => fields.PathLoss(server.Position))];
        for (int i = 0; i < Grid.Count; i++)
        {
            float[] left = [.. Servers.Select((server, k) => (float)(server.Level - each[k].Values[i]))];
            service.Best.Values[i].Should().Be(left.Max());
            service.BestServers[i].Should().Be(Array.IndexOf(left, left.Max()));
            service.Counts[i].Should().Be(left.Count(value => value >= 5));
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(8)]
    public void Any_number_of_threads_gives_the_same_bytes(int threads)
    {
        PathLossFields fields = FieldsOver(OneWall);
        Server[] many = [.. Enumerable.Range(0, 64).Select(i => new Server(At(0.03 * i, 4 - (0.05 * i), 1), 60 + (i % 3)))];
        ServiceField expected = fields.BestOf(many, enough: 5, Token, maximumThreads: 1), actual = fields.BestOf(many, enough: 5, Token, threads);
        actual.Best.Values.Should().Equal(expected.Best.Values);
        actual.BestServers.SequenceEqual(expected.BestServers).Should().BeTrue();
        actual.Counts.SequenceEqual(expected.Counts).Should().BeTrue();
    }

    [Fact]
    public void A_field_allocates_nothing_in_steady_state()
    {
        RandomHome home = RandomHomes.Angled.Single(random => random.Plan.Storeys.Length > 1 && random.Plan.Storeys[0].Walls.Length > 3, "4JS8-J0OZ971");
        PathLossFields fields = new LogDistance(home.Plan, RandomHomes.Constructions, new(2440), exponent: 2).FieldsOver(home.Grid);
        var values = new float[home.Grid.Count];
        for (int i = 0; i < 50; i++) fields.PathLoss(home.Transmitter, values);

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 50; i++) fields.PathLoss(home.Transmitter, values);
        (GC.GetAllocatedBytesForCurrentThread() - before).Should().Be(0);
    }

    [Fact]
    public void Everything_that_a_large_field_allocates_is_less_than_three_times_its_output()
    {
        Wall[] walls = [.. Enumerable.Range(0, 100).Select(i => Wall("wall", Point(0.5 * (i % 10), 0.5 * (i / 10)), Point(0.5 * (i % 10), (0.5 * (i / 10)) + 1)))];
        FieldGrid large = Grid with { Step = 100, Columns = 800, Rows = 800 };
        var model = new LogDistance(Plan(walls), RandomHomes.Constructions, new(2440), exponent: 2);

        // What is allocated in all is never less than what is in use at any one time.
        long before = GC.GetAllocatedBytesForCurrentThread();
        Field field = model.FieldsOver(large).PathLoss(At(2.21, 2.32, 1));
        (GC.GetAllocatedBytesForCurrentThread() - before).Should().BeLessThan(3L * sizeof(float) * field.Values.Length);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(8)]
    public void One_field_is_the_same_bytes_on_any_number_of_threads(int threads)
    {
        RandomHome home = RandomHomes.Angled.Single(random => random.Plan.Storeys.Length > 1 && random.Plan.Storeys[0].Walls.Length > 3, "4JS8-J0OZ971");
        PathLossFields fields = new LogDistance(home.Plan, RandomHomes.Constructions, new(2440), exponent: 2).FieldsOver(home.Grid with { Step = 625, Columns = 120, Rows = 128 });
        var values = new float[fields.Grid.Count];
        fields.PathLoss(home.Transmitter, values, Token, threads);
        values.Should().Equal(fields.PathLoss(home.Transmitter).Values);
    }

    [Fact]
    public void A_buffer_of_another_size_is_refused()
    {
        Action write = () => FieldsOver(OneWall).PathLoss(At(1, 1, 1), new float[Grid.Count - 1]);
        write.Should().Throw<ArgumentException>();
    }

    private static PathLossFields FieldsOver(FloorPlan plan) => new LogDistance(plan, RandomHomes.Constructions, new(2440), exponent: 2).FieldsOver(Grid);
}
