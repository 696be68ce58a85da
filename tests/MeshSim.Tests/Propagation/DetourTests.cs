using CsCheck;
using MeshSim.Propagation;
using static MeshSim.Tests.Propagation.ModelHouse;

namespace MeshSim.Tests.Propagation;

/// <summary>Walls that power may go round: the curve, and the model that uses it.</summary>
public class DetourTests
{
    // The same items summed in another order.
    private const double Rounding = 1e-9;

    private static readonly Gen<double> Walls = Gen.Double[0, 200], Rounds = Gen.Double[Detour.ExtraDb.Min, Detour.ExtraDb.Max];

    private static readonly IPathLossModel Straight = Model(ModelName.LogDistance, Build(inner: "concrete-200"));
    private static readonly IPathLossModel Round = Model(ModelName.Detour, Build(inner: "concrete-200"));

    // Powers added by hand: 0.01 + 10^-2.5 over 1 + 10^-2.5, and so on.
    [Theory]
    [InlineData(0, 25, 0)]
    [InlineData(10, 25, 9.8785)]
    [InlineData(20, 25, 18.8204)]
    [InlineData(25, 25, 22.0034)]
    [InlineData(40, 25, 24.8785)]
    [InlineData(20, 10, 10)]
    public void The_powers_of_both_ways_add(double wallsDb, double extraDb, double expectedDb) =>
        Detour.LossDb(wallsDb, extraDb).Should().BeApproximately(expectedDb, 0.00005, "that is half of the last digit given");

    [Fact]
    public void No_wall_costs_nothing_and_the_way_round_never_adds() => Gen.Select(Walls, Rounds).Sample((wallsDb, extraDb) =>
    {
        Detour.LossDb(0, extraDb).Should().Be(0);
        Detour.LossDb(wallsDb, extraDb).Should().BeInRange(0, wallsDb + Rounding);
    });

    [Fact]
    public void More_wall_never_helps_and_never_costs_more_than_itself() => Gen.Select(Walls, Walls, Rounds).Sample((lessDb, moreDb, extraDb) =>
        (Detour.LossDb(lessDb + moreDb, extraDb) - Detour.LossDb(lessDb, extraDb)).Should().BeInRange(-Rounding, moreDb + Rounding));

    [Fact]
    public void All_walls_together_cost_no_more_than_the_way_round() => Gen.Select(Walls, Rounds).Sample((wallsDb, extraDb) =>
        Detour.LossDb(wallsDb, extraDb).Should().BeLessThanOrEqualTo(Detour.LossDb(double.PositiveInfinity, extraDb)));

    [Fact]
    public void What_it_saves_is_an_item_of_its_own_after_the_walls()
    {
        PathLoss straight = Straight.Between(At(2, 5, 1), At(6, 5, 1)), round = Round.Between(At(2, 5, 1), At(6, 5, 1));
        double wallDb = straight.Items[1].Loss.Value;
        round.Items.Take(2).Select(item => (item.Name, item.Loss)).Should().Equal(straight.Items.Select(item => (item.Name, item.Loss)));
        round.Items[1].Sensitivity.Should().BeInRange(0, straight.Items[1].Sensitivity, "what goes round does not hang on the wall");
        round.Items[2].Kind.Should().Be(LossKind.Detour);
        round.Items[2].Loss.Value.Should().BeApproximately(Detour.LossDb(wallDb, Detour.UsualDb) - wallDb, Rounding).And.BeNegative();
        Round.Between(At(5, 1, 1), At(7, 1, 1)).Items.Should().ContainSingle("without a wall there is nothing to go round");
    }

    [Fact]
    public void Floors_are_not_gone_round()
    {
        PathLoss straight = Straight.Between(At(6, 3, 1), At(6, 3, 6.4)), round = Round.Between(At(6, 3, 1), At(6, 3, 6.4));
        round.Items.Should().Equal(straight.Items);
    }

    [Fact]
    public void The_total_is_the_sum_of_the_items_in_both_directions() => Gen.Select(Places, Places).Sample((a, b) =>
    {
        Round.TotalBetween(a, b).Value.Should().BeApproximately(Round.Between(a, b).Total.Value, Rounding);
        Round.TotalBetween(b, a).Should().Be(Round.TotalBetween(a, b));
        Round.TotalBetween(a, b).Value.Should().BeLessThanOrEqualTo(Straight.TotalBetween(a, b).Value + Rounding);
    });

    [Fact]
    public void An_impossible_way_round_is_refused()
    {
        Action free = () => PathLossModels.Create(ModelName.Detour, Build(), Constructions, Carrier, 2, Detour.ExtraDb.Min - 0.1);
        free.Should().Throw<ArgumentOutOfRangeException>();
    }
}
