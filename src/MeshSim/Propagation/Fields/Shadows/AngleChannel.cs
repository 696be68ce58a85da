namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// The walls of one direction built in one of two ways whose loss depends on the angle: crossings are counted, not summed.
/// </summary>
/// <param name="normalX">Unit normal, x.</param>
/// <param name="normalY">Unit normal, y.</param>
internal sealed class AngleChannel(float normalX, float normalY)
{
    /// <summary>Whole numbers per decibel in <see cref="PackedLosses"/>: 50 dB fit into 15 bits.</summary>
    public const int UnitsPerDecibel = 512;

    private const int FullCrossing = 4;
    private LossTable? first, second;

    /// <summary>Unit normal, x.</summary>
    public float NormalX { get; } = normalX;

    /// <summary>Unit normal, y.</summary>
    public float NormalY { get; } = normalY;

    /// <summary>Whether both halves are taken.</summary>
    public bool IsFull => second is not null;

    /// <summary>
    /// The loss of the one in the lower, of the other in the upper 16 bits. Entry i holds for squared cosines from i / length
    /// to (i + 1) / length.
    /// </summary>
    public int[] PackedLosses { get; private set; } = [];

    /// <summary>Takes a half for a table. Returns what one crossing adds to the counts.</summary>
    public int Add(LossTable table)
    {
        bool isFirst = first is null;
        (first, second) = isFirst ? (table, null) : (first, table);
        int length = Math.Max(first!.ValuesDb.Length, second?.ValuesDb.Length ?? 0);
        PackedLosses = [.. Enumerable.Range(0, length).Select(i => At(first, i, length) | (At(second, i, length) << 16))];
        return isFirst ? FullCrossing : FullCrossing << 16;
    }

    // Lengths are powers of two, so an entry of the longer lies within one of the shorter.
    private static int At(LossTable? table, int entry, int length) =>
        table is null ? 0 : (int)Math.Round(table.ValuesDb[entry / (length / table.ValuesDb.Length)] * UnitsPerDecibel);
}
