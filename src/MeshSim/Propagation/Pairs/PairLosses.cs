using MeshSim.Quantities;

namespace MeshSim.Propagation.Pairs;

/// <summary>The path loss of every pair of places, each pair once.</summary>
public sealed class PairLosses
{
    private readonly double[] lossesDb;

    internal PairLosses(int count)
    {
        Count = count;
        lossesDb = new double[checked((int)((long)count * (count - 1) / 2))];
    }

    /// <summary>Number of places.</summary>
    public int Count { get; }

    /// <summary>The loss between two different places, in any order.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such pair.</exception>
    public Decibels this[int a, int b]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfNegative(Math.Min(a, b));
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(Math.Max(a, b), Count);
            ArgumentOutOfRangeException.ThrowIfEqual(a, b);
            return new(After(Math.Min(a, b))[Math.Abs(a - b) - 1]);
        }
    }

    /// <summary>The losses from one place to all later ones, dB.</summary>
    internal Span<double> After(int from)
    {
        long first = ((long)from * (Count - 1)) - ((long)from * (from - 1) / 2);
        return lossesDb.AsSpan((int)first, Count - 1 - from);
    }
}
