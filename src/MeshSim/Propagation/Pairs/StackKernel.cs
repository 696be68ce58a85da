using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace MeshSim.Propagation.Pairs;

/// <summary>A path on the plan, from its start, in single precision, and how near to zero a sign is doubtful.</summary>
/// <param name="Dx">Along x, lattice steps.</param>
/// <param name="Dy">Along y, lattice steps.</param>
/// <param name="Doubt">Largest error of a signed area, squared lattice steps.</param>
internal readonly record struct PathFilter(float Dx, float Dy, float Doubt);

/// <summary>The stacks of one direction as seen from one place, tested eight at a time.</summary>
internal sealed class StackKernel
{
    /// <summary>Stacks tested at a time.</summary>
    public const int Lanes = 8;

    // Every signed area below is a sum of at most four products whose factors are rounded to 2^-24: its error is less than
    // 2^-20 of (|dx| + |dy|) · farthest coordinate. Where the stack's own area is greater than that product could offset, the
    // last sign is far from zero. Four times as much is on the safe side.
    private const float DoubtShare = 1f / (1 << 18);

    // What fills a last vector: never crossed, never doubtful.
    private const float Far = 1e30f;

    private readonly float[] startX, startY, endX, endY, areas;
    private readonly byte[] crossings;
    private float farthest;

    public StackKernel(int most)
    {
        int padded = most + Lanes;
        (startX, startY, endX, endY, areas) = (new float[padded], new float[padded], new float[padded], new float[padded], new float[padded]);
        crossings = new byte[(padded / Lanes) + sizeof(ulong)];
        (Stacks, LossesDb) = (new int[padded], new double[padded]);
    }

    /// <summary>Number of stacks, padded to whole vectors.</summary>
    public int Length { get; private set; }

    /// <summary>Which stacks.</summary>
    public int[] Stacks { get; }

    /// <summary>What each costs in the layer of the place.</summary>
    public double[] LossesDb { get; }

    /// <summary>Whether all of them cost there what does not depend on the path.</summary>
    public bool IsKnown { get; private set; }

    /// <summary>Takes the stacks of one bin.</summary>
    public void Load(StackTable table, DirectionBins bins, int bin, int layer)
    {
        farthest = bins.FarthestSteps;
        ReadOnlySpan<int> stacks = bins.StacksIn(bin);
        bool isKnown = true;
        for (int i = 0; i < stacks.Length; i++)
        {
            int stack = stacks[i];
            float area = bins.Areas[stack];
            float ax = table.StartX[stack] - bins.Place.X, ay = table.StartY[stack] - bins.Place.Y;
            float bx = table.EndX[stack] - bins.Place.X, by = table.EndY[stack] - bins.Place.Y;

            // Mirrored, if need be, so that the area is positive. A place on the stack's own line is never sure of anything.
            float sign = (area > 0 ? 1f : 0f) - (area < 0 ? 1f : 0f);
            (startX[i], startY[i], endX[i], endY[i], areas[i]) = (sign * ax, sign * ay, sign * bx, sign * by, sign * area);
            double lossDb = table.LossDb(stack, layer);
            (Stacks[i], LossesDb[i]) = (stack, lossDb);
            isKnown &= !double.IsNaN(lossDb);
        }

        IsKnown = isKnown;

        Length = (stacks.Length + Lanes - 1) / Lanes * Lanes;
        for (int i = stacks.Length; i < Length; i++) (startX[i], startY[i], endX[i], endY[i], areas[i]) = (0, 0, 0, 0, Far);
    }

    /// <summary>What a path needs for the tests.</summary>
    public PathFilter FilterOf(in TracedPath path)
    {
        (float dx, float dy) = ((float)path.Dx, (float)path.Dy);
        return new(dx, dy, (Math.Abs(dx) + Math.Abs(dy)) * farthest * DoubtShare);
    }

    /// <summary>
    /// Adds the losses of all stacks that the path properly crosses, one after the other; nothing, and false, when any is doubtful.
    /// All tests come before all sums, because how many of eight are crossed is as good as random.
    /// </summary>
    public bool TryAddKnown(PathFilter path, ref double sumDb)
    {
        uint doubtful = 0;
        for (int block = 0; block < Length; block += Lanes)
        {
            (uint crossed, uint unsure) = Test(block, path);
            doubtful |= unsure;
            crossings[block / Lanes] = (byte)crossed;
        }

        if (doubtful != 0) return false;
        crossings.AsSpan(Length / Lanes, sizeof(ulong)).Clear();
        double sum = sumDb;
        for (int block = 0; block < Length / Lanes; block += sizeof(ulong))
        {
            ulong left = BinaryPrimitives.ReadUInt64LittleEndian(crossings.AsSpan(block));
            ref double lossesDb = ref LossesDb[block * Lanes];
            for (; left != 0; left &= left - 1) sum += Unsafe.Add(ref lossesDb, BitOperations.TrailingZeroCount(left));
        }

        sumDb = sum;
        return true;
    }

    /// <summary>Which of eight stacks the path properly crosses for certain, and which are doubtful; the rest it does not meet.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (uint Crossed, uint Doubtful) Test(int block, PathFilter path)
    {
        Vector256<float> dx = Vector256.Create(path.Dx), dy = Vector256.Create(path.Dy), doubt = Vector256.Create(path.Doubt);
        Vector256<float> sideOfStart = (dx * At(startY, block)) - (dy * At(startX, block));
        Vector256<float> sideOfEnd = (dx * At(endY, block)) - (dy * At(endX, block));
        Vector256<float> sideOfTarget = At(areas, block) - sideOfEnd + sideOfStart;

        // Crossed when start and target lie right of where they are measured from and the end lies left: all three negative.
        Vector256<float> most = Vector256.Max(Vector256.Max(sideOfStart, -sideOfEnd), sideOfTarget);
        uint notMissed = Vector256.LessThanOrEqual(most, doubt).ExtractMostSignificantBits();
        uint crossed = Vector256.LessThan(most, -doubt).ExtractMostSignificantBits();
        return (crossed, notMissed & ~crossed);

        static Vector256<float> At(float[] values, int block) => Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(values), (nuint)block);
    }
}
