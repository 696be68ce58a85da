using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Pairs;

/// <summary>
/// Finds, eight stacks at a time, which groups of targets each stack may part from a place. Directions are rounded and groups
/// widened, so too many are found and never too few.
/// </summary>
internal sealed class DirectionKernel
{
    private const int Lanes = 8;

    // Directions are rounded to a few parts in 2^24 and there are at most 2^12 buckets; a hundredth of a bucket is far more.
    private const float SpareBuckets = 0.01f;

    // The signed area of a place and a stack is a difference of two products whose factors are rounded to 2^-24.
    private const float DoubtShare = 1f / (1 << 21);

    private readonly float[] startX, startY, endX, endY;
    private readonly int[] stacks, lows, highs;
    private int length;

    /// <summary>Makes room.</summary>
    /// <param name="most">Most stacks.</param>
    public DirectionKernel(int most)
    {
        int padded = most + Lanes;
        (startX, startY, endX, endY) = (new float[padded], new float[padded], new float[padded], new float[padded]);
        (stacks, lows, highs) = (new int[padded], new int[padded], new int[padded]);
        (Found, FirstGroups, LastGroups) = (new int[padded], new int[padded], new int[padded]);
    }

    /// <summary>Number of stacks found.</summary>
    public int Count { get; private set; }

    /// <summary>Which stacks were found, in their order.</summary>
    public int[] Found { get; }

    /// <summary>The first group that each may part from the place.</summary>
    public int[] FirstGroups { get; }

    /// <summary>The last such group.</summary>
    public int[] LastGroups { get; }

    /// <summary>Keeps the stacks that a path to the right of x can meet.</summary>
    public void Load(StackTable table, int x)
    {
        length = 0;
        for (int stack = 0; stack < table.Count; stack++)
        {
            // Lattice coordinates stay below 2^24, so they are exact in single precision.
            (startX[length], startY[length], endX[length], endY[length]) = (table.StartX[stack], table.StartY[stack], table.EndX[stack], table.EndY[stack]);
            stacks[length] = stack;
            length += Math.Max(table.StartX[stack], table.EndX[stack]) >= x ? 1 : 0;
        }
    }

    /// <summary>Finds the stacks that may lie between a place and a target, among those that were kept.</summary>
    public void Find(PlanPoint place, TargetGroups targets)
    {
        FindBuckets(place, targets.Buckets);
        ReadOnlySpan<int> starts = targets.Starts;
        int found = 0;
        for (int i = 0; i < length; i++)
        {
            int first = starts[lows[i]], end = starts[highs[i]];
            (Found[found], FirstGroups[found], LastGroups[found]) = (stacks[i], first / CrossingKernel.Lanes, (end - 1) / CrossingKernel.Lanes);
            found += end > first ? 1 : 0;
        }

        Count = found;
    }

    // The first bucket of each stack, and the one after its last.
    private void FindBuckets(PlanPoint place, int buckets)
    {
        Vector256<float> x = Vector256.Create((float)place.X), y = Vector256.Create((float)place.Y), half = Vector256.Create(buckets / 2f);
        Vector256<float> spare = Vector256.Create(SpareBuckets), top = Vector256.Create(buckets - 1f);
        for (int i = 0; i < length; i += Lanes)
        {
            Vector256<float> ax = At(startX, i) - x, ay = At(startY, i) - y, bx = At(endX, i) - x, by = At(endY, i) - y;
            Vector256<float> one = ax * by, other = ay * bx, area = one - other;
            Vector256<float> isInLine = Vector256.LessThanOrEqual(Vector256.Abs(area), (Vector256.Abs(one) + Vector256.Abs(other)) * DoubtShare);
            Vector256<float> isLeftOfStart = Vector256.LessThan(ax, Vector256<float>.Zero), isLeftOfEnd = Vector256.LessThan(bx, Vector256<float>.Zero);

            // A stack that reaches to the left of the place passes above or below it, and covers all directions up or down.
            Vector256<float> startsBelow = Vector256.GreaterThan(area, Vector256<float>.Zero);
            Vector256<float> atStart = Vector256.ConditionalSelect(isLeftOfStart, Sign(~startsBelow), Direction(ax, ay));
            Vector256<float> atEnd = Vector256.ConditionalSelect(isLeftOfEnd, Sign(startsBelow), Direction(bx, by));
            Vector256<float> low = ((Vector256.MinNative(atStart, atEnd) + Vector256<float>.One) * half) - spare;
            Vector256<float> high = ((Vector256.MaxNative(atStart, atEnd) + Vector256<float>.One) * half) + spare;
            low = Vector256.AndNot(low, isInLine);
            high = Vector256.ConditionalSelect(isInLine, top, high);
            Vector256<float> isBehind = isLeftOfStart & isLeftOfEnd;
            Vector256<int> first = Vector256.ConvertToInt32Native(Vector256.MaxNative(low, Vector256<float>.Zero));
            Vector256<int> after = Vector256.ConvertToInt32Native(Vector256.MinNative(high, top)) + Vector256<int>.One;
            first.StoreUnsafe(ref lows[i]);
            Vector256.ConditionalSelect(isBehind.AsInt32(), first, after).StoreUnsafe(ref highs[i]);
        }

        static Vector256<float> At(float[] values, int i) => Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(values), (nuint)i);

        // Grows from −1 straight down to 1 straight up.
        static Vector256<float> Direction(Vector256<float> dx, Vector256<float> dy) => dy / (Vector256.Abs(dx) + Vector256.Abs(dy));

        static Vector256<float> Sign(Vector256<float> isUp) => Vector256.ConditionalSelect(isUp, Vector256<float>.One, -Vector256<float>.One);
    }
}
