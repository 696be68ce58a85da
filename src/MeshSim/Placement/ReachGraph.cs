using System.Numerics;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>
/// The links of a <see cref="RepeaterProblem"/> that are strong enough, as one row of bits per node: thousands of questions of
/// who is reached cost a few microseconds each.
/// </summary>
internal sealed class ReachGraph
{
    /// <summary>Hops of a node that is not reached: more than any limit, and two of them still add up.</summary>
    public const int Unreached = int.MaxValue / 4;

    private readonly int wordsPerRow;
    private readonly ulong[] rows;
    private readonly int[][] neighbours;
    private readonly NodeSet relays;
    private readonly NodeSet?[] standIns;

    public ReachGraph(RepeaterProblem problem, Decibels margin)
    {
        Problem = problem;
        wordsPerRow = NodeSet.WordsFor(problem.NodeCount);
        rows = new ulong[problem.NodeCount * wordsPerRow];
        neighbours = new int[problem.NodeCount][];
        standIns = new NodeSet?[problem.NodeCount];
        relays = new NodeSet(problem.NodeCount);
        for (int node = 0; node < problem.DeviceCount; node++)
            if (problem.Relays[node]) relays.Add(node);

        List<int> heard = [];
        for (int node = 0; node < problem.NodeCount; node++)
        {
            heard.Clear();
            ReadOnlySpan<double> marginsDb = problem.MarginsDb(node);
            for (int other = 0; other < marginsDb.Length; other++)
            {
                if (other == node || marginsDb[other] < margin.Value) continue;
                heard.Add(other);
                rows[(node * wordsPerRow) + (other / NodeSet.BitsPerWord)] |= 1UL << (other % NodeSet.BitsPerWord);
            }

            neighbours[node] = [.. heard];
        }
    }

    /// <summary>Where the links come from.</summary>
    public RepeaterProblem Problem { get; }

    /// <summary>How many searches from one node to all others there have been: the measure of the work done on this graph.</summary>
    public long Searches { get; private set; }

    /// <summary>The devices that pass frames on and no outlet: what there is before anything is plugged in.</summary>
    public NodeSet NothingChosen() => relays.Copy();

    /// <summary>The devices that pass frames on and every outlet.</summary>
    public NodeSet EverythingChosen()
    {
        NodeSet all = relays.Copy();
        for (int outlet = 0; outlet < Problem.OutletCount; outlet++)
            all.Add(Problem.NodeOf(outlet));
        return all;
    }

    /// <summary>The devices that pass frames on and some outlets.</summary>
    public NodeSet Chosen(IEnumerable<int> outlets)
    {
        NodeSet chosen = relays.Copy();
        foreach (int outlet in outlets)
            chosen.Add(Problem.NodeOf(outlet));
        return chosen;
    }

    /// <summary>The nodes that a node hears, lowest first.</summary>
    public ReadOnlySpan<int> Neighbours(int node) => neighbours[node];

    /// <summary>The same as bits, lowest node first.</summary>
    public ReadOnlySpan<ulong> Row(int node) => rows.AsSpan(node * wordsPerRow, wordsPerRow);

    /// <summary>Whether a node hears every node that another one hears, itself left aside.</summary>
    public bool HearsAllOf(int node, int other) => StandInsFor(other).Contains(node);

    /// <summary>The nodes that hear every node that one hears, themselves left aside and that one among them, when some nodes are off.</summary>
    public NodeSet StandInsFor(int node, NodeSet absent) => absent.Contains(node) ? StandInsFor(node) : StandInsFor(node).Without(absent);

    /// <summary>
    /// The fewest links from a source to each node when only some nodes pass frames on. A node that does not is reached but
    /// leads no further, so an outlet that is not chosen gets the hops that it would have.
    /// </summary>
    /// <param name="source">Where to start; it sends whether or not it is in <paramref name="passing"/>.</param>
    /// <param name="passing">The nodes that pass frames on.</param>
    /// <param name="hops">Receives the count per node, <see cref="Unreached"/> where there is no way.</param>
    public void CountHops(int source, NodeSet passing, Span<int> hops)
    {
        Searches++;
        hops[..Problem.NodeCount].Fill(Unreached);
        Span<ulong> scratch = stackalloc ulong[3 * wordsPerRow];
        scratch.Clear();
        Span<ulong> seen = scratch[..wordsPerRow], frontier = scratch.Slice(wordsPerRow, wordsPerRow), next = scratch[(2 * wordsPerRow)..];
        Mark(source, seen);
        Mark(source, frontier);
        hops[source] = 0;
        for (int depth = 1; Advance(frontier, seen, next, hops, depth); depth++)
        {
            for (int word = 0; word < wordsPerRow; word++)
            {
                frontier[word] = next[word] & passing.Words[word];
                next[word] = 0;
            }
        }
    }

    private NodeSet StandInsFor(int node) => standIns[node] ??= HearersOfAll(Neighbours(node));

    /// <summary>The nodes that hear all of some nodes, themselves left aside.</summary>
    private NodeSet HearersOfAll(ReadOnlySpan<int> nodes)
    {
        NodeSet all = new(Problem.NodeCount);
        Array.Fill(all.Words, ulong.MaxValue);
        foreach (int heard in nodes)
        {
            bool isIn = all.Contains(heard);
            ReadOnlySpan<ulong> hearing = Row(heard);
            for (int word = 0; word < wordsPerRow; word++) all.Words[word] &= hearing[word];
            if (isIn) all.Add(heard);
        }

        return all;
    }

    private static void Mark(int node, Span<ulong> words) => words[node / NodeSet.BitsPerWord] |= 1UL << (node % NodeSet.BitsPerWord);

    /// <summary>One layer: the nodes that the frontier hears and that were not seen before. False when there are none.</summary>
    private bool Advance(ReadOnlySpan<ulong> frontier, Span<ulong> seen, Span<ulong> next, Span<int> hops, int depth)
    {
        for (int word = 0; word < wordsPerRow; word++)
        {
            for (ulong rest = frontier[word]; rest != 0; rest &= rest - 1)
            {
                int node = (word * NodeSet.BitsPerWord) + BitOperations.TrailingZeroCount(rest);
                ReadOnlySpan<ulong> row = Row(node);
                for (int i = 0; i < wordsPerRow; i++) next[i] |= row[i];
            }
        }

        bool any = false;
        for (int word = 0; word < wordsPerRow; word++)
        {
            next[word] &= ~seen[word];
            seen[word] |= next[word];
            for (ulong rest = next[word]; rest != 0; rest &= rest - 1)
            {
                hops[(word * NodeSet.BitsPerWord) + BitOperations.TrailingZeroCount(rest)] = depth;
                any = true;
            }
        }

        return any;
    }
}
