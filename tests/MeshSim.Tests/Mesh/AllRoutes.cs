using MeshSim.Mesh;

namespace MeshSim.Tests.Mesh;

/// <summary>Every route of a small graph, one by one: what cleverer searches are held against.</summary>
internal static class AllRoutes
{
    /// <summary>Every route from the last node of a path to the coordinator that repeats no node.</summary>
    public static IEnumerable<(double Etx, int[] Path, string Key)> From(MeshGraph graph, int[] path, int hopsLeft)
    {
        if (path[^1] == graph.Coordinator) yield return (EtxOf(graph, path), path, string.Join(' ', path.Select(MeshSamples.Id)));
        if (path[^1] == graph.Coordinator || hopsLeft == 0) yield break;
        foreach ((int next, Link _) in graph.UsableLinks(path[^1]))
        {
            if (!graph.Relays(next) || path.Contains(next)) continue;
            foreach (var route in From(graph, [.. path, next], hopsLeft - 1))
                yield return route;
        }
    }

    /// <summary>Summed from the coordinator outwards, so that equal costs come out as equal numbers.</summary>
    private static double EtxOf(MeshGraph graph, int[] path)
    {
        double etx = 0;
        for (int i = path.Length - 2; i >= 0; i--)
            etx = graph.UsableLinks(path[i]).First(entry => entry.Neighbour == path[i + 1]).Link.Etx + etx;
        return etx;
    }
}
