namespace MeshSim.Mesh.Reliability;

/// <summary>
/// The SplitMix64 generator of pseudo-random numbers: G. Steele, D. Lea, C. Flood, "Fast splittable pseudorandom number
/// generators", OOPSLA 2014. Small, fast, the same on every machine, and any seed is a good one. Not for secrets.
/// </summary>
/// <param name="seed">Where the sequence starts.</param>
internal struct SplitMix64(ulong seed)
{
    private const ulong Step = 0x9E3779B97F4A7C15;

    private ulong state = seed;

    /// <summary>The generator of one of many blocks of work, so that blocks can be worked on in any order.</summary>
    /// <param name="seed">The seed of the whole.</param>
    /// <param name="block">Number of the block.</param>
    public static SplitMix64 OfBlock(ulong seed, int block)
    {
        // The block's number is mixed before it meets the seed: neighbouring blocks and neighbouring seeds then share nothing.
        ulong start = new SplitMix64((ulong)block).Next();
        return new SplitMix64(new SplitMix64(seed ^ start).Next());
    }

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        ulong z = state += Step;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>A number above 0 and up to 1, uniform, a multiple of 2⁻⁵³.</summary>
    public double NextUnit() => ((Next() >> 11) + 1) * (1.0 / (1UL << 53));

    /// <summary>Two independent numbers of the normal distribution of mean 0 and deviation 1, by Box and Muller (1958).</summary>
    public (double First, double Second) NextNormals()
    {
        double radius = Math.Sqrt(-2 * Math.Log(NextUnit()));
        (double sine, double cosine) = Math.SinCos(2 * Math.PI * NextUnit());
        return (radius * cosine, radius * sine);
    }
}
