using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// The two passes of <see cref="RowKernel"/> that every row needs, sixteen columns at a time, where the processor has such vectors.
/// There one instruction chooses among sixteen numbers, so logarithm and way round are cubics in sixteen pieces.
/// </summary>
internal static class WideRowKernel
{
    /// <summary>Numbers in a vector: rows are padded to a multiple.</summary>
    public const int Lanes = 16;

    // Log₂ of mantissas from 1 to 2, to 4e-6.
    private static readonly Pieces Logarithms = Pieces.Of(Math.Log2, 1, 2, degree: 2);

    private const float DecibelsPerPiece = 3, MostApart = 15.999f;

    // What two ways together save on the better one, dB, by how far apart they are, in pieces: to 4e-5 dB. Farther apart than all
    // pieces they save no more than that.
    private static readonly Pieces Savings = Pieces.Of(apart => 10 * Math.Log10(1 + Math.Pow(10, -apart * DecibelsPerPiece / 10)), 0, Pieces.Count, degree: 3);

    /// <summary>Whether the processor has what this needs.</summary>
    public static bool IsSupported => Avx512BW.IsSupported;

    /// <summary>As <see cref="RowKernel.Sum"/>.</summary>
    public static void Sum(Span<float> lossesDb, Span<int> cells, ReadOnlySpan<int> starts, float decibelsPerQuarter)
    {
        int pitch = lossesDb.Length / ShadowLines.StripRows;
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref int cell = ref MemoryMarshal.GetReference(cells);
        Vector256<int> before = Vector256.Create(starts);
        Vector512<float> unit = Vector512.Create(decibelsPerQuarter);
        for (int i = 0; i < pitch; i += Lanes)
        {
            // Eight columns in halves of four, then the same of the next eight.
            ref int columns = ref Unsafe.Add(ref cell, i * ShadowLines.StripRows);
            Quarters left = SumEight(ref columns, ref before), right = SumEight(ref Unsafe.Add(ref columns, 8 * ShadowLines.StripRows), ref before);
            ref float at = ref Unsafe.Add(ref to, i);
            Store(left.Row0And4, right.Row0And4, unit, ref at, pitch);
            Store(left.Row1And5, right.Row1And5, unit, ref Unsafe.Add(ref at, pitch), pitch);
            Store(left.Row2And6, right.Row2And6, unit, ref Unsafe.Add(ref at, 2 * pitch), pitch);
            Store(left.Row3And7, right.Row3And7, unit, ref Unsafe.Add(ref at, 3 * pitch), pitch);
        }
    }

    /// <summary>As <see cref="RowKernel.Finish"/>.</summary>
    public static void Finish(Span<float> lossesDb, ReadOnlySpan<float> squaredAlongX, RowGeometry row, DistanceLaw law)
    {
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref float square = ref MemoryMarshal.GetReference(squaredAlongX);
        var air = new Air(law, row);
        var round = new Round(law);
        for (int i = 0; i < lossesDb.Length; i += Lanes)
        {
            Vector512<float> wallsDb = Vector512.LoadUnsafe(ref to, (nuint)i), squareMetres = Vector512.LoadUnsafe(ref square, (nuint)i);
            if (law.GoesRound) wallsDb = round.OfTwoWays(wallsDb);
            (air.LossDb(squareMetres) + wallsDb).StoreUnsafe(ref to, (nuint)i);
        }
    }

