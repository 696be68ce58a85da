using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>A border while strips pass over it, small enough that thousands stay in the cache.</summary>
/// <param name="Alpha">Column coordinate on row 0.</param>
/// <param name="Beta">Change of it from row to row.</param>
/// <param name="First">First row.</param>
/// <param name="Last">Last row.</param>
/// <param name="Jump">Value on the right less value on the left.</param>
/// <param name="Index">Which of all borders.</param>
internal readonly record struct ActiveLine(double Alpha, double Beta, int First, int Last, int Jump, int Index);

/// <summary>One strip of rows.</summary>
/// <param name="Pitch">Cells from row to row, above the number of columns.</param>
/// <param name="Columns">Number of columns.</param>
/// <param name="FirstRow">Its first row.</param>
internal readonly record struct StripFrame(int Pitch, int Columns, int FirstRow);

/// <summary>Writes the jumps of borders into the difference rows of one strip, eight rows at a time.</summary>
internal static class ScatterKernel
{
    // Rows that a border does not cover write to spare cells, each border to others than the few before it: a processor that
    // guesses which loads depend on which stores guesses wrong when the same cell is met again too soon.
    private const int SparesPerRow = 16;

    /// <summary>Cells of one channel's strip: the rows, then the spare cells for what falls outside.</summary>
    public static int CellCount(int pitch) => (pitch + SparesPerRow) * ShadowLines.StripRows;

    /// <summary>
    /// Adds the jump of each border right of it in every row of the strip that it covers. Rows in which rounding might decide are
    /// left out and listed, for the exact decision.
    /// </summary>
    /// <param name="cells">The channel's difference rows, of <see cref="CellCount"/>.</param>
    /// <param name="strip">The strip.</param>
    /// <param name="lines">The borders that reach it; those that reach the next strip move to the front.</param>
    /// <param name="doubts">Emptied and filled: the borders left out somewhere, with a bit for each row.</param>
    /// <returns>How many reach the next strip.</returns>
    public static int Scatter(Span<int> cells, StripFrame strip, Span<ActiveLine> lines, List<(int Line, uint Rows)> doubts)
    {
        int kept = 0, lastRow = strip.FirstRow + ShadowLines.StripRows - 1;
        doubts.Clear();
        ref int cell = ref MemoryMarshal.GetReference(cells);
        Vector256<int> lanes = Vector256<int>.Indices, rows = lanes + Vector256.Create(strip.FirstRow);
        Vector256<int> nextCell = (lanes * strip.Pitch) + Vector256<int>.One, firstSpare = (lanes * SparesPerRow) + Vector256.Create(strip.Pitch * ShadowLines.StripRows);
        Vector256<float> lastPlace = Vector256.Create(strip.Columns - 1f);
        for (int i = 0; i < lines.Length; i++)
        {
            ActiveLine line = lines[i];

            // Without a branch: which borders end is as good as random.
            lines[kept] = line;
            kept += line.Last > lastRow ? 1 : 0;
            float slope = (float)line.Beta, atFirst = (float)(line.Alpha + (line.Beta * strip.FirstRow));

            // Inside the grid all terms stay below columns + 8 |slope|, and each of the few roundings costs 2^-24 of that.
            float doubt = (strip.Columns + (8 * Math.Abs(slope))) * (1f / (1 << 21));
            Vector256<float> place = Vector256.MultiplyAddEstimate(
                Vector256.Create(slope), Vector256<float>.Indices, Vector256.Create(atFirst));
            Vector256<float> floor = Vector256.Floor(place), beyond = place - floor;
            Vector256<int> isSure = Vector256.GreaterThanOrEqual(beyond, Vector256.Create(doubt)).AsInt32()
                & Vector256.LessThanOrEqual(beyond, Vector256.Create(1 - doubt)).AsInt32();
            Vector256<int> isCovered = Vector256.GreaterThanOrEqual(rows, Vector256.Create(line.First))
                & Vector256.LessThanOrEqual(rows, Vector256.Create(line.Last));
            Vector256<float> clamped = Vector256.MaxNative(Vector256.MinNative(floor, lastPlace), Vector256.Create(-1f));
            Vector256<int> spare = firstSpare + Vector256.Create(i % SparesPerRow);
            Vector256<int> at = Vector256.ConditionalSelect(isCovered & isSure, Vector256.ConvertToInt32Native(clamped) + nextCell, spare);
            AddAt(ref cell, at, line.Jump);
            uint doubtful = Vector256.AndNot(isCovered, isSure).ExtractMostSignificantBits();
            if (doubtful != 0) doubts.Add((line.Index, doubtful));
        }

        return kept;
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
