using CsCheck;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Propagation.Pairs;
using MeshSim.Tests.Propagation.Fields;

namespace MeshSim.Tests.Propagation.Pairs;

public sealed class PathLossPairsTests
{
    private const int RandomBuildings = 1000;

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public void Totals_equal_the_tracer_to_the_last_bit_in_random_buildings_of_constant_losses() =>
        RandomHomes.Constant.Sample(Check, iter: RandomBuildings, print: home => home.ToString());

    [Fact]
    public void Totals_equal_the_tracer_to_the_last_bit_in_random_buildings_with_losses_by_angle() =>
        RandomHomes.Angled.Sample(Check, iter: RandomBuildings, print: home => home.ToString());

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(8)]
    public void Any_number_of_threads_gives_the_same_bits(int threads)
    {
        RandomHome home = RandomHomes.Constant.Single(random => random.Plan.Storeys.Length > 1 && random.Plan.Storeys[0].Walls.Length > 3, "4JS8-J0OZ971");
        Position[] places = Places(home);
        PairLosses expected = ModelOf(home).TotalsAmong(places, Token, maximumThreads: 1), actual = ModelOf(home).TotalsAmong(places, Token, threads);
        foreach ((int a, int b) in PairsOf(places)) actual[a, b].Should().Be(expected[a, b]);
    }

    [Fact]
    public void Both_orders_of_a_pair_give_the_same_and_a_place_makes_no_pair_with_itself()
    {
        RandomHome home = RandomHomes.Constant.Single();
        PairLosses losses = ModelOf(home).TotalsAmong(Places(home), Token);
        losses[1, 0].Should().Be(losses[0, 1]);
        Action alone = () => _ = losses[1, 1];
        alone.Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void A_model_without_a_fast_way_gives_its_own_totals_too()
    {
        RandomHome home = RandomHomes.Constant.Single();
        IPathLossModel model = new MultiWall(home.Plan, RandomHomes.Constructions, new(2440));
        Position[] places = Places(home);
        PairLosses losses = model.TotalsAmong(places, Token);
        foreach ((int a, int b) in PairsOf(places)) losses[a, b].Should().Be(model.TotalBetween(places[a], places[b]));
    }

    private static LogDistance ModelOf(RandomHome home, double? detourDb = null) => new(home.Plan, RandomHomes.Constructions, new(2440), exponent: 2.2, detourDb);

    private static void Check(RandomHome home)
    {
        Check(home, ModelOf(home));
        Check(home, ModelOf(home, Detour.UsualDb));
    }

    private static void Check(RandomHome home, LogDistance model)
    {
        Position[] places = Places(home);
        PairLosses losses = model.TotalsAmong(places, CancellationToken.None, maximumThreads: 1);
        foreach ((int a, int b) in PairsOf(places))
        {
            if (losses[a, b] == model.TotalBetween(places[a], places[b])) continue;
            throw new InvalidOperationException(FormattableString.Invariant(
                $"{places[a]} to {places[b]}: {losses[a, b].Value:R} dB instead of {model.TotalBetween(places[a], places[b]).Value:R} dB"));
        }
    }

    // The transmitter twice, grid points, and wall ends and middles at both heights: ties are the rule.
    private static Position[] Places(RandomHome home)
    {
        IEnumerable<Position> gridPoints = Enumerable.Range(0, 12).Select(i => home.Grid.At((5 * i) % home.Grid.Columns, (7 * i) % home.Grid.Rows));
        IEnumerable<PlanPoint> onWalls = home.Plan.Storeys.SelectMany(storey => storey.Walls).Take(6)
            .SelectMany(wall => new[] { wall.Start, wall.End, new((wall.Start.X + wall.End.X) / 2, (wall.Start.Y + wall.End.Y) / 2) });
        return
        [
            home.Transmitter, home.Transmitter, home.Transmitter with { Z = home.Grid.Z },
            .. gridPoints, .. onWalls.Select((place, i) => new Position(place, i % 2 == 0 ? home.Grid.Z : home.Transmitter.Z)),
        ];
    }

    private static IEnumerable<(int A, int B)> PairsOf(Position[] places) =>
        from a in Enumerable.Range(0, places.Length)
        from b in Enumerable.Range(a + 1, places.Length - a - 1)
        select (a, b);
}
