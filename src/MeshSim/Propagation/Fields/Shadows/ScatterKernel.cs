using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>A border while strips pass over it: one vector, so that thousands stay in the cache.</summary>
/// <param name="Alpha">Column coordinate on row 0.</param>
/// <param name="Beta">Change of it from row to row.</param>
/// <param name="Last">Last row.</param>
/// <param name="Jump">Value on the right less value on the left.</param>
/// <param name="Index">Which of all borders.</param>
/// <param name="SurePart">How far from the middle between two columns rounding cannot decide, columns.</param>
internal readonly record struct ActiveLine(double Alpha, double Beta, int Last, int Jump, int Index, float SurePart)
{
    // What eight roundings in single precision cost.
    private const float Rounding = 1f / (1 << 21);

    /// <summary>Of a border.</summary>
    /// <param name="line">The border.</param>
    /// <param name="jump">Value on the right less value on the left.</param>
    /// <param name="index">Which of all borders.</param>
    /// <param name="columns">Number of columns.</param>
    public static ActiveLine Of(in ShadowLine line, int jump, int index, int columns)
    {
        // Inside the grid all terms stay below columns + 8 |slope|, and each of the few roundings costs 2^-24 of that.
        float doubt = (columns + (ShadowLines.StripRows * (float)Math.Abs(line.Beta))) * Rounding;
        return new(line.Alpha, line.Beta, line.Last, jump, index, 0.5f - doubt);
    }

    /// <summary>Whether it meets no more than two neighbouring columns in a strip.</summary>
    public bool IsSteep => Math.Abs(Beta) * (ShadowLines.StripRows - 1) < 1;
}

/// <summary>The rows of a strip in which rounding might decide where a border lies, a bit for each.</summary>
internal readonly record struct DoubtfulRows(int Line, uint Rows);

/// <summary>Writes the jumps of borders into the cells of one strip, eight rows at a time.</summary>
internal static class ScatterKernel
{
    /// <summary>
    /// Adds the jump of each border right of it in every row of the strip that it covers. Rows in which rounding might decide are
    /// left out and listed, for the exact decision.
    /// </summary>
    /// <param name="cells">The channel's changes.</param>
    /// <param name="firstRow">First row of the strip.</param>
    /// <param name="lines">The borders that reach it; those that reach the next strip move to the front.</param>
    /// <param name="begun">How many of them, at the front, cover the first row.</param>
    /// <param name="rests">The rest of all borders.</param>
    /// <param name="doubts">Added to: the borders left out somewhere.</param>
    /// <returns>How many reach the next strip.</returns>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static int Scatter(StripCells cells, int firstRow, Span<ActiveLine> lines, int begun, ReadOnlySpan<LineRest> rests, List<DoubtfulRows> doubts)
    {
        int lastRow = firstRow + ShadowLines.StripRows - 1;
        double row = firstRow;
        ref int cell = ref MemoryMarshal.GetReference(cells.All);
        ref ActiveLine line = ref MemoryMarshal.GetReference(lines), kept = ref line;
        ref ActiveLine fresh = ref Unsafe.Add(ref line, begun), end = ref Unsafe.Add(ref line, lines.Length);
        for (; Unsafe.IsAddressLessThan(ref line, ref end); line = ref Unsafe.Add(ref line, 1))
        {
            Vector256<float> place = PlacesOf(ref line, row), nearest = Vector256.Round(place);
            Vector256<int> at = CellsOf(nearest), isSure = SureRows(place, nearest, line.SurePart);
            bool isWhole = line.Last >= lastRow && Unsafe.IsAddressLessThan(ref line, ref fresh);
            if (!isWhole || isSure != Vector256<int>.AllBitsSet)
            {
                int firstCovered = Unsafe.IsAddressLessThan(ref line, ref fresh) ? firstRow : rests[line.Index].First;
                Vector256<int> isCovered = Covered(firstRow, firstCovered, line.Last), spare = Vector256.Create(cells.SpareOf(line.Index)) + Vector256<int>.Indices;
                uint doubtful = Vector256.AndNot(isCovered, isSure).ExtractMostSignificantBits();
                if (doubtful != 0) doubts.Add(new(line.Index, doubtful));
                at = Vector256.ConditionalSelect(isCovered & isSure, at, spare);
            }

            AddAt(ref cell, at, line.Jump);
            kept = ref Keep(ref kept, ref line, lastRow);
        }

        return (int)(Unsafe.ByteOffset(ref MemoryMarshal.GetReference(lines), ref kept) / Unsafe.SizeOf<ActiveLine>());
    }

