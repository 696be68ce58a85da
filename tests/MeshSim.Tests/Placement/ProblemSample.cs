using System.Collections.Immutable;
using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

/// <summary>A repeater problem in plain view, so that tests can change one thing about it and ask the same questions by hand.</summary>
/// <param name="Relays">Per device, whether it passes frames on; device 0 is the coordinator.</param>
/// <param name="OutletCount">Number of outlets.</param>
/// <param name="HopLimit">Most links in a row.</param>
/// <param name="DesignMarginDb">The margin that a link must have.</param>
/// <param name="MarginsDb">By node and node, symmetric.</param>
internal sealed record ProblemSample(ImmutableArray<bool> Relays, int OutletCount, int HopLimit, double DesignMarginDb, double[,] MarginsDb)
{
    public const double DefaultDesignMarginDb = 6;

    // Across a hand's breadth a margin is far above all that is asked.
    private const double TwinMarginDb = 60;

    /// <summary>Random problems of up to eight devices and eight outlets. On the coarse ones margins are whole, so ties are common.</summary>
    public static readonly Gen<ProblemSample> Any =
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Bool).Select((seed, isCoarse) => Random(seed, isCoarse));

    public int NodeCount => Relays.Length + OutletCount;

    public static ProblemSample Random(int seed, bool isCoarse)
    {
        var random = new Random(seed);
        int devices = random.Next(3, 9), outlets = random.Next(1, 9);
        double density = 0.15 + (0.3 * random.NextDouble()), routers = random.NextDouble() / 2;
        double[,] marginsDb = new double[devices + outlets, devices + outlets];
        for (int a = 0; a < devices + outlets; a++)
        {
            for (int b = a + 1; b < devices + outlets; b++)
            {
                int sign = random.NextDouble() < density ? 1 : -1;
                double marginDb = DefaultDesignMarginDb + (sign * 8 * random.NextDouble());
                marginsDb[a, b] = marginsDb[b, a] = isCoarse ? Math.Round(marginDb) : marginDb;
            }
        }

        ImmutableArray<bool> relays = [.. Enumerable.Range(0, devices).Select(i => i == 0 || random.NextDouble() < routers)];
        return new(relays, outlets, random.Next(1, 8), DefaultDesignMarginDb, marginsDb);
    }

    public RepeaterProblem Problem() =>
        new(Relays, coordinator: 0, OutletCount, HopLimit, new(DesignMarginDb), (a, b) => new(MarginsDb[a, b]));

    /// <summary>The same without the last outlet.</summary>
    public ProblemSample WithoutLastOutlet() => this with { OutletCount = OutletCount - 1 };

    /// <summary>The same with second outlets beside some of its outlets, after all others.</summary>
    public ProblemSample WithTwins(ImmutableArray<int> outlets)
    {
        int[] first = [.. Enumerable.Range(0, NodeCount), .. outlets.Select(outlet => Relays.Length + outlet)];
        double[,] marginsDb = new double[first.Length, first.Length];
        for (int a = 0; a < first.Length; a++)
            for (int b = 0; b < first.Length; b++) marginsDb[a, b] = first[a] == first[b] ? TwinMarginDb : MarginsDb[first[a], first[b]];
        return this with { OutletCount = OutletCount + outlets.Length, MarginsDb = marginsDb };
    }

    /// <summary>The same with one link so weak that it never counts.</summary>
    public ProblemSample WithoutLink(int a, int b)
    {
        double[,] weaker = (double[,])MarginsDb.Clone();
        weaker[a, b] = weaker[b, a] = double.NegativeInfinity;
        return this with { MarginsDb = weaker };
    }

    /// <summary>The same devices in another order; the coordinator stays first.</summary>
    public ProblemSample WithDevicesShuffled(int seed)
    {
        int[] order = [.. Enumerable.Range(1, Relays.Length - 1)];
        new Random(seed).Shuffle(order);
        int[] old = [0, .. order, .. Enumerable.Range(Relays.Length, OutletCount)];
        double[,] moved = new double[NodeCount, NodeCount];
        for (int a = 0; a < NodeCount; a++)
            for (int b = 0; b < NodeCount; b++) moved[a, b] = MarginsDb[old[a], old[b]];
        return this with { Relays = [.. Relays.Select((_, i) => Relays[old[i]])], MarginsDb = moved };
    }
}
