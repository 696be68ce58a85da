using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Pairs;

/// <summary>
/// The other ends of paths from one place, sorted by direction and cut into groups of eight. None of them lies left of the
/// place, so directions fill half a turn.
/// </summary>
internal sealed class TargetGroups
{
    private const int FewestBuckets = 64, MostBuckets = 4096, BucketsPerTarget = 2;

    private readonly int[] starts, bucketOf;

    /// <summary>Makes room.</summary>
    /// <param name="most">Most targets.</param>
    public TargetGroups(int most)
    {
        Buckets = FewestBuckets;
        while (Buckets < MostBuckets && Buckets < BucketsPerTarget * most) Buckets *= 2;
        (starts, bucketOf, Targets) = (new int[Buckets + 1], new int[most], new int[most]);
    }

    /// <summary>Number of buckets that half a turn is divided into.</summary>
    public int Buckets { get; }

    /// <summary>Number of targets.</summary>
    public int Count { get; private set; }

    /// <summary>The targets in order of direction; a group is eight that follow one another.</summary>
    public int[] Targets { get; }

    /// <summary>How many targets lie in lower buckets; one entry more than buckets.</summary>
    public ReadOnlySpan<int> Starts => starts;

    /// <summary>Forgets all targets.</summary>
    public void Clear() => Count = 0;

    /// <summary>Adds a target that does not lie left of the place, nor on its plumb line.</summary>
    public void Add(int target, PlanPoint place, PlanPoint end)
    {
        float dx = end.X - place.X, dy = end.Y - place.Y;
        float direction = dy / (dx + Math.Abs(dy));
        (Targets[Count], bucketOf[Count]) = (target, Math.Min((int)((direction + 1) * (Buckets / 2)), Buckets - 1));
        Count++;
    }

    /// <summary>Sorts what was added.</summary>
    public void Sort(int[] scratch)
    {
        Array.Clear(starts);
        for (int i = 0; i < Count; i++) starts[bucketOf[i]]++;
        for (int bucket = 0, sum = 0; bucket < starts.Length; bucket++) (starts[bucket], sum) = (sum, sum + starts[bucket]);
        Targets.AsSpan(0, Count).CopyTo(scratch);
        for (int i = 0; i < Count; i++) Targets[starts[bucketOf[i]]++] = scratch[i];

        // Each start has moved to that of the next bucket.
        starts.AsSpan(0, Buckets).CopyTo(starts.AsSpan(1));
        starts[0] = 0;
    }
}
