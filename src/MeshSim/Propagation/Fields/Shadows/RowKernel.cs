using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>The numbers of one row that every pass needs.</summary>
/// <param name="SquaredRest">Squared distance along y and z, m².</param>
/// <param name="AlongY">y(point) − y(transmitter), m.</param>
/// <param name="FloorsDb">What floors cost that every path to the row meets, dB.</param>
internal readonly record struct RowGeometry(float SquaredRest, float AlongY, float FloorsDb);

/// <summary>What distance alone costs: constant + slope · log₂ of the squared distance; and how it is added to that of walls.</summary>
/// <param name="ConstantDb">Loss at 1 m, and what makes no wall cost nothing where there is a way round, dB.</param>
/// <param name="SlopeDb">Loss per doubling of the squared distance, dB.</param>
/// <param name="LeastSquareMetres">Squared distance below which it falls no further, m².</param>
/// <param name="DecibelsPerQuarter">Size of a quarter of the unit of channel 0, dB.</param>
/// <param name="GoesRound">Whether there is a way round walls.</param>
/// <param name="ExtraDb">What it costs, dB.</param>
internal readonly record struct DistanceLaw(
    float ConstantDb, float SlopeDb, float LeastSquareMetres, float DecibelsPerQuarter, bool GoesRound, float ExtraDb);

/// <summary>
/// The passes over rows: running sums of the changes of a strip, losses that depend on the angle, and for each row the way round and
/// the distance term. A pass over changes leaves them zero for the next strip. Rows are padded to whole vectors.
/// </summary>
internal static class RowKernel
{
    private const int Lanes = 8;

    /// <summary>The running sums of channel 0, dB.</summary>
    /// <param name="lossesDb">Set: the padded rows of the strip one after the other.</param>
    /// <param name="cells">Of <see cref="StripCells"/>; left zero.</param>
    /// <param name="starts">Value of each row left of the first column.</param>
    /// <param name="decibelsPerQuarter">Size of a quarter of the unit, dB.</param>
    public static void Sum(Span<float> lossesDb, Span<int> cells, ReadOnlySpan<int> starts, float decibelsPerQuarter)
    {
        int pitch = lossesDb.Length / ShadowLines.StripRows;
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref int cell = ref MemoryMarshal.GetReference(cells);
        Vector256<int> before = Vector256.Create(starts);
        Vector256<float> unit = Vector256.Create(decibelsPerQuarter);
        for (int i = 0; i < pitch; i += Lanes)
        {
            EightRows sums = ColumnSumsKernel.Advance(ref Unsafe.Add(ref cell, i * ShadowLines.StripRows), ref before);
            ref float at = ref Unsafe.Add(ref to, i);
            (Vector256.ConvertToSingle(sums.R0) * unit).StoreUnsafe(ref at);
            (Vector256.ConvertToSingle(sums.R1) * unit).StoreUnsafe(ref Unsafe.Add(ref at, pitch));
            (Vector256.ConvertToSingle(sums.R2) * unit).StoreUnsafe(ref Unsafe.Add(ref at, 2 * pitch));
            (Vector256.ConvertToSingle(sums.R3) * unit).StoreUnsafe(ref Unsafe.Add(ref at, 3 * pitch));
            (Vector256.ConvertToSingle(sums.R4) * unit).StoreUnsafe(ref Unsafe.Add(ref at, 4 * pitch));
            (Vector256.ConvertToSingle(sums.R5) * unit).StoreUnsafe(ref Unsafe.Add(ref at, 5 * pitch));
            (Vector256.ConvertToSingle(sums.R6) * unit).StoreUnsafe(ref Unsafe.Add(ref at, 6 * pitch));
            (Vector256.ConvertToSingle(sums.R7) * unit).StoreUnsafe(ref Unsafe.Add(ref at, 7 * pitch));
        }
    }

    /// <summary>1 / squared distance of each column, 1/m².</summary>
    public static void InvertSquares(Span<float> inverses, ReadOnlySpan<float> squaredAlongX, RowGeometry row)
    {
        ref float to = ref MemoryMarshal.GetReference(inverses);
        ref float square = ref MemoryMarshal.GetReference(squaredAlongX);

        // A path of no length crosses nothing; the floor only keeps its angle a number.
        Vector256<float> rest = Vector256.Create(row.SquaredRest), least = Vector256.Create(1e-12f);
        for (int i = 0; i < inverses.Length; i += Lanes)
        {
            Vector256<float> squared = Vector256.MaxNative(Vector256.LoadUnsafe(ref square, (nuint)i) + rest, least);
            (Vector256<float>.One / squared).StoreUnsafe(ref to, (nuint)i);
        }
    }

