namespace MeshSim.Mesh.Reliability;

/// <summary>The links that chance can make or break.</summary>
internal static class DrawnLinks
{
    /// <summary>Links of which at least one end relays, usable or not, in the graph's order: no other link carries anything.</summary>
    public static IEnumerable<Link> Of(MeshGraph graph) =>
        graph.Links.Where(link => graph.Relays(graph.Devices.IndexOf(link.From)) || graph.Relays(graph.Devices.IndexOf(link.To)));

    /// <summary>The nodes at the ends of some links.</summary>
    public static (int From, int To)[] EndsOf(MeshGraph graph, IEnumerable<Link> links) =>
        [.. links.Select(link => (graph.Devices.IndexOf(link.From), graph.Devices.IndexOf(link.To)))];
}
