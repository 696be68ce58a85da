using System.Collections.Immutable;
using System.Globalization;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Quantities;
using MeshSim.Radio;
using MeshSim.Tests.Radio;

namespace MeshSim.Tests.Mesh;

/// <summary>Networks made up for tests: devices "d00" (the coordinator), "d01" and so on.</summary>
internal static class MeshSamples
{
    public static readonly Decibels DesignMargin = new(6);

    public static readonly Mounting Surface = new() { Name = "surface", Description = "", Losses = [(new(2440), Decibels.Zero)], Source = "by definition" };

    public static Network Network(int hopLimit, Topology topology = Topology.Mesh) => new()
    {
        Name = new("net"),
        Radio = RadioSamples.OQpsk with { Topology = topology },
        Channel = 18,
        Coordinator = Id(0),
        HopLimit = hopLimit,
    };

    public static DeviceId Id(int number) => new("d" + number.ToString("00", CultureInfo.InvariantCulture));

    public static Device Device(int number, Role role) => new()
    {
        Id = Id(number),
        Name = "sample",
        Network = new("net"),
        Power = role == Role.EndDevice ? PowerSource.Battery : PowerSource.Mains,
        Role = role,
        Storey = new("ground"),
        Point = default,
        HeightMetres = 1,
        Mounting = Surface,
    };

    public static Link Link(int from, int to, double delivery = 1, double reverse = 1, double marginDb = 10) => new()
    {
        From = Id(from),
        To = Id(to),
        PathLoss = new("sample", 1, []),
        Received = new(-80),
        Reverse = new(-80),
        Margin = new(marginDb),
        Delivery = delivery,
        ReverseDelivery = reverse,
    };

    /// <summary>A graph in which all devices after the coordinator have the roles given.</summary>
    public static MeshGraph Graph(Network network, IEnumerable<Role> roles, params ImmutableArray<Link> links) =>
        new(network, roles.Select((role, i) => Device(i + 1, role)).Prepend(Device(0, Role.Coordinator)), links, DesignMargin);

    /// <summary>A random graph; the same for the same arguments.</summary>
    /// <param name="seed">Chooses roles, links and their quality.</param>
    /// <param name="devices">Number of devices.</param>
    /// <param name="hopLimit">Most links in a row.</param>
    /// <param name="isTied">Whether all costs are 1, 2 or 4 transmissions, so that many routes cost exactly the same.</param>
    public static MeshGraph RandomGraph(int seed, int devices, int hopLimit, bool isTied)
    {
        var random = new Random(seed);
        Role[] roles = [.. Enumerable.Range(1, devices - 1).Select(_ => random.Next(4) == 0 ? Role.EndDevice : Role.Router)];
        return Graph(Network(hopLimit), roles, RandomLinks(random, devices, isTied));
    }

    private static ImmutableArray<Link> RandomLinks(Random random, int devices, bool isTied)
    {
        double density = 0.1 + (0.6 * random.NextDouble());
        var links = ImmutableArray.CreateBuilder<Link>();
        for (int from = 0; from < devices; from++)
        {
            for (int to = from + 1; to < devices; to++)
            {
                if (random.NextDouble() > density) continue;
                links.Add(Link(from, to, Quality(), Quality(), marginDb: random.Next(0, 20)));
            }
        }

        return links.ToImmutable();

        double Quality() => isTied ? (random.Next(2) + 1) / 2.0 : 0.2 + (0.8 * random.NextDouble());
    }
}
