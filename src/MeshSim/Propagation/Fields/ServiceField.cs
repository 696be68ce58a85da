using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields;

/// <summary>A transmitter that may serve a place.</summary>
/// <param name="Position">Where it is.</param>
/// <param name="Level">What is left at a place is this less the path loss, dB: a power level, or a power less a required level.</param>
public readonly record struct Server(Position Position, double Level);

/// <summary>The best of many transmitters, and how many are good enough, at every point of a grid.</summary>
public sealed class ServiceField
{
    private readonly float[] best;
    private readonly int[] bestServers, counts;

    internal ServiceField(FieldGrid grid)
    {
        (best, bestServers, counts) = (new float[grid.Count], new int[grid.Count], new int[grid.Count]);
        Array.Fill(best, float.NegativeInfinity);
        Array.Fill(bestServers, -1);
        Best = new(grid, best);
    }

    /// <summary>Level less path loss of the best transmitter; negative infinity without transmitters.</summary>
    public Field Best { get; }

    /// <summary>Index of the best transmitter, the lowest among equals; −1 without transmitters.</summary>
    public ReadOnlySpan<int> BestServers => bestServers;

    /// <summary>Number of transmitters that are good enough.</summary>
    public ReadOnlySpan<int> Counts => counts;

    internal void Offer(int row, int server, double level, double enough, ReadOnlySpan<float> lossesDb)
    {
        int at = row * Best.Grid.Columns;
        Span<float> bestOfRow = best.AsSpan(at, lossesDb.Length);
        Span<int> serversOfRow = bestServers.AsSpan(at, lossesDb.Length), countsOfRow = counts.AsSpan(at, lossesDb.Length);
        for (int column = 0; column < lossesDb.Length; column++)
        {
            float left = (float)(level - lossesDb[column]);
            if (left >= enough) countsOfRow[column]++;
            bool isBetter = left > bestOfRow[column] || (left == bestOfRow[column] && server < serversOfRow[column]);
            if (!isBetter) continue;
            (bestOfRow[column], serversOfRow[column]) = (left, server);
        }
    }
}
