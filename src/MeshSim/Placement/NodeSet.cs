using System.Numerics;

namespace MeshSim.Placement;

/// <summary>A set of nodes, one bit each.</summary>
internal sealed class NodeSet
{
    /// <summary>Nodes per word.</summary>
    public const int BitsPerWord = 64;

    /// <summary>An empty set.</summary>
    /// <param name="nodeCount">Number of nodes that it can hold.</param>
    public NodeSet(int nodeCount) => Words = new ulong[WordsFor(nodeCount)];

    private NodeSet(ulong[] words) => Words = words;

    /// <summary>The bits, lowest node first.</summary>
    public ulong[] Words { get; }

    /// <summary>Number of nodes in the set.</summary>
    public int Count => Words.Sum(BitOperations.PopCount);

    /// <summary>The nodes in the set, lowest first.</summary>
    public IEnumerable<int> Nodes => Enumerable.Range(0, Words.Length * BitsPerWord).Where(Contains);

    /// <summary>Number of words that hold that many nodes.</summary>
    public static int WordsFor(int nodeCount) => (nodeCount + BitsPerWord - 1) / BitsPerWord;

    /// <summary>Whether a node is in the set.</summary>
    public bool Contains(int node) => (Words[node / BitsPerWord] & Bit(node)) != 0;

    /// <summary>Puts a node in.</summary>
    public void Add(int node) => Words[node / BitsPerWord] |= Bit(node);

    /// <summary>Takes a node out.</summary>
    public void Remove(int node) => Words[node / BitsPerWord] &= ~Bit(node);

    /// <summary>Whether all nodes of this set are in another one.</summary>
    public bool IsWithin(NodeSet other)
    {
        ulong[] words = Words, others = other.Words;
        for (int word = 0; word < words.Length; word++)
            if ((words[word] & ~others[word]) != 0) return false;
        return true;
    }

    /// <summary>Whether some node is in both sets.</summary>
    public bool Meets(NodeSet other)
    {
        ulong[] words = Words, others = other.Words;
        for (int word = 0; word < words.Length; word++)
            if ((words[word] & others[word]) != 0) return true;
        return false;
    }

    /// <summary>Makes it the nodes whose value is at least so much.</summary>
    /// <param name="least">That much.</param>
    /// <param name="values">Per node its value.</param>
    public void SetToAtLeast(double least, ReadOnlySpan<double> values)
    {
        Array.Clear(Words);
        for (int node = 0; node < values.Length; node++)
            if (values[node] >= least) Add(node);
    }

    /// <summary>A set of the same nodes.</summary>
    public NodeSet Copy() => new([.. Words]);

    /// <summary>The nodes of this set that another one lacks.</summary>
    public NodeSet Without(NodeSet other)
    {
        ulong[] left = [.. Words];
        for (int word = 0; word < left.Length; word++) left[word] &= ~other.Words[word];
        return new(left);
    }

    /// <summary>Takes out the nodes that another set lacks.</summary>
    public void KeepOnly(NodeSet other)
    {
        for (int word = 0; word < Words.Length; word++) Words[word] &= other.Words[word];
    }

    private static ulong Bit(int node) => 1UL << (node % BitsPerWord);
}
