using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;
using static MeshSim.Tests.Propagation.PlanSketch;

namespace MeshSim.Tests.Propagation.Fields;

public sealed class FieldTracerTests
{
    private static readonly FieldGrid Grid = FieldGrid.Over(
        Plan(Wall("a", Point(0, 0), Point(6, 4)), Wall("b", Point(0, 4), Point(6, 0), Door("door", 1, 1))), new("ground"), stepMetres: 0.05, heightMetres: 1);

    private static readonly IPathLossModel Model = new CountingModel(
        new(Plan(Wall("a", Point(0, 0), Point(6, 4)), Wall("b", Point(0, 4), Point(6, 0), Door("door", 1, 1)))));

    [Fact]
    public void Every_point_has_the_loss_of_its_path()
    {
        Field field = FieldTracer.PathLoss(Model, At(1, 2, 1), Grid, TestContext.Current.CancellationToken);

        field.Values.Should().HaveCount(Grid.Count);
        for (int row = 0; row < Grid.Rows; row++)
            for (int column = 0; column < Grid.Columns; column++)
                field[column, row].Should().Be((float)Model.TotalBetween(At(1, 2, 1), Grid.At(column, row)).Value);
    }

    [Fact]
    public void One_thread_and_many_give_the_same_bits()
    {
        Field one = FieldTracer.PathLoss(Model, At(1, 2, 1), Grid, TestContext.Current.CancellationToken, maximumThreads: 1);
        Field many = FieldTracer.PathLoss(Model, At(1, 2, 1), Grid, TestContext.Current.CancellationToken, maximumThreads: 8);

        many.Values.Select(BitConverter.SingleToInt32Bits).Should().Equal(one.Values.Select(BitConverter.SingleToInt32Bits));
    }

    [Fact]
    public void Work_ends_when_it_is_cancelled()
    {
        Action trace = () => FieldTracer.PathLoss(Model, At(1, 2, 1), Grid, new CancellationToken(canceled: true));

        trace.Should().Throw<OperationCanceledException>();
    }

    /// <summary>Ten decibels for each decade of distance and for each wall square on, more at an angle.</summary>
    private sealed class CountingModel(CrossingTracer tracer) : IPathLossModel
    {
        public PathLoss Between(Position from, Position to)
        {
            var crossings = new List<Crossing>();
            tracer.Trace(from, to, crossings);
            double lossDb = 10 * Math.Log10(Math.Max(0.1, from.DistanceMetresTo(to)));
            lossDb += crossings.Sum(crossing => crossing.Weight * (20 - (10 * crossing.Cosine)));
            return new("counting", from.DistanceMetresTo(to), [new LossItem { Kind = LossKind.Distance, Name = "all", Loss = new Decibels(lossDb) }]);
        }
    }
}
