using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.Propagation;
using MeshSim.Propagation.Recommendations;
using static MeshSim.Tests.Propagation.ModelHouse;

namespace MeshSim.Tests.Propagation;

public class MultiWallTests
{
    // The same items summed in another order.
    private const double Rounding = 1e-9;

    private static readonly IPathLossModel House = Model(ModelName.MultiWall, Build());

    [Fact]
    public void A_path_costs_what_the_printed_formula_gives()
    {
        // Up two storeys beside a heavy inner wall, and through it.
        IPathLossModel heavy = Model(ModelName.MultiWall, Build(inner: "brick-half"));
        PathLoss loss = heavy.Between(At(2, 4, 1), At(6, 4, 6.4));
        double metres = Math.Sqrt((4 * 4) + (5.4 * 5.4));
        loss.Model.Should().Be("multi-wall");
        loss.Items.CountBy(item => item.Kind).Should().BeEquivalentTo(
            new KeyValuePair<LossKind, int>[] { new(LossKind.Distance, 1), new(LossKind.Wall, 1), new(LossKind.Floor, 2) });
        loss.Total.Value.Should().BeApproximately(
            Cost231.MultiWallLossDb(metres, Carrier.Megahertz, 0, Cost231.HeavyWall1800Db, 2, Cost231.Floor1800Db), Rounding);
    }

    [Fact]
    public void A_door_is_a_light_wall() =>
        House.Between(At(3, 1.4, 1), At(5, 1.4, 1)).Items[1].Loss.Value.Should().Be(Cost231.LightWall1800Db);

    [Fact]
    public void Objects_are_no_part_of_it() =>
        House.Between(At(5, 4.3, 1), At(7.5, 4.3, 1)).Items.Should().ContainSingle();

    [Fact]
    public void Losses_away_from_the_published_frequencies_are_marked() =>
        House.Between(At(2, 5, 1), At(6, 5, 1)).Items.Select(item => item.IsExtrapolated).Should().Equal(false, true);

    [Theory]
    [InlineData("brick-half", false)]
    [InlineData("door-timber", true)]
    [InlineData("glazing-double", true)]
    [InlineData("stud-partition-100", true)]
    [InlineData("timber-frame-outer", true)]
    [InlineData("cavity-brick", false)]
    [InlineData("concrete-100", false)]
    [InlineData("glazing-multi-pane", true)]
    [InlineData("door-steel", false)]
    public void Light_is_less_than_ten_centimetres_of_solid_or_nearer_to_the_light_loss(string construction, bool isLight) =>
        MultiWall.IsLight(Constructions[new ConstructionName(construction)]).Should().Be(isLight);

    [Fact]
    public void Both_directions_cost_the_same() => Gen.Select(Places, Places).Sample((a, b) =>
        House.TotalBetween(b, a).Value.Should().BeApproximately(House.TotalBetween(a, b).Value, Rounding));
}
