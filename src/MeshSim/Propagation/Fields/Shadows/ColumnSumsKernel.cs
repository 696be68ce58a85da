using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>Eight columns of each of the eight rows of a strip.</summary>
internal readonly ref struct EightRows
{
    public readonly Vector256<int> R0, R1, R2, R3, R4, R5, R6, R7;

    /// <summary>From columns of eight rows to rows of eight columns: first within quarters of eight by eight, then the quarters.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public EightRows(
        Vector256<int> c0, Vector256<int> c1, Vector256<int> c2, Vector256<int> c3, Vector256<int> c4, Vector256<int> c5, Vector256<int> c6, Vector256<int> c7)
    {
        (Vector256<int> left0, Vector256<int> left1, Vector256<int> left2, Vector256<int> left3) = Turn(c0, c1, c2, c3);
        (Vector256<int> right0, Vector256<int> right1, Vector256<int> right2, Vector256<int> right3) = Turn(c4, c5, c6, c7);
        (R0, R4) = (Vector256.Create(left0.GetLower(), right0.GetLower()), Vector256.Create(left0.GetUpper(), right0.GetUpper()));
        (R1, R5) = (Vector256.Create(left1.GetLower(), right1.GetLower()), Vector256.Create(left1.GetUpper(), right1.GetUpper()));
        (R2, R6) = (Vector256.Create(left2.GetLower(), right2.GetLower()), Vector256.Create(left2.GetUpper(), right2.GetUpper()));
        (R3, R7) = (Vector256.Create(left3.GetLower(), right3.GetLower()), Vector256.Create(left3.GetUpper(), right3.GetUpper()));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector256<int> Row0, Vector256<int> Row1, Vector256<int> Row2, Vector256<int> Row3) Turn(
        Vector256<int> c0, Vector256<int> c1, Vector256<int> c2, Vector256<int> c3)
    {
        Vector256<long> low01 = Low(c0, c1).AsInt64(), high01 = High(c0, c1).AsInt64(), low23 = Low(c2, c3).AsInt64(), high23 = High(c2, c3).AsInt64();
        return (Low(low01, low23).AsInt32(), High(low01, low23).AsInt32(), Low(high01, high23).AsInt32(), High(high01, high23).AsInt32());
    }

    // The lower (upper) numbers of each half of both, in turns.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> Low(Vector256<int> a, Vector256<int> b) => Avx2.IsSupported
        ? Avx2.UnpackLow(a, b)
        : Vector256.Create(a[0], b[0], a[1], b[1], a[4], b[4], a[5], b[5]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> High(Vector256<int> a, Vector256<int> b) => Avx2.IsSupported
        ? Avx2.UnpackHigh(a, b)
        : Vector256.Create(a[2], b[2], a[3], b[3], a[6], b[6], a[7], b[7]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<long> Low(Vector256<long> a, Vector256<long> b) =>
        Avx2.IsSupported ? Avx2.UnpackLow(a, b) : Vector256.Create(a[0], b[0], a[2], b[2]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<long> High(Vector256<long> a, Vector256<long> b) =>
        Avx2.IsSupported ? Avx2.UnpackHigh(a, b) : Vector256.Create(a[1], b[1], a[3], b[3]);
}

/// <summary>The running sums of the eight rows of a strip, column by column.</summary>
internal static class ColumnSumsKernel
{
    /// <summary>Columns that are summed at once.</summary>
    public const int Columns = 8;

    private const int Rows = ShadowLines.StripRows;

    /// <summary>Whether all sums are zero and nothing changes in the next columns.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool StaysZero(ref int cells, Vector256<int> before)
    {
        Vector256<int> first = before | At(ref cells, 0) | At(ref cells, 1) | At(ref cells, 2);
        return (first | At(ref cells, 3) | At(ref cells, 4) | At(ref cells, 5) | At(ref cells, 6) | At(ref cells, 7)) == Vector256<int>.Zero;
    }

    /// <summary>The sums up to each of the next columns; their cells become zero.</summary>
    /// <param name="cells">The first of the columns.</param>
    /// <param name="before">The sums before it; becomes those of the last column.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightRows Advance(ref int cells, ref Vector256<int> before)
    {
        Vector256<int> c0 = before + At(ref cells, 0), c1 = c0 + At(ref cells, 1), c2 = c1 + At(ref cells, 2), c3 = c2 + At(ref cells, 3);
        Vector256<int> c4 = c3 + At(ref cells, 4), c5 = c4 + At(ref cells, 5), c6 = c5 + At(ref cells, 6), c7 = c6 + At(ref cells, 7);
        for (int column = 0; column < Columns; column++) Vector256<int>.Zero.StoreUnsafe(ref cells, (nuint)(column * Rows));
        before = c7;
        return new(c0, c1, c2, c3, c4, c5, c6, c7);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> At(ref int cells, int column) => Vector256.LoadUnsafe(ref cells, (nuint)(column * Rows));
}
