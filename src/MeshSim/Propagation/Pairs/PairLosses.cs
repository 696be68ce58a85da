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
            return new(lossesDb[IndexOf(a, b)]);
        }
    }

    /// <summary>Sets the loss between two different places, in any order.</summary>
    internal void Set(int a, int b, double lossDb) => lossesDb[IndexOf(a, b)] = lossDb;

    // Row by row: the first place with all later ones, then the second.
    private int IndexOf(int a, int b)
    {
        (int low, int high) = (Math.Min(a, b), Math.Max(a, b));
        long first = ((long)low * (Count - 1)) - ((long)low * (low - 1) / 2);
        return (int)(first + high - low - 1);
    }
}
