using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Mesh;

namespace MeshSim.Studies;

/// <summary>Keeps a list of fixes short enough to read.</summary>
internal static class FixRanking
{
    private const int MostOfAKind = 2, Most = 8;

    /// <summary>How many devices have two ways without a shared router before a change, and one after it.</summary>
    public static int LeftWithOneWay(ImmutableArray<DeviceReach> before, ImmutableArray<DeviceReach> after, DeviceId? except)
    {
        HashSet<DeviceId> single = [.. after.Where(reach => reach.DisjointRoutes == 1).Select(reach => reach.Device)];
        return before.Count(reach => reach.DisjointRoutes > 1 && reach.Device != except && single.Contains(reach.Device));
    }

    /// <summary>Whether a change costs a device its way.</summary>
    public static bool Loses(ImmutableArray<DeviceReach> before, ImmutableArray<DeviceReach> after, DeviceId? except)
    {
        HashSet<DeviceId> lost = [.. after.Where(reach => !reach.IsReached).Select(reach => reach.Device)];
        return before.Any(reach => reach.IsReached && reach.Device != except && lost.Contains(reach.Device));
    }

    /// <summary>The first fixes of a ranked list, and of each kind no more than a few: twenty outlets in a row tell nobody more than two.</summary>
    public static ImmutableArray<T> Shortened<T>(IEnumerable<T> ranked, Func<T, Fix> fixOf)
    {
        var counts = new Dictionary<Type, int>();
        var kept = ImmutableArray.CreateBuilder<T>();
        foreach (T entry in ranked)
        {
            Type kind = fixOf(entry).GetType();
            int count = counts[kind] = counts.GetValueOrDefault(kind) + 1;
            if (count <= (fixOf(entry) is RaiseDevice ? 1 : MostOfAKind)) kept.Add(entry);
            if (kept.Count == Most) break;
        }

        return kept.ToImmutable();
    }
}
