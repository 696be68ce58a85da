using CsCheck;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;

namespace MeshSim.Tests.Propagation.Fields;

public sealed class PathLossFieldsTests
{
    private const int RandomBuildings = 1000;

    [Fact]
    public void Constant_losses_equal_the_tracer_at_every_point_of_random_buildings() =>
        RandomHomes.Constant.Sample(FieldOracle.Check, iter: RandomBuildings, print: home => home.ToString());

    [Fact]
    public void Losses_at_an_angle_stay_within_half_a_step_a_crossing_in_random_buildings() =>
        RandomHomes.Angled.Sample(FieldOracle.Check, iter: RandomBuildings, print: home => home.ToString());
}

/// <summary>Compares the kernel with the path-by-path model at every point of a grid.</summary>
internal static class FieldOracle
{
    // Both add the same terms, one in double and one in single precision: a few units in the last place of 200 dB.
    private const double SinglePrecisionDb = 2e-4;

    public static void Check(RandomHome home)
    {
        var model = new LogDistance(home.Plan, RandomHomes.Constructions, new(2440), exponent: 2.2);
        var tracer = new CrossingTracer(home.Plan);
        PathLossFields fields = model.FieldsOver(home.Grid);
        Field field = fields.PathLoss(home.Transmitter);
        for (int row = 0; row < home.Grid.Rows; row++)
        {
            for (int column = 0; column < home.Grid.Columns; column++)
            {
                Position receiver = home.Grid.At(column, row);
                var allowed = new Allowance(tracer, fields);
                tracer.Visit(home.Transmitter, receiver, ref allowed);
                double expectedDb = model.TotalBetween(home.Transmitter, receiver).Value;
                if (!(Math.Abs(field[column, row] - expectedDb) <= allowed.Db + SinglePrecisionDb))
                    throw new InvalidOperationException(FormattableString.Invariant($"column {column} row {row} at {receiver.Plan}: {field[column, row]} dB instead of {expectedDb} dB, allowed {allowed.Db} dB"));
            }
        }
    }

    /// <summary>Half a step for each crossing at an angle, half a unit for each other one.</summary>
    private struct Allowance(CrossingTracer tracer, PathLossFields fields) : ICrossingVisitor
    {
        public double Db;

        public void Take(in Crossing crossing)
        {
            Construction construction = RandomHomes.Constructions[tracer.Constructions[crossing.Construction]];
            bool isAngled = construction.Stated.IsEmpty && crossing.Kind != LossKind.Object;
            Db += isAngled ? PathLossFields.AngleStepDb / 2 : fields.RoundingDb;
        }
    }
}