    /// <summary>Adds the crossings of one direction and construction at the angle of each point.</summary>
    /// <param name="lossesDb">Added to: the padded rows of the strip one after the other.</param>
    /// <param name="cells">Of <see cref="StripCells"/>, quarter counts; left zero.</param>
    /// <param name="starts">Value of each row left of the first column.</param>
    /// <param name="alongX">x(point) − x(transmitter) of each column, m.</param>
    /// <param name="inverses">From <see cref="InvertSquares"/>, of all rows.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="channel">Direction and loss.</param>
    public static unsafe void AddAtAngle(
        Span<float> lossesDb,
        Span<int> cells,
        ReadOnlySpan<int> starts,
        ReadOnlySpan<float> alongX,
        ReadOnlySpan<float> inverses,
        ReadOnlySpan<RowGeometry> rows,
        AngleChannel channel)
    {
        int pitch = alongX.Length;
        ref int cell = ref MemoryMarshal.GetReference(cells);
        ref float to = ref MemoryMarshal.GetReference(lossesDb), x = ref MemoryMarshal.GetReference(alongX), inverse = ref MemoryMarshal.GetReference(inverses);
        Vector256<int> before = Vector256.Create(starts);
        Vector256<float> normalX = Vector256.Create(channel.NormalX);
        fixed (int* entries = channel.PackedLosses)
        {
            var table = new Entries(entries, channel.PackedLosses.Length);
            for (int i = 0; i < pitch; i += Lanes)
            {
                // Where neither is anything crossed nor does a border lie there is nothing to add.
                ref int ofColumns = ref Unsafe.Add(ref cell, i * ShadowLines.StripRows);
                if (ColumnSumsKernel.StaysZero(ref ofColumns, before)) continue;
                EightRows counts = ColumnSumsKernel.Advance(ref ofColumns, ref before);
                Vector256<float> acrossX = Vector256.LoadUnsafe(ref x, (nuint)i) * normalX;
                AddCounts(ref to, ref inverse, i, counts.R0, acrossX, channel.NormalY * rows[0].AlongY, table);
                AddCounts(ref to, ref inverse, pitch + i, counts.R1, acrossX, channel.NormalY * rows[1].AlongY, table);
                AddCounts(ref to, ref inverse, (2 * pitch) + i, counts.R2, acrossX, channel.NormalY * rows[2].AlongY, table);
                AddCounts(ref to, ref inverse, (3 * pitch) + i, counts.R3, acrossX, channel.NormalY * rows[3].AlongY, table);
                AddCounts(ref to, ref inverse, (4 * pitch) + i, counts.R4, acrossX, channel.NormalY * rows[4].AlongY, table);
                AddCounts(ref to, ref inverse, (5 * pitch) + i, counts.R5, acrossX, channel.NormalY * rows[5].AlongY, table);
                AddCounts(ref to, ref inverse, (6 * pitch) + i, counts.R6, acrossX, channel.NormalY * rows[6].AlongY, table);
                AddCounts(ref to, ref inverse, (7 * pitch) + i, counts.R7, acrossX, channel.NormalY * rows[7].AlongY, table);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void AddCounts(
        ref float lossesDb, ref float inverses, int at, Vector256<int> counts, Vector256<float> acrossX, float acrossY, Entries table)
    {
        if (counts == Vector256<int>.Zero) return;
        Vector256<float> projection = acrossX + Vector256.Create(acrossY);
        Vector256<float> squaredCosine = projection * projection * Vector256.LoadUnsafe(ref inverses, (nuint)at);
        Vector256<float> lossesOfCell = Vector256.ConvertToSingle(SumOfProducts(counts, table.At(squaredCosine)));
        Vector256<float> unit = Vector256.Create(0.25f / AngleChannel.UnitsPerDecibel);
        Vector256.MultiplyAddEstimate(lossesOfCell, unit, Vector256.LoadUnsafe(ref lossesDb, (nuint)at)).StoreUnsafe(ref lossesDb, (nuint)at);
    }

    /// <summary>Adds share · loss of a floor structure to each column of a run.</summary>
    /// <param name="lossesDb">Added to: the run.</param>
    /// <param name="inverses">From <see cref="InvertSquares"/>: the run.</param>
    /// <param name="squaredRise">Squared difference of height, m².</param>
    /// <param name="share">By what the loss is multiplied.</param>
    /// <param name="table">The loss against the angle.</param>
    public static unsafe void AddFloor(Span<float> lossesDb, ReadOnlySpan<float> inverses, float squaredRise, float share, LossTable table)
    {
        float[] values = table.ValuesDb;
        int i = 0;
        fixed (float* bits = values)
        {
            var entries = new Entries((int*)bits, values.Length);
            for (; i <= lossesDb.Length - Lanes; i += Lanes)
            {
                Vector256<float> squaredCosine = Vector256.Create(inverses.Slice(i, Lanes)) * squaredRise;
                Vector256<float> beforeDb = Vector256.Create<float>(lossesDb.Slice(i, Lanes)), floorDb = entries.At(squaredCosine).AsSingle();
                Vector256.MultiplyAddEstimate(floorDb, Vector256.Create(share), beforeDb).CopyTo(lossesDb[i..]);
            }
        }

        for (; i < lossesDb.Length; i++)
            lossesDb[i] += share * values[Math.Min((int)(inverses[i] * squaredRise * values.Length), values.Length - 1)];
    }

    /// <summary>What a sum of walls costs where there is a way round, and the distance term.</summary>
    /// <param name="lossesDb">The sum of walls in one row; becomes the loss, padded.</param>
    /// <param name="squaredAlongX">Squared distance along x of each column, m².</param>
    /// <param name="row">The row.</param>
    /// <param name="law">The distance term.</param>
    public static void Finish(Span<float> lossesDb, ReadOnlySpan<float> squaredAlongX, RowGeometry row, DistanceLaw law)
    {
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref float square = ref MemoryMarshal.GetReference(squaredAlongX);
        Vector256<float> rest = Vector256.Create(row.SquaredRest), least = Vector256.Create(law.LeastSquareMetres);
        Vector256<float> slope = Vector256.Create(law.SlopeDb), constant = Vector256.Create(law.ConstantDb + row.FloorsDb);
        Vector256<float> extra = Vector256.Create(law.ExtraDb);
        for (int i = 0; i < lossesDb.Length; i += Lanes)
        {
            Vector256<float> squared = Vector256.MaxNative(Vector256.LoadUnsafe(ref square, (nuint)i) + rest, least);
            Vector256<float> wallsDb = Vector256.LoadUnsafe(ref to, (nuint)i);
            if (law.GoesRound) wallsDb = DecibelKernel.OfTwoWays(wallsDb, extra);
            Vector256.MultiplyAddEstimate(DecibelKernel.Log2(squared), slope, wallsDb + constant).StoreUnsafe(ref to, (nuint)i);
        }
    }

    /// <summary>Adds the same to each column of a run.</summary>
    public static void Add(Span<float> lossesDb, float addedDb)
    {
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        int i = 0;
        for (; i <= lossesDb.Length - Lanes; i += Lanes)
            (Vector256.LoadUnsafe(ref to, (nuint)i) + Vector256.Create(addedDb)).StoreUnsafe(ref to, (nuint)i);
        for (; i < lossesDb.Length; i++) lossesDb[i] += addedDb;
    }

    // Lower half times lower half plus upper times upper; none of the halves is negative.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> SumOfProducts(Vector256<int> counts, Vector256<int> losses)
    {
        if (Avx2.IsSupported) return Avx2.MultiplyAddAdjacent(counts.AsInt16(), losses.AsInt16());
        Vector256<int> lower = Vector256.Create(0xFFFF);
        return ((counts & lower) * (losses & lower)) + (Vector256.ShiftRightLogical(counts, 16) * Vector256.ShiftRightLogical(losses, 16));
    }

    // A table by squared cosine, held in place.
    private readonly unsafe struct Entries(int* first, int length)
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector256<int> At(Vector256<float> squaredCosine)
        {
            Vector256<int> entry = Vector256.Min(Vector256.ConvertToInt32Native(squaredCosine * length), Vector256.Create(length - 1));
            if (Avx2.IsSupported) return Avx2.GatherVector256(first, entry, sizeof(int));
            return Vector256.Create(
                first[entry.GetElement(0)], first[entry.GetElement(1)], first[entry.GetElement(2)], first[entry.GetElement(3)],
                first[entry.GetElement(4)], first[entry.GetElement(5)], first[entry.GetElement(6)], first[entry.GetElement(7)]);
        }
    }
}
