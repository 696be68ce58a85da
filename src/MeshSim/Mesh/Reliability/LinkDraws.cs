using MeshSim.Radio;

namespace MeshSim.Mesh.Reliability;

/// <summary>
/// Draws which links exist, 64 times at once. Once the parts of the devices are drawn, links are independent of each other and a
/// link of margin m exists with probability Φ((m + a n_i + a n_j) / b): one uniform number decides it, and none is needed where
/// the probability is 0 or 1.
/// </summary>
internal sealed class LinkDraws
{
    /// <summary>Beyond this many deviations a link is certain either way: the share on the far side is 1e-9.</summary>
    private const int Certain = 6;

    /// <summary>Points of Φ per deviation; straight lines between them err by at most max|φ′|/(8·128²) = 2e-6.</summary>
    private const int PointsPerDeviation = 128;

    private static readonly double[] Cumulative = [.. Enumerable.Range(0, (2 * Certain * PointsPerDeviation) + 2)
        .Select(i => 1 - NormalDistribution.Tail(((double)i / PointsPerDeviation) - Certain))];

    private readonly (int From, int To)[] ends;
    private readonly double[] marginsDb;
    private readonly double deviceDb;
    private readonly double linkDb;
    private readonly double[] terms;
    private readonly (double Least, double Most)[] bounds;

    /// <summary>Prepares buffers for one thread.</summary>
    /// <param name="nodes">Number of nodes.</param>
    /// <param name="ends">The ends of each link.</param>
    /// <param name="marginsDb">The median margin of each link over the required level, dB.</param>
    /// <param name="shadowing">How margins vary.</param>
    public LinkDraws(int nodes, (int From, int To)[] ends, double[] marginsDb, LinkShadowing shadowing)
    {
        this.ends = ends;
        this.marginsDb = marginsDb;
        deviceDb = shadowing.OfDevice.Value;
        linkDb = shadowing.OfLink.Value;
        terms = new double[64 * nodes];
        bounds = new (double Least, double Most)[nodes];
        Exists = new ulong[ends.Length];
    }

    /// <summary>For each link the draws in which it exists, as the last <see cref="Draw"/> left it.</summary>
    public ulong[] Exists { get; }

    /// <summary>Draws 64 times.</summary>
    /// <param name="random">Where the numbers come from.</param>
    public void Draw(ref SplitMix64 random)
    {
        if (deviceDb > 0) DrawDevices(ref random);
        for (int link = 0; link < ends.Length; link++)
        {
            (int from, int to) = ends[link];
            double least = marginsDb[link] + bounds[from].Least + bounds[to].Least;
            double most = marginsDb[link] + bounds[from].Most + bounds[to].Most;
            if (least >= Certain * linkDb) Exists[link] = ulong.MaxValue;
            else if (most < -Certain * linkDb) Exists[link] = 0;
            else Exists[link] = DrawLink(ref random, marginsDb[link], terms.AsSpan(64 * from, 64), terms.AsSpan(64 * to, 64));
        }
    }

    private void DrawDevices(ref SplitMix64 random)
    {
        for (int i = 0; i < terms.Length; i += 2)
        {
            (double first, double second) = random.NextNormals();
            terms[i] = deviceDb * first;
            terms[i + 1] = deviceDb * second;
        }

        for (int node = 0; node < bounds.Length; node++)
        {
            double least = double.PositiveInfinity, most = double.NegativeInfinity;
            foreach (double term in terms.AsSpan(64 * node, 64))
            {
                least = Math.Min(least, term);
                most = Math.Max(most, term);
            }

            bounds[node] = (least, most);
        }
    }

    private ulong DrawLink(ref SplitMix64 random, double marginDb, ReadOnlySpan<double> from, ReadOnlySpan<double> to)
    {
        ulong word = 0;
        for (int draw = 0; draw < 64; draw += 2)
        {
            // The halves of one number decide two draws: 32 bits are finer than the lines between the points of Φ.
            ulong bits = random.Next();
            if ((bits >> 32) < Threshold(marginDb + from[draw] + to[draw])) word |= 1UL << draw;
            if ((bits & uint.MaxValue) < Threshold(marginDb + from[draw + 1] + to[draw + 1])) word |= 2UL << draw;
        }

        return word;
    }

    /// <summary>2³² times the probability that a link exists with this margin before its own part.</summary>
    private double Threshold(double marginDb)
    {
        double deviations = marginDb / linkDb;
        if (!(deviations < Certain)) return marginDb < 0 ? 0 : 1L << 32;
        if (deviations <= -Certain) return 0;

        double place = (deviations + Certain) * PointsPerDeviation;
        int point = (int)place;
        double probability = Cumulative[point] + ((place - point) * (Cumulative[point + 1] - Cumulative[point]));
        return probability * (1L << 32);
    }
}
