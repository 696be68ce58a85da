using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Mesh.Reliability;

/// <summary>Networks whose links exist with chosen probabilities; all devices relay, and hops are not limited.</summary>
internal static class ReliabilitySamples
{
    public static readonly Decibels Deviation = new(6);

    /// <summary>A link that exists with a probability when it varies by <see cref="Deviation"/>.</summary>
    public static Link Link(int from, int to, double probability) =>
        MeshSamples.Link(from, to, marginDb: -Deviation.Value * NormalDistribution.TailQuantile(probability));

    /// <summary>Routers "d01" and up, with links of one probability.</summary>
    public static MeshGraph Graph(int devices, double probability, params (int From, int To)[] links) =>
        Graph(devices, [.. links.Select(link => Link(link.From, link.To, probability))]);

    /// <summary>Routers "d01" and up.</summary>
    public static MeshGraph Graph(int devices, ImmutableArray<Link> links) =>
        MeshSamples.Graph(MeshSamples.Network(hopLimit: devices), Enumerable.Repeat(Role.Router, devices - 1), links);

    /// <summary>The classical bridge: coordinator d00, terminal d03, between them d01 and d02, joined to each other.</summary>
    public static MeshGraph Bridge(double probability) => Graph(4, probability, (0, 1), (0, 2), (1, 2), (1, 3), (2, 3));

    /// <summary>2p² + 2p³ − 5p⁴ + 2p⁵, the reliability of the bridge as every textbook has it.</summary>
    public static double BridgeFormula(double p) => (2 * p * p) + (2 * Math.Pow(p, 3)) - (5 * Math.Pow(p, 4)) + (2 * Math.Pow(p, 5));
}