    // The sums up to each of eight columns, turned: of each row four columns, of the row four below it as many, then the next four.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Quarters SumEight(ref int columns, ref Vector256<int> before)
    {
        Vector256<int> c0 = before + At(ref columns, 0), c1 = c0 + At(ref columns, 1), c2 = c1 + At(ref columns, 2), c3 = c2 + At(ref columns, 3);
        Vector256<int> c4 = c3 + At(ref columns, 4), c5 = c4 + At(ref columns, 5), c6 = c5 + At(ref columns, 6), c7 = c6 + At(ref columns, 7);
        for (int i = 0; i < 8 * ShadowLines.StripRows; i += Lanes) Vector512<int>.Zero.StoreUnsafe(ref columns, (nuint)i);
        before = c7;
        return new(Vector512.Create(c0, c4), Vector512.Create(c1, c5), Vector512.Create(c2, c6), Vector512.Create(c3, c7));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> At(ref int columns, int column) => Vector256.LoadUnsafe(ref columns, (nuint)(column * ShadowLines.StripRows));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Store(Vector512<int> left, Vector512<int> right, Vector512<float> unit, ref float to, int pitch)
    {
        (Vector512.ConvertToSingle(Avx512F.Shuffle4x128(left, right, 0b10_00_10_00)) * unit).StoreUnsafe(ref to);
        (Vector512.ConvertToSingle(Avx512F.Shuffle4x128(left, right, 0b11_01_11_01)) * unit).StoreUnsafe(ref Unsafe.Add(ref to, 4 * pitch));
    }

    // Only the four lowest bits of the number of a piece count.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<float> Chosen(Vector512<float> numbers, Vector512<int> piece) => Avx512F.PermuteVar16x32(numbers, piece);

    // Quarters of eight by eight numbers, each turned.
    private readonly ref struct Quarters
    {
        public readonly Vector512<int> Row0And4, Row1And5, Row2And6, Row3And7;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Quarters(Vector512<int> c0, Vector512<int> c1, Vector512<int> c2, Vector512<int> c3)
        {
            Vector512<long> low01 = Avx512F.UnpackLow(c0, c1).AsInt64(), high01 = Avx512F.UnpackHigh(c0, c1).AsInt64();
            Vector512<long> low23 = Avx512F.UnpackLow(c2, c3).AsInt64(), high23 = Avx512F.UnpackHigh(c2, c3).AsInt64();
            (Row0And4, Row1And5) = (Avx512F.UnpackLow(low01, low23).AsInt32(), Avx512F.UnpackHigh(low01, low23).AsInt32());
            (Row2And6, Row3And7) = (Avx512F.UnpackLow(high01, high23).AsInt32(), Avx512F.UnpackHigh(high01, high23).AsInt32());
        }
    }

    // What distance alone costs in one row: slope and constant are in the coefficients.
    private readonly struct Air(DistanceLaw law, RowGeometry row)
    {
        private readonly Vector512<float> constants = (Vector512.Create(Logarithms.Coefficients[0]) * law.SlopeDb) + Vector512.Create(law.ConstantDb + row.FloorsDb);
        private readonly Vector512<float> linear = Vector512.Create(Logarithms.Coefficients[1]) * law.SlopeDb;
        private readonly Vector512<float> squares = Vector512.Create(Logarithms.Coefficients[2]) * law.SlopeDb, slope = Vector512.Create(law.SlopeDb);
        private readonly Vector512<float> rest = Vector512.Create(row.SquaredRest), least = Vector512.Create(law.LeastSquareMetres);

        // The four highest bits of the mantissa choose the piece.
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector512<float> LossDb(Vector512<float> squareAlongX)
        {
            Vector512<float> squareMetres = Vector512.MaxNative(squareAlongX + rest, least);
            Vector512<float> mantissa = Avx512F.GetMantissa(squareMetres, 0), exponent = Avx512F.GetExponent(squareMetres);
            Vector512<int> piece = Vector512.ShiftRightLogical(squareMetres.AsInt32(), 19);
            Vector512<float> sum = Vector512.MultiplyAddEstimate(Chosen(squares, piece), mantissa, Chosen(linear, piece));
            sum = Vector512.MultiplyAddEstimate(sum, mantissa, Chosen(constants, piece));
            return Vector512.MultiplyAddEstimate(exponent, slope, sum);
        }
    }

    // What walls cost: the loss of two ways whose powers add, dB: min(a, b) − 10 lg(1 + 10^(−|a − b| / 10)).
    private readonly struct Round(DistanceLaw law)
    {
        private readonly Vector512<float> constants = Vector512.Create(Savings.Coefficients[0]), linear = Vector512.Create(Savings.Coefficients[1]);
        private readonly Vector512<float> squares = Vector512.Create(Savings.Coefficients[2]), cubes = Vector512.Create(Savings.Coefficients[3]);
        private readonly Vector512<float> extra = Vector512.Create(law.ExtraDb), extraPieces = Vector512.Create(law.ExtraDb / -DecibelsPerPiece);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector512<float> OfTwoWays(Vector512<float> wallsDb)
        {
            Vector512<float> apart = Vector512.Abs(Vector512.MultiplyAddEstimate(wallsDb, Vector512.Create(1 / DecibelsPerPiece), extraPieces));
            apart = Vector512.MinNative(apart, Vector512.Create(MostApart));
            Vector512<int> piece = Vector512.ConvertToInt32Native(apart);
            Vector512<float> low = Vector512.MultiplyAddEstimate(Chosen(linear, piece), apart, Chosen(constants, piece));
            Vector512<float> high = Vector512.MultiplyAddEstimate(Chosen(cubes, piece), apart, Chosen(squares, piece));
            return Vector512.MinNative(wallsDb, extra) - Vector512.MultiplyAddEstimate(high, apart * apart, low);
        }
    }
}
