using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>Writes the jumps of borders into the difference rows of one strip, eight rows at a time.</summary>
internal static class ScatterKernel
{
    private static readonly Vector256<int> BitOfLane = Vector256.Create(1, 2, 4, 8, 16, 32, 64, 128);

    /// <summary>Cells of one channel's strip: the rows, then one cell per row for what falls outside.</summary>
    public static int CellCount(int pitch) => (pitch + 1) * ShadowLines.StripRows;

    /// <summary>
    /// Adds a border's jump right of it in every row of the strip that it covers. Rows in which rounding might decide are left
    /// out and returned, for the exact decision.
    /// </summary>
    /// <param name="cells">The channel's difference rows, of <see cref="CellCount"/>.</param>
    /// <param name="pitch">Cells from row to row, above the number of columns.</param>
    /// <param name="columns">Number of columns.</param>
    /// <param name="line">The border.</param>
    /// <param name="firstRow">First row of the strip.</param>
    /// <returns>A bit for each row left out.</returns>
    public static uint Scatter(Span<int> cells, int pitch, int columns, in ShadowLine line, int firstRow)
    {
        float slope = (float)line.Beta;
        float atFirst = (float)(line.Alpha + (line.Beta * firstRow));

        // Inside the grid all terms stay below columns + 8 |slope|, and each of the few roundings costs 2^-24 of that.
        float doubt = (columns + (8 * Math.Abs(slope))) * (1f / (1 << 21));
        Vector256<int> lanes = Vector256<int>.Indices;
        Vector256<float> place = Vector256.MultiplyAddEstimate(
            Vector256.Create(slope), Vector256<float>.Indices, Vector256.Create(atFirst));
        Vector256<float> floor = Vector256.Floor(place);
        Vector256<float> beyond = place - floor;
        uint doubtful = (Vector256.LessThan(beyond, Vector256.Create(doubt))
            | Vector256.GreaterThan(beyond, Vector256.Create(1 - doubt))).ExtractMostSignificantBits();

        Vector256<float> clamped = Vector256.MaxNative(Vector256.MinNative(floor, Vector256.Create(columns - 1f)), Vector256.Create(-1f));
        Vector256<int> at = Vector256.ConvertToInt32Native(clamped) + Vector256<int>.One + (lanes * pitch);
        if (doubtful != 0 || line.First > firstRow || line.Last < firstRow + ShadowLines.StripRows - 1)
        {
            Vector256<int> rows = lanes + Vector256.Create(firstRow);
            Vector256<int> isCovered = Vector256.GreaterThanOrEqual(rows, Vector256.Create(line.First))
                & Vector256.LessThanOrEqual(rows, Vector256.Create(line.Last));
            doubtful &= isCovered.ExtractMostSignificantBits();
            Vector256<int> isSure = Vector256.Equals(Vector256.Create((int)doubtful) & BitOfLane, Vector256<int>.Zero);
            at = Vector256.ConditionalSelect(isCovered & isSure, at, lanes + Vector256.Create(pitch * ShadowLines.StripRows));
        }

        AddAt(ref MemoryMarshal.GetReference(cells), at, line.Jump);
        return doubtful;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void AddAt(ref int cells, Vector256<int> at, int jump)
    {
        Unsafe.SkipInit(out EightNumbers places);
        Unsafe.As<EightNumbers, Vector256<int>>(ref places) = at;
        Unsafe.Add(ref cells, places.N0) += jump;
        Unsafe.Add(ref cells, places.N1) += jump;
        Unsafe.Add(ref cells, places.N2) += jump;
        Unsafe.Add(ref cells, places.N3) += jump;
        Unsafe.Add(ref cells, places.N4) += jump;
        Unsafe.Add(ref cells, places.N5) += jump;
        Unsafe.Add(ref cells, places.N6) += jump;
        Unsafe.Add(ref cells, places.N7) += jump;
    }
}

/// <summary>The lanes of a vector as they lie in memory, to be read one by one.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct EightNumbers
{
    public int N0, N1, N2, N3, N4, N5, N6, N7;
}
