using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>The numbers of one row that every pass needs.</summary>
/// <param name="SquaredRest">Squared distance along y and z, m².</param>
/// <param name="AlongY">y(point) − y(transmitter), m.</param>
internal readonly record struct RowGeometry(float SquaredRest, float AlongY);

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
/// The passes over one row: running sums of difference rows, the distance term, and losses that depend on the angle. Rows are
/// padded to whole vectors; each pass leaves its difference row zero for the next strip.
/// </summary>
internal static class RowKernel
{
    private const int Lanes = 8;

    /// <summary>Distance term plus the running sum of channel 0, or what that sum costs where there is a way round.</summary>
    /// <param name="lossesDb">Set, padded.</param>
    /// <param name="cells">Difference row; left zero.</param>
    /// <param name="start">Value left of the first column.</param>
    /// <param name="squaredAlongX">Squared distance along x of each column, m².</param>
    /// <param name="row">The row.</param>
    /// <param name="law">The distance term.</param>
    public static void SumWithDistance(
        Span<float> lossesDb, Span<int> cells, int start, ReadOnlySpan<float> squaredAlongX, RowGeometry row, DistanceLaw law)
    {
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref int cell = ref MemoryMarshal.GetReference(cells);
        ref float square = ref MemoryMarshal.GetReference(squaredAlongX);
        Vector256<int> before = Vector256.Create(start);
        Vector256<float> rest = Vector256.Create(row.SquaredRest), least = Vector256.Create(law.LeastSquareMetres);
        Vector256<float> unit = Vector256.Create(law.DecibelsPerQuarter), constant = Vector256.Create(law.ConstantDb);
        Vector256<float> slope = Vector256.Create(law.SlopeDb), extra = Vector256.Create(law.ExtraDb);
        bool goesRound = law.GoesRound;
        for (int i = 0; i < lossesDb.Length; i += Lanes)
        {
            Vector256<int> ofCells = RunningSum(ref Unsafe.Add(ref cell, i)), sum = ofCells + before;
            before += Vector256.Shuffle(ofCells, Vector256.Create(Lanes - 1));
            Vector256<float> squared = Vector256.MaxNative(Vector256.LoadUnsafe(ref square, (nuint)i) + rest, least);
            Vector256<float> wallsDb = Vector256.ConvertToSingle(sum) * unit;
            if (goesRound) wallsDb = DecibelKernel.OfTwoWays(wallsDb, extra);
            Vector256.MultiplyAddEstimate(DecibelKernel.Log2(squared), slope, wallsDb + constant).StoreUnsafe(ref to, (nuint)i);
        }
    }

    /// <summary>The running sum of channel 0 alone, dB.</summary>
    /// <param name="lossesDb">Set, padded.</param>
    /// <param name="cells">Difference row; left zero.</param>
    /// <param name="start">Value left of the first column.</param>
    /// <param name="decibelsPerQuarter">Size of a quarter of the unit, dB.</param>
    public static void Sum(Span<float> lossesDb, Span<int> cells, int start, float decibelsPerQuarter)
    {
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref int cell = ref MemoryMarshal.GetReference(cells);
        Vector256<int> before = Vector256.Create(start);
        for (int i = 0; i < lossesDb.Length; i += Lanes)
        {
            Vector256<int> ofCells = RunningSum(ref Unsafe.Add(ref cell, i)), sum = ofCells + before;
            before += Vector256.Shuffle(ofCells, Vector256.Create(7));
            (Vector256.ConvertToSingle(sum) * decibelsPerQuarter).StoreUnsafe(ref to, (nuint)i);
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
    /// <param name="lossesDb">Added to, padded.</param>
    /// <param name="cells">Difference row of quarter counts; left zero.</param>
    /// <param name="start">Value left of the first column.</param>
    /// <param name="alongX">x(point) − x(transmitter) of each column, m.</param>
    /// <param name="inverses">From <see cref="InvertSquares"/>.</param>
    /// <param name="row">The row.</param>
    /// <param name="channel">Direction and loss.</param>
    public static void AddAtAngle(
        Span<float> lossesDb,
        Span<int> cells,
        int start,
        ReadOnlySpan<float> alongX,
        ReadOnlySpan<float> inverses,
        RowGeometry row,
        AngleChannel channel)
    {
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref int cell = ref MemoryMarshal.GetReference(cells);
        ref float x = ref MemoryMarshal.GetReference(alongX), inverse = ref MemoryMarshal.GetReference(inverses);
        Vector256<int> sum = Vector256.Create(start);
        Vector256<float> normalX = Vector256.Create(channel.NormalX), across = Vector256.Create(channel.NormalY * row.AlongY);
        Vector256<float> unit = Vector256.Create(0.25f / AngleChannel.UnitsPerDecibel);
        int[] table = channel.PackedLosses;
        for (int i = 0; i < lossesDb.Length; i += Lanes)
        {
            // Where neither is anything crossed nor does a border lie there is nothing to add.
            if ((Vector256.LoadUnsafe(ref cell, (nuint)i) | sum) == Vector256<int>.Zero) continue;
            Vector256<int> ofCells = RunningSum(ref Unsafe.Add(ref cell, i)), counts = ofCells + sum;
            sum += Vector256.Shuffle(ofCells, Vector256.Create(7));
            Vector256<float> projection = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref x, (nuint)i), normalX, across);
            Vector256<float> squaredCosine = projection * projection * Vector256.LoadUnsafe(ref inverse, (nuint)i);
            Vector256<float> lossesOfCell = Vector256.ConvertToSingle(SumOfProducts(counts, LookUp(table, squaredCosine)));
            Vector256.MultiplyAddEstimate(lossesOfCell, unit, Vector256.LoadUnsafe(ref to, (nuint)i)).StoreUnsafe(ref to, (nuint)i);
        }
    }

