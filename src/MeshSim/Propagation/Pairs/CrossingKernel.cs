using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace MeshSim.Propagation.Pairs;

/// <summary>A stack as seen from a place, mirrored so that the area is not negative. All whole numbers.</summary>
/// <param name="StartX">Start, along x, lattice steps.</param>
/// <param name="StartY">Start, along y.</param>
/// <param name="EndX">End, along x.</param>
/// <param name="EndY">End, along y.</param>
/// <param name="Area">Twice the area of place, start and end; 0 when they lie in line.</param>
internal readonly record struct SeenStack(double StartX, double StartY, double EndX, double EndY, double Area)
{
    /// <summary>The share of a path that lies before it, rounded, when the path properly crosses it.</summary>
    public double ShareOf(double dx, double dy) => Area / ((dx * (EndY - StartY)) - (dy * (EndX - StartX)));
}

/// <summary>
/// Paths from one place in groups of eight, and what each costs. A stack is tested against a group at once: the signed areas are
/// whole numbers below 2^53, so double precision decides exactly.
/// </summary>
internal sealed class CrossingKernel
{
    /// <summary>Paths tested at a time.</summary>
    public const int Lanes = 8;

    private const int HalfLanes = 4;

    /// <summary>Makes room.</summary>
    /// <param name="most">Most paths.</param>
    public CrossingKernel(int most)
    {
        int padded = most + Lanes;
        (Dx, Dy, LossesDb) = (new double[padded], new double[padded], new double[padded]);
    }

    /// <summary>Where each path leads along x, lattice steps; 0 beyond the last.</summary>
    public double[] Dx { get; }

    /// <summary>Where each path leads along y.</summary>
    public double[] Dy { get; }

    /// <summary>What each path has cost so far, dB.</summary>
    public double[] LossesDb { get; }

    /// <summary>
    /// Adds a loss to all paths that properly cross a stack, group by group, up to the first group with a tie: a path through an
    /// end of the stack, or a place in line with it.
    /// </summary>
    /// <returns>The group with a tie and a bit for each path that it concerns; the group after the last and 0 when there is none.</returns>
    public (int Group, uint Ties) AddWhereCrossed(int group, int last, in SeenStack stack, double lossDb)
    {
        Vector256<double> startX = Vector256.Create(-stack.StartX), startY = Vector256.Create(stack.StartY), area = Vector256.Create(stack.Area);
        Vector256<double> endX = Vector256.Create(stack.EndX), endY = Vector256.Create(-stack.EndY), loss = Vector256.Create(lossDb);
        ref double dx = ref MemoryMarshal.GetArrayDataReference(Dx), dy = ref MemoryMarshal.GetArrayDataReference(Dy);
        ref double sums = ref MemoryMarshal.GetArrayDataReference(LossesDb);
        for (; group <= last; group++)
        {
            nuint at = (nuint)(group * Lanes);
            Vector256<double> low = Largest(Vector256.LoadUnsafe(ref dx, at), Vector256.LoadUnsafe(ref dy, at), startX, startY, endX, endY, area);
            Vector256<double> isLow = Vector256.LessThan(low, Vector256<double>.Zero) & loss;
            (Vector256.LoadUnsafe(ref sums, at) + isLow).StoreUnsafe(ref sums, at);
            at += HalfLanes;
            Vector256<double> high = Largest(Vector256.LoadUnsafe(ref dx, at), Vector256.LoadUnsafe(ref dy, at), startX, startY, endX, endY, area);
            Vector256<double> isHigh = Vector256.LessThan(high, Vector256<double>.Zero) & loss;
            (Vector256.LoadUnsafe(ref sums, at) + isHigh).StoreUnsafe(ref sums, at);
            Vector256<double> lowTies = Vector256.Equals(low, Vector256<double>.Zero), highTies = Vector256.Equals(high, Vector256<double>.Zero);
            if ((lowTies | highTies) != Vector256<double>.Zero) return (group, Bits(lowTies, highTies));
        }

        return (group, 0);
    }

    /// <summary>Finds the next group in which any path properly crosses a stack or ties with it.</summary>
    /// <returns>The group, and a bit for each such path; the group after the last when there is none.</returns>
    public (int Group, uint Crossed, uint Ties) FindCrossed(int group, int last, in SeenStack stack)
    {
        Vector256<double> startX = Vector256.Create(-stack.StartX), startY = Vector256.Create(stack.StartY), area = Vector256.Create(stack.Area);
        Vector256<double> endX = Vector256.Create(stack.EndX), endY = Vector256.Create(-stack.EndY);
        ref double dx = ref MemoryMarshal.GetArrayDataReference(Dx), dy = ref MemoryMarshal.GetArrayDataReference(Dy);
        for (; group <= last; group++)
        {
            nuint at = (nuint)(group * Lanes);
            Vector256<double> low = Largest(Vector256.LoadUnsafe(ref dx, at), Vector256.LoadUnsafe(ref dy, at), startX, startY, endX, endY, area);
            at += HalfLanes;
            Vector256<double> high = Largest(Vector256.LoadUnsafe(ref dx, at), Vector256.LoadUnsafe(ref dy, at), startX, startY, endX, endY, area);
            uint met = Bits(Vector256.LessThanOrEqual(low, Vector256<double>.Zero), Vector256.LessThanOrEqual(high, Vector256<double>.Zero));
            if (met == 0) continue;

            uint ties = Bits(Vector256.Equals(low, Vector256<double>.Zero), Vector256.Equals(high, Vector256<double>.Zero));
            return (group, met & ~ties, ties);
        }

        return (group, 0, 0);
    }

    // Crossed when start and target lie right of where they are measured from and the end lies left: the largest is negative.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Largest(
        Vector256<double> dx,
        Vector256<double> dy,
        Vector256<double> minusStartX,
        Vector256<double> startY,
        Vector256<double> endX,
        Vector256<double> minusEndY,
        Vector256<double> area)
    {
        Vector256<double> sideOfStart = Vector256.MultiplyAddEstimate(dx, startY, dy * minusStartX);
        Vector256<double> minusSideOfEnd = Vector256.MultiplyAddEstimate(dx, minusEndY, dy * endX);
        Vector256<double> sideOfTarget = area + minusSideOfEnd + sideOfStart;
        return Vector256.MaxNative(Vector256.MaxNative(sideOfStart, minusSideOfEnd), sideOfTarget);
    }

    private static uint Bits(Vector256<double> low, Vector256<double> high) =>
        low.ExtractMostSignificantBits() | (high.ExtractMostSignificantBits() << HalfLanes);
}
