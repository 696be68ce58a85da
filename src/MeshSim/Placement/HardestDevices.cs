using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>Which devices decide: the others are reached whenever these are.</summary>
internal static class HardestDevices
{
    /// <summary>
    /// Leaves out each device that hears everything that another one still in the list hears: it is reached whenever that one
    /// is. One after the other, so that two that hear the same do not both go.
    /// </summary>
    public static IReadOnlyList<int> Of(ReachGraph graph, ImmutableArray<int> devices)
    {
        List<int> left = [.. devices];
        for (int i = left.Count - 1; i >= 0; i--)
        {
            int device = left[i];
            if (left.Exists(other => other != device && graph.HearsAllOf(device, other))) left.RemoveAt(i);
        }

        return left;
    }
}
