using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Tests.Propagation.Fields;

/// <summary>Compares the kernel with the path-by-path model at every point of a grid.</summary>
internal static class FieldOracle
{
    /// <summary>Both add the same terms, one in double and one in single precision: a few units in the last place of 200 dB.</summary>
    public const double SinglePrecisionDb = 2e-4;

    public static void Check(RandomHome home) => Check(home.Plan, RandomHomes.Constructions, new(2440), home.Grid, [home.Transmitter]);

    /// <summary>The same with a way round.</summary>
    public static void CheckDetour(RandomHome home) =>
        Check(home.Plan, RandomHomes.Constructions, new(2440), home.Grid, [home.Transmitter], Detour.UsualDb);

    /// <summary>Returns the number of points compared.</summary>
    public static long Check(
        FloorPlan plan,
        ImmutableDictionary<ConstructionName, Construction> constructions,
        Frequency frequency,
        FieldGrid grid,
        IEnumerable<Position> transmitters,
        double? detourDb = null)
    {
        var model = new LogDistance(plan, constructions, frequency, exponent: 2.2, detourDb);
        var tracer = new CrossingTracer(plan);
        PathLossFields fields = model.FieldsOver(grid);
        bool[] isAngled = [.. tracer.Constructions.Select(name => constructions[name].Stated.IsEmpty)];
        long points = 0;
        foreach (Position transmitter in transmitters)
        {
            Field field = fields.PathLoss(transmitter);
            Parallel.For(0, grid.Rows, row =>
            {
                for (int column = 0; column < grid.Columns; column++)
                    CheckPoint(transmitter, grid.At(column, row), field[column, row]);
            });
            points += grid.Count;
        }

        return points;

        void CheckPoint(Position transmitter, Position receiver, double actualDb)
        {
            var allowed = new Allowance(isAngled, fields);
            tracer.Visit(transmitter, receiver, ref allowed);
            double expectedDb = model.TotalBetween(transmitter, receiver).Value;
            if (!(Math.Abs(actualDb - expectedDb) <= allowed.Db + SinglePrecisionDb))
            {
                throw new InvalidOperationException(FormattableString.Invariant(
                    $"{transmitter} to {receiver}: {actualDb} dB instead of {expectedDb} dB, allowed {allowed.Db} dB"));
            }
        }
    }

    /// <summary>Half a step for each crossing at an angle, half a unit for each other one.</summary>
    private struct Allowance(bool[] isAngled, PathLossFields fields) : ICrossingVisitor
    {
        public double Db;

        public void Take(in Crossing crossing) =>
            Db += isAngled[crossing.Construction] && crossing.Kind != LossKind.Object ? PathLossFields.AngleStepDb / 2 : fields.RoundingDb;
    }
}
