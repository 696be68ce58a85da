using System.Collections.Immutable;

namespace MeshSim.Mesh.Reliability;

/// <summary>How a frame spreads over a set of links.</summary>
/// <param name="Coordinator">Where it starts; negative when the coordinator is off.</param>
/// <param name="HopLimit">Most links in a row.</param>
/// <param name="Relays">Per node whether it passes frames on.</param>
internal sealed record Spreading(int Coordinator, int HopLimit, ImmutableArray<bool> Relays)
{
    /// <summary>As in a graph.</summary>
    public static Spreading In(MeshGraph graph) =>
        new(graph.Coordinator, graph.HopLimit, [.. Enumerable.Range(0, graph.Devices.Length).Select(graph.Relays)]);
}