    /// <summary>As <see cref="Scatter"/>, of steep borders: all rows change in two neighbouring columns.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static int ScatterSteep(StripCells cells, int firstRow, Span<ActiveLine> lines, int begun, ReadOnlySpan<LineRest> rests, List<DoubtfulRows> doubts)
    {
        int lastRow = firstRow + ShadowLines.StripRows - 1;
        double row = firstRow;
        ref int cell = ref MemoryMarshal.GetReference(cells.All);
        ref ActiveLine line = ref MemoryMarshal.GetReference(lines), kept = ref line;
        ref ActiveLine fresh = ref Unsafe.Add(ref line, begun), end = ref Unsafe.Add(ref line, lines.Length);
        for (; Unsafe.IsAddressLessThan(ref line, ref end); line = ref Unsafe.Add(ref line, 1))
        {
            Vector256<float> place = PlacesOf(ref line, row), nearest = Vector256.Round(place);
            int firstCovered = Unsafe.IsAddressLessThan(ref line, ref fresh) ? firstRow : rests[line.Index].First;
            Vector256<int> isChanged = Covered(firstRow, firstCovered, line.Last);
            Vector256<int> isSure = SureRows(place, nearest, line.SurePart);
            if (Vector256.AndNot(isChanged, isSure) != Vector256<int>.Zero)
            {
                doubts.Add(new(line.Index, Vector256.AndNot(isChanged, isSure).ExtractMostSignificantBits()));
                isChanged &= isSure;
            }

            Vector256<int> jump = Vector256.Create(line.Jump) & isChanged;
            Vector256<float> left = Vector256.Create(line.Beta < 0 ? nearest.GetElement(ShadowLines.StripRows - 1) : nearest.ToScalar());
            Vector256<int> isLeft = Vector256.Equals(nearest, left).AsInt32();
            ref int at = ref Unsafe.Add(ref cell, (int)left.ToScalar() * ShadowLines.StripRows);
            (Vector256.LoadUnsafe(ref at) + (jump & isLeft)).StoreUnsafe(ref at);
            ref int next = ref Unsafe.Add(ref at, ShadowLines.StripRows);
            (Vector256.LoadUnsafe(ref next) + Vector256.AndNot(jump, isLeft)).StoreUnsafe(ref next);
            kept = ref Keep(ref kept, ref line, lastRow);
        }

        return (int)(Unsafe.ByteOffset(ref MemoryMarshal.GetReference(lines), ref kept) / Unsafe.SizeOf<ActiveLine>());
    }

    // Half a column on: the nearest whole number is the first column right of the border.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<float> PlacesOf(ref readonly ActiveLine line, double row)
    {
        float atFirst = (float)(line.Alpha + (line.Beta * row) + 0.5);
        return Vector256.MultiplyAddEstimate(Vector256.Create((float)line.Beta), Vector256<float>.Indices, Vector256.Create(atFirst));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> CellsOf(Vector256<float> columns) =>
        (Vector256.ConvertToInt32Native(columns) * ShadowLines.StripRows) + Vector256<int>.Indices;

    // Without a branch: which borders end is as good as random.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ref ActiveLine Keep(ref ActiveLine kept, ref ActiveLine line, int lastRow)
    {
        int count = line.Last > lastRow ? 1 : 0;
        Unsafe.As<ActiveLine, Vector256<byte>>(ref kept) = Unsafe.As<ActiveLine, Vector256<byte>>(ref line);
        return ref Unsafe.Add(ref kept, count);
    }

    // All bits set in the rows in which rounding cannot decide.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> SureRows(Vector256<float> place, Vector256<float> nearest, float surePart) =>
        Vector256.LessThanOrEqual(Vector256.Abs(place - nearest), Vector256.Create(surePart)).AsInt32();

    // All bits set in the rows from one to another.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> Covered(int firstRow, int first, int last)
    {
        Vector256<int> rows = Vector256.Create(firstRow) + Vector256<int>.Indices;
        return Vector256.GreaterThan(rows, Vector256.Create(first - 1)) & Vector256.LessThan(rows, Vector256.Create(last + 1));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void AddAt(ref int cells, Vector256<int> at, int jump)
    {
        AddAtTwo(ref cells, at.GetLower().AsUInt64().ToScalar(), jump);
        AddAtTwo(ref cells, at.GetLower().AsUInt64().GetElement(1), jump);
        AddAtTwo(ref cells, at.GetUpper().AsUInt64().ToScalar(), jump);
        AddAtTwo(ref cells, at.GetUpper().AsUInt64().GetElement(1), jump);
    }

    // Two numbers in each register: through memory they would come later.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void AddAtTwo(ref int cells, ulong places, int jump)
    {
        Unsafe.Add(ref cells, (nint)(uint)places) += jump;
        Unsafe.Add(ref cells, (nint)(places >> 32)) += jump;
    }
}
