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

    /// <summary>As <see cref="RowKernel.SumWithDistance"/>.</summary>
    public static void SumWithDistance(
        Span<float> lossesDb, Span<int> cells, int start, ReadOnlySpan<float> squaredAlongX, RowGeometry row, DistanceLaw law)
    {
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref int cell = ref MemoryMarshal.GetReference(cells);
        ref float square = ref MemoryMarshal.GetReference(squaredAlongX);
        var air = new Air(Logarithms, law);
        var savings = new Cubics(Savings);
        Vector512<int> before = Vector512.Create(start), ofCells = RunningSum(ref cell);
        Vector512<float> rest = Vector512.Create(row.SquaredRest), least = Vector512.Create(law.LeastSquareMetres);
        Vector512<float> unit = Vector512.Create(law.DecibelsPerQuarter), extra = Vector512.Create(law.ExtraDb);
        for (int i = 0; i < lossesDb.Length; i += Lanes)
        {
            Vector512<int> sum = ofCells + before;
            before += Vector512.Shuffle(ofCells, Vector512.Create(Lanes - 1));

            // One vector ahead, so that the processor need not wait for a sum before it can use it; rows have cells to spare.
            ofCells = RunningSum(ref Unsafe.Add(ref cell, i + Lanes));
            Vector512<float> squared = Vector512.MaxNative(Vector512.LoadUnsafe(ref square, (nuint)i) + rest, least);
            Vector512<float> wallsDb = Vector512.ConvertToSingle(sum) * unit;
            if (law.GoesRound) wallsDb = OfTwoWays(wallsDb, extra, savings);
            (air.LossDb(squared) + wallsDb).StoreUnsafe(ref to, (nuint)i);
        }
    }

    /// <summary>As <see cref="RowKernel.GoRound"/>.</summary>
    public static void GoRound(Span<float> lossesDb, ReadOnlySpan<float> squaredAlongX, RowGeometry row, DistanceLaw law)
    {
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref float square = ref MemoryMarshal.GetReference(squaredAlongX);
        var air = new Air(Logarithms, law);
        var savings = new Cubics(Savings);
        Vector512<float> rest = Vector512.Create(row.SquaredRest), least = Vector512.Create(law.LeastSquareMetres);
        Vector512<float> extra = Vector512.Create(law.ExtraDb);
        for (int i = 0; i < lossesDb.Length; i += Lanes)
        {
            Vector512<float> squared = Vector512.MaxNative(Vector512.LoadUnsafe(ref square, (nuint)i) + rest, least);
            Vector512<float> wallsDb = OfTwoWays(Vector512.LoadUnsafe(ref to, (nuint)i), extra, savings);
            (air.LossDb(squared) + wallsDb).StoreUnsafe(ref to, (nuint)i);
        }
    }

    // The sum up to each of sixteen cells; the cells become zero. First within quarters, where a shift is one instruction.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<int> RunningSum(ref int cells)
    {
        Vector512<int> sum = Vector512.LoadUnsafe(ref cells);
        Vector512<int>.Zero.StoreUnsafe(ref cells);
        sum += Avx512BW.ShiftLeftLogical128BitLane(sum.AsByte(), 4).AsInt32();
        sum += Avx512BW.ShiftLeftLogical128BitLane(sum.AsByte(), 8).AsInt32();
        sum += Vector512.Shuffle(sum, Vector512.Create(16, 16, 16, 16, 3, 3, 3, 3, 16, 16, 16, 16, 11, 11, 11, 11));
        return sum + Vector512.Shuffle(sum, Vector512.Create(16, 16, 16, 16, 16, 16, 16, 16, 7, 7, 7, 7, 7, 7, 7, 7));
    }

    // The loss of two ways whose powers add, dB: min(a, b) − 10 lg(1 + 10^(−|a − b| / 10)).
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<float> OfTwoWays(Vector512<float> wallsDb, Vector512<float> extraDb, Cubics savings)
    {
        Vector512<float> perPiece = Vector512.Create(1 / DecibelsPerPiece);
        Vector512<float> apart = Vector512.Abs(Vector512.MultiplyAddEstimate(wallsDb, perPiece, extraDb * -perPiece));
        apart = Vector512.MinNative(apart, Vector512.Create(MostApart));
        return Vector512.MinNative(wallsDb, extraDb) - savings.At(apart, Vector512.ConvertToInt32Native(apart));
    }

    // Only the four lowest bits of the number of a piece count.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<float> Chosen(Vector512<float> numbers, Vector512<int> piece) => Avx512F.PermuteVar16x32(numbers, piece);

    // What distance alone costs: slope and constant are in the coefficients.
    private readonly struct Air(Pieces pieces, DistanceLaw law)
    {
        private readonly Vector512<float> constants = (Vector512.Create(pieces.Coefficients[0]) * law.SlopeDb) + Vector512.Create(law.ConstantDb);
        private readonly Vector512<float> linear = Vector512.Create(pieces.Coefficients[1]) * law.SlopeDb;
        private readonly Vector512<float> squares = Vector512.Create(pieces.Coefficients[2]) * law.SlopeDb, slope = Vector512.Create(law.SlopeDb);

        // The four highest bits of the mantissa choose the piece.
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector512<float> LossDb(Vector512<float> squareMetres)
        {
            Vector512<float> mantissa = Avx512F.GetMantissa(squareMetres, 0), exponent = Avx512F.GetExponent(squareMetres);
            Vector512<int> piece = Vector512.ShiftRightLogical(squareMetres.AsInt32(), 19);
            Vector512<float> sum = Vector512.MultiplyAddEstimate(Chosen(squares, piece), mantissa, Chosen(linear, piece));
            sum = Vector512.MultiplyAddEstimate(sum, mantissa, Chosen(constants, piece));
            return Vector512.MultiplyAddEstimate(exponent, slope, sum);
        }
    }

    // Coefficients in registers.
    private readonly struct Cubics(Pieces pieces)
    {
        private readonly Vector512<float> constants = Vector512.Create(pieces.Coefficients[0]), linear = Vector512.Create(pieces.Coefficients[1]);
        private readonly Vector512<float> squares = Vector512.Create(pieces.Coefficients[2]), cubes = Vector512.Create(pieces.Coefficients[3]);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector512<float> At(Vector512<float> x, Vector512<int> piece)
        {
            Vector512<float> low = Vector512.MultiplyAddEstimate(Chosen(linear, piece), x, Chosen(constants, piece));
            Vector512<float> high = Vector512.MultiplyAddEstimate(Chosen(cubes, piece), x, Chosen(squares, piece));
            return Vector512.MultiplyAddEstimate(high, x * x, low);
        }
    }
}
