using CsCheck;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields.Shadows;

namespace MeshSim.Tests.Propagation.Fields.Shadows;

public sealed class RowKernelTests
{
    private const int Columns = 64, Spare = 24;
    private const float ShortestSquare = 0.01f, UnitDb = 0.00025f;

    private static readonly Gen<Case> Cases = Gen.Select(
        Gen.Int[-400_000, 400_000].Array[Columns], Gen.Float[0.0001f, 400], Gen.Double[1.2, 6], Gen.Double[Detour.ExtraDb.Min, Detour.ExtraDb.Max], Gen.Bool,
        (jumps, rest, exponent, extraDb, goesRound) => new Case(jumps, rest, exponent, goesRound ? extraDb : null));

    private delegate void Pass(Span<float> lossesDb, Span<int> cells, int start, ReadOnlySpan<float> squares, RowGeometry row, DistanceLaw law);

    private delegate void LastPass(Span<float> lossesDb, ReadOnlySpan<float> squares, RowGeometry row, DistanceLaw law);

    [Fact]
    public void Sums_distance_and_way_round_are_what_the_formulas_say() => Cases.Sample(of => Check(of, RowKernel.SumWithDistance, RowKernel.GoRound));

    [Fact]
    public void Sixteen_columns_at_a_time_are_what_the_formulas_say()
    {
        Assert.SkipUnless(WideRowKernel.IsSupported, "skipped: the processor has no vectors of sixteen numbers");
        Cases.Sample(of => Check(of, WideRowKernel.SumWithDistance, WideRowKernel.GoRound));
    }

    private static void Check(Case of, Pass pass, LastPass lastPass)
    {
        int[] sums = of.Sums(), cells = [.. of.Cells(sums), .. new int[Spare]];
        float[] squares = [.. Enumerable.Range(0, Columns).Select(column => column * 0.05f * column * 0.05f)], lossesDb = new float[Columns];
        pass(lossesDb, cells, of.Start, squares, new(of.Rest, 0), of.Law);
        Compare(lossesDb);
        cells.Should().OnlyContain(cell => cell == 0, "each strip starts with empty rows");

        if (of.ExtraDb is null) return;
        for (int i = 0; i < Columns; i++) lossesDb[i] = sums[i] * UnitDb;
        lastPass(lossesDb, squares, new(of.Rest, 0), of.Law);
        Compare(lossesDb);

        void Compare(float[] actualDb)
        {
            for (int i = 0; i < Columns; i++) ((double)actualDb[i]).Should().BeApproximately(of.LossDb(sums[i], squares[i]), FieldOracle.SinglePrecisionDb);
        }
    }

    private sealed record Case(int[] Jumps, float Rest, double Exponent, double? ExtraDb)
    {
        private const double OneMetreDb = 40.2;

        public int Start { get; } = Math.Abs(Jumps[0]);

        public DistanceLaw Law => new(
            (float)(OneMetreDb + NoWallDb), (float)(5 * Exponent * Math.Log10(2)), ShortestSquare, UnitDb, ExtraDb is not null, (float)(ExtraDb ?? 0));

        private double NoWallDb => ExtraDb is { } extraDb ? 10 * Math.Log10(1 + Math.Pow(10, -extraDb / 10)) : 0;

        /// <summary>Sums along the row, none below 0 as those of walls are.</summary>
        public int[] Sums()
        {
            var sums = new int[Columns];
            for (int i = 0, sum = Start; i < Columns; i++) sums[i] = sum = Math.Max(0, sum + (i % 3 == 0 ? Jumps[i] : 0));
            return sums;
        }

        public IEnumerable<int> Cells(int[] sums) => sums.Select((sum, i) => sum - (i == 0 ? Start : sums[i - 1]));

        public double LossDb(int sum, double square)
        {
            double wallsDb = sum * (double)UnitDb;
            return OneMetreDb + (5 * Exponent * Math.Log10(Math.Max(ShortestSquare, square + (double)Rest))) + (ExtraDb is { } extraDb ? Detour.LossDb(wallsDb, extraDb) : wallsDb);
        }
    }
}
