using CsCheck;
using MeshSim.Propagation;
using MeshSim.Propagation.Recommendations;
using static MeshSim.Tests.Propagation.ModelHouse;

namespace MeshSim.Tests.Propagation;

public class SiteGeneralTests
{
    // The same items summed in another order.
    private const double Rounding = 1e-9;

    // 20 log 868.4 + 28 log 10 + 4 - 28, the row of the worked table for 10 m and one floor.
    private const double WorkedDb = 62.7743962956;

    [Fact]
    public void Ten_metres_and_one_floor_cost_the_worked_value()
    {
        IPathLossModel model = PathLossModels.Create(ModelName.SiteGeneral, Build(), Constructions, new(868.4), 2);
        PathLoss loss = model.Between(At(0.1, 0.1, 1), At(7.78, 5.86, 3.8));
        loss.Model.Should().Be("site-general");
        loss.DistanceMetres.Should().BeApproximately(10, Rounding);
        loss.Items.Select(item => item.Kind).Should().Equal(LossKind.Distance, LossKind.Floor);
        loss.Total.Value.ShouldBePrintedAs(WorkedDb, "12 digits are printed");
    }

    [Fact]
    public void Walls_and_objects_cost_nothing_and_floors_alike()
    {
        IPathLossModel model = Model(ModelName.SiteGeneral, Build());
        PathLoss loss = model.Between(At(2, 4, 1), At(6, 4, 6.4));
        loss.Items.Select(item => item.Kind).Should().Equal(LossKind.Distance, LossKind.Floor, LossKind.Floor);
        loss.Items.Skip(1).Should().OnlyContain(item => item.Loss.Value == 4 && item.IsExtrapolated);
    }

    [Fact]
    public void Nearer_than_the_printed_range_counts_as_its_end()
    {
        IPathLossModel model = Model(ModelName.SiteGeneral, Build());
        double nearestDb = P1238.LossDb(P1238.DistanceMetres.Min, Carrier.Megahertz, 28, 0);
        model.TotalBetween(At(6, 3, 1), At(6.2, 3, 1)).Value.Should().Be(nearestDb);
    }

    [Theory]
    [InlineData(868.4, true)]
    [InlineData(2440, false)]
    public void Homes_below_1800_megahertz_are_marked(double megahertz, bool isMarked) =>
        PathLossModels.Create(ModelName.SiteGeneral, Build(), Constructions, new(megahertz), 2)
            .Between(At(2, 5, 1), At(6, 5, 1)).Items.Single().IsExtrapolated.Should().Be(isMarked);

    [Fact]
    public void Both_directions_cost_the_same()
    {
        IPathLossModel model = Model(ModelName.SiteGeneral, Build());
        Gen.Select(Places, Places).Sample((a, b) =>
            model.TotalBetween(b, a).Value.Should().BeApproximately(model.TotalBetween(a, b).Value, Rounding));
    }
}