    /// <summary>Adds share · loss of a floor structure to each column of a run.</summary>
    /// <param name="lossesDb">Added to: the run.</param>
    /// <param name="inverses">From <see cref="InvertSquares"/>: the run.</param>
    /// <param name="squaredRise">Squared difference of height, m².</param>
    /// <param name="share">By what the loss is multiplied.</param>
    /// <param name="table">The loss against the angle.</param>
    public static void AddFloor(Span<float> lossesDb, ReadOnlySpan<float> inverses, float squaredRise, float share, LossTable table)
    {
        float[] values = table.ValuesDb;
        ReadOnlySpan<int> bits = MemoryMarshal.Cast<float, int>(values);
        int i = 0;
        for (; i <= lossesDb.Length - Lanes; i += Lanes)
        {
            Vector256<float> squaredCosine = Vector256.Create(inverses.Slice(i, Lanes)) * squaredRise;
            Vector256<float> beforeDb = Vector256.Create<float>(lossesDb.Slice(i, Lanes)), floorDb = LookUp(bits, squaredCosine).AsSingle();
            Vector256.MultiplyAddEstimate(floorDb, Vector256.Create(share), beforeDb).CopyTo(lossesDb[i..]);
        }

        for (; i < lossesDb.Length; i++)
            lossesDb[i] += share * values[Math.Min((int)(inverses[i] * squaredRise * values.Length), values.Length - 1)];
    }

    /// <summary>Distance term plus what a finished sum of walls costs where there is a way round.</summary>
    /// <param name="lossesDb">The sum of walls; becomes the loss, padded.</param>
    /// <param name="squaredAlongX">Squared distance along x of each column, m².</param>
    /// <param name="row">The row.</param>
    /// <param name="law">The distance term.</param>
    public static void GoRound(Span<float> lossesDb, ReadOnlySpan<float> squaredAlongX, RowGeometry row, DistanceLaw law)
    {
        ref float to = ref MemoryMarshal.GetReference(lossesDb);
        ref float square = ref MemoryMarshal.GetReference(squaredAlongX);
        Vector256<float> rest = Vector256.Create(row.SquaredRest), least = Vector256.Create(law.LeastSquareMetres);
        Vector256<float> slope = Vector256.Create(law.SlopeDb), constant = Vector256.Create(law.ConstantDb), extra = Vector256.Create(law.ExtraDb);
        for (int i = 0; i < lossesDb.Length; i += Lanes)
        {
            Vector256<float> squared = Vector256.MaxNative(Vector256.LoadUnsafe(ref square, (nuint)i) + rest, least);
            Vector256<float> wallsDb = DecibelKernel.OfTwoWays(Vector256.LoadUnsafe(ref to, (nuint)i), extra);
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

    // The sum up to each of eight cells; the cells become zero.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> RunningSum(ref int cells)
    {
        Vector256<int> sum = Vector256.LoadUnsafe(ref cells);
        Vector256<int>.Zero.StoreUnsafe(ref cells);

        // Each half of the vector first: there a shift is one instruction, across halves it takes two.
        sum += Avx2.IsSupported ? Avx2.ShiftLeftLogical128BitLane(sum, 4) : Vector256.Shuffle(sum, Vector256.Create(8, 0, 1, 2, 8, 4, 5, 6));
        sum += Avx2.IsSupported ? Avx2.ShiftLeftLogical128BitLane(sum, 8) : Vector256.Shuffle(sum, Vector256.Create(8, 8, 0, 1, 8, 8, 4, 5));
        return sum + Vector256.Shuffle(sum, Vector256.Create(8, 8, 8, 8, 3, 3, 3, 3));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static unsafe Vector256<int> LookUp(ReadOnlySpan<int> table, Vector256<float> squaredCosine)
    {
        Vector256<int> entry = Vector256.Min(
            Vector256.ConvertToInt32Native(squaredCosine * table.Length), Vector256.Create(table.Length - 1));
        if (Avx2.IsSupported)
        {
            fixed (int* entries = table) return Avx2.GatherVector256(entries, entry, sizeof(int));
        }

        return Vector256.Create(
            table[entry.GetElement(0)], table[entry.GetElement(1)], table[entry.GetElement(2)], table[entry.GetElement(3)],
            table[entry.GetElement(4)], table[entry.GetElement(5)], table[entry.GetElement(6)], table[entry.GetElement(7)]);
    }

    // Lower half times lower half plus upper times upper; none of the halves is negative.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> SumOfProducts(Vector256<int> counts, Vector256<int> losses)
    {
        if (Avx2.IsSupported) return Avx2.MultiplyAddAdjacent(counts.AsInt16(), losses.AsInt16());
        Vector256<int> lower = Vector256.Create(0xFFFF);
        return ((counts & lower) * (losses & lower)) + (Vector256.ShiftRightLogical(counts, 16) * Vector256.ShiftRightLogical(losses, 16));
    }
}
