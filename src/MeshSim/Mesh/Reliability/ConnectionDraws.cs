using System.Collections.Immutable;
using System.Numerics;
using MeshSim.Quantities;

namespace MeshSim.Mesh.Reliability;

/// <summary>
/// The probability that each device is connected to the coordinator when shadowing decides which links exist: a seeded experiment
/// in blocks of 64 draws. Each block has its own stream of random numbers and adds whole numbers, so the answer is the same on any
/// number of threads.
/// </summary>
public static class ConnectionDraws
{
    /// <summary>Accepted numbers of draws.</summary>
    public static readonly ValidRange Draws = new(1, 100_000_000, "draws");

    /// <summary>The chance of every device but the coordinator, in the graph's order.</summary>
    /// <param name="graph">The devices and all their links; a link exists in a draw when its margin, shadowing added, is 0 dB or more.</param>
    /// <param name="shadowing">How margins vary.</param>
    /// <param name="draws">How often to draw, within <see cref="Draws"/>.</param>
    /// <param name="seed">Chooses the random numbers.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of draws is outside its range.</exception>
    public static ImmutableArray<ConnectionChance> Estimate(MeshGraph graph, LinkShadowing shadowing, int draws, ulong seed)
    {
        Draws.Check(draws);
        Link[] links = [.. DrawnLinks.Of(graph)];
        (int From, int To)[] ends = DrawnLinks.EndsOf(graph, links);
        double[] marginsDb = [.. links.Select(link => link.Margin.Value)];
        var spreading = Spreading.In(graph);
        var connected = new long[graph.Devices.Length];
        Parallel.For(
            0,
            (draws + 63) / 64,
            () => new Worker(new(graph.Devices.Length, ends, marginsDb, shadowing), new(graph.Devices.Length, graph.Relays, ends), spreading, new int[graph.Devices.Length]),
            (block, _, worker) =>
            {
                ulong counted = ulong.MaxValue >> Math.Max(0, (64 * (block + 1)) - draws);
                worker.Work(SplitMix64.OfBlock(seed, block), counted);
                return worker;
            },
            worker =>
            {
                for (int node = 0; node < connected.Length; node++)
                    Interlocked.Add(ref connected[node], worker.Connected[node]);
            });
        return
        [
            .. from node in Enumerable.Range(0, connected.Length)
               where node != graph.Coordinator
               select new ConnectionChance(graph.Devices[node], (int)connected[node], draws),
        ];
    }

    /// <summary>What one thread needs.</summary>
    private sealed record Worker(LinkDraws Links, ReachWords Reach, Spreading Spreading, int[] Connected)
    {
        public void Work(SplitMix64 random, ulong counted)
        {
            Links.Draw(ref random);
            Reach.Spread(Spreading, Links.Exists);
            for (int node = 0; node < Connected.Length; node++)
                Connected[node] += BitOperations.PopCount(Reach.Reached[node] & counted);
        }
    }
}
