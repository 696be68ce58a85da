using System.Collections.Immutable;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh.Reliability;

/// <summary>
/// The same probability exactly, for small graphs and independent links: the sum over every combination of existing and missing
/// links. Its work doubles with each link.
/// </summary>
public static class ExactConnection
{
    /// <summary>The most links that are enumerated: a million combinations.</summary>
    public const int MostLinks = 20;

    /// <summary>Links whose combinations fill one word of 64 bits.</summary>
    private const int LinksPerWord = 6;

    /// <summary>
    /// For each node the probability of a route to the coordinator within the hop limit, 0 to 1; 1 for the coordinator itself. A
    /// link exists with probability Φ(margin / deviation), independently of all others.
    /// </summary>
    /// <param name="graph">The devices and all their links.</param>
    /// <param name="deviation">Standard deviation of each link's shadowing; 0 lets the margins decide.</param>
    /// <exception cref="ArgumentException">More than <see cref="MostLinks"/> links have an end that relays.</exception>
    public static ImmutableArray<double> Of(MeshGraph graph, Decibels deviation)
    {
        Link[] links = [.. DrawnLinks.Of(graph)];
        if (links.Length > MostLinks)
            throw new ArgumentException(FormattableString.Invariant($"{links.Length} links; at most {MostLinks} can be enumerated"), nameof(graph));

        double[] exists = [.. links.Select(link => Exists(link, deviation))];
        var reach = new ReachWords(graph.Devices.Length, graph.Relays, DrawnLinks.EndsOf(graph, links));
        var spreading = Spreading.In(graph);
        double[] low = [.. Enumerable.Range(0, 1 << LinksPerWord).Select(bits => Weight(exists.Take(LinksPerWord), bits))];
        var words = new ulong[links.Length];
        var probability = new double[graph.Devices.Length];
        for (int high = 0; high < 1 << Math.Max(0, links.Length - LinksPerWord); high++)
        {
            for (int link = 0; link < words.Length; link++)
                words[link] = link < LinksPerWord ? Pattern(link) : (high >> (link - LinksPerWord) & 1) == 1 ? ulong.MaxValue : 0;
            reach.Spread(spreading, words);
            double weight = Weight(exists.Skip(LinksPerWord), high);
            for (int node = 0; node < probability.Length; node++)
                probability[node] += weight * Sum(low, reach.Reached[node]);
        }

        return [.. probability];
    }

    private static double Exists(Link link, Decibels deviation) =>
        deviation.Value > 0 ? NormalDistribution.Tail(-link.Margin.Value / deviation.Value) : link.Margin.Value >= 0 ? 1 : 0;

    /// <summary>The combinations, of the 64 of a word, in which a link exists: those whose number has the link's bit.</summary>
    private static ulong Pattern(int link)
    {
        ulong word = 0;
        for (int combination = 0; combination < 64; combination++)
            word |= (ulong)((combination >> link) & 1) << combination;
        return word;
    }

    /// <summary>The probability that of some links exactly those exist whose bit is set; 0 where a bit has no link.</summary>
    private static double Weight(IEnumerable<double> exists, int bits)
    {
        double weight = 1;
        foreach (double p in exists)
        {
            weight *= (bits & 1) == 1 ? p : 1 - p;
            bits >>= 1;
        }

        return bits == 0 ? weight : 0;
    }

    private static double Sum(double[] weights, ulong chosen)
    {
        double sum = 0;
        for (int i = 0; i < weights.Length; i++)
            if ((chosen >> i & 1) == 1) sum += weights[i];
        return sum;
    }
}
