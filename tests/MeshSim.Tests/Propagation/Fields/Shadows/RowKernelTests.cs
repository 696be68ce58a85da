using CsCheck;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields.Shadows;

namespace MeshSim.Tests.Propagation.Fields.Shadows;

public sealed class RowKernelTests
{
    private const int Columns = 64, Rows = ShadowLines.StripRows;
    private const float ShortestSquare = 0.01f, UnitDb = 0.00025f;

    private static readonly Gen<Case> Cases = Gen.Select(
        Gen.Int[-400_000, 400_000].Array[Rows * Columns], Gen.Float[0.0001f, 400], Gen.Double[1.2, 6], Gen.Double[Detour.ExtraDb.Min, Detour.ExtraDb.Max], Gen.Bool,
        (jumps, rest, exponent, extraDb, goesRound) => new Case(jumps, rest, exponent, goesRound ? extraDb : null));

    private delegate void SumPass(Span<float> lossesDb, Span<int> cells, ReadOnlySpan<int> starts, float decibelsPerQuarter);

    private delegate void LastPass(Span<float> lossesDb, ReadOnlySpan<float> squares, RowGeometry row, DistanceLaw law);

    [Fact]
    public void Sums_distance_and_way_round_are_what_the_formulas_say() => Cases.Sample(of => Check(of, RowKernel.Sum, RowKernel.Finish));

    [Fact]
    public void Sixteen_columns_at_a_time_are_what_the_formulas_say()
    {
        Assert.SkipUnless(WideRowKernel.IsSupported, "skipped: the processor has no vectors of sixteen numbers");
        Cases.Sample(of => Check(of, WideRowKernel.Sum, WideRowKernel.Finish));
    }

    private static void Check(Case of, SumPass sum, LastPass finish)
    {
        int[] cells = new StripCells(Columns).All.ToArray();
        for (int row = 0; row < Rows; row++)
            for (int column = 0; column < Columns; column++) cells[(column * Rows) + row] = of.Change(row, column);
        float[] squares = [.. Enumerable.Range(0, Columns).Select(column => column * 0.05f * column * 0.05f)], lossesDb = new float[Rows * Columns];
        sum(lossesDb, cells, [.. Enumerable.Range(0, Rows).Select(of.Start)], UnitDb);
        cells.Should().OnlyContain(cell => cell == 0, "each strip starts with empty rows");
        for (int row = 0; row < Rows; row++)
        {
            Span<float> ofRow = lossesDb.AsSpan(row * Columns, Columns);
            for (int column = 0; column < Columns; column++) ofRow[column].Should().Be(of.Sums[row][column] * UnitDb);
            finish(ofRow, squares, new(of.Rest, 0, Case.FloorsDb), of.Law);
            for (int column = 0; column < Columns; column++)
                ((double)ofRow[column]).Should().BeApproximately(of.LossDb(of.Sums[row][column], squares[column]), FieldOracle.SinglePrecisionDb);
        }
    }

    private sealed record Case(int[] Jumps, float Rest, double Exponent, double? ExtraDb)
    {
        public const float FloorsDb = 7;

        private const double OneMetreDb = 40.2;

        /// <summary>Sums along each row, none below 0 as those of walls are.</summary>
        public int[][] Sums { get; } = [.. Jumps.Chunk(Columns).Select(SumsOf)];

        public DistanceLaw Law => new(
            (float)(OneMetreDb + NoWallDb), (float)(5 * Exponent * Math.Log10(2)), ShortestSquare, UnitDb, ExtraDb is not null, (float)(ExtraDb ?? 0));

        private double NoWallDb => ExtraDb is { } extraDb ? 10 * Math.Log10(1 + Math.Pow(10, -extraDb / 10)) : 0;

        public int Start(int row) => StartOf(Jumps[row * Columns]);

        public int Change(int row, int column) => Sums[row][column] - (column == 0 ? Start(row) : Sums[row][column - 1]);

        public double LossDb(int sum, double square)
        {
            double wallsDb = sum * (double)UnitDb;
            return OneMetreDb + FloorsDb
                + (5 * Exponent * Math.Log10(Math.Max(ShortestSquare, square + (double)Rest)))
                + (ExtraDb is { } extraDb ? Detour.LossDb(wallsDb, extraDb) : wallsDb);
        }

        private static int StartOf(int jump) => Math.Abs(jump);

        private static int[] SumsOf(int[] jumps)
        {
            var sums = new int[jumps.Length];
            for (int i = 0, sum = StartOf(jumps[0]); i < sums.Length; i++) sums[i] = sum = Math.Max(0, sum + (i % 3 == 0 ? jumps[i] : 0));
            return sums;
        }
    }
}
