using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;
using MeshSim.Studies;
using MeshSim.Tests.Mesh;

namespace MeshSim.Tests.Placement;

/// <summary>
/// A home with a router installed at every outlet, of which any subset can be switched on: what placement predicts, tried out by
/// routing.
/// </summary>
internal sealed class PluggedInHome
{
    private readonly Network network;
    private readonly Device[] devices;
    private readonly Device[] routers;
    private readonly ImmutableArray<Link> links;
    private readonly Decibels designMargin;

    public PluggedInHome(Home home, Network network)
    {
        this.network = network;
        devices = [.. home.Devices];
        routers = [.. home.Outlets.Select((outlet, i) => Router(outlet, home.Devices.Length + i))];
        Home full = home with { Devices = [.. devices, .. routers] };
        IPathLossModel model = PathLossModels.Create(
            new StudyOptions().Model, home.FloorPlan, home.Constructions, network.Carrier, home.Parameters.Exponent, home.Parameters.Detour.Value);
        links = LinkTable.Compute(full, network, model, state: null);
        designMargin = FadingMargin.LogNormal(home.Parameters.Shadowing, home.Parameters.Availability);
        Unservable = OutOfReach(AllOutlets);
        Count = Enumerable.Range(0, AllOutlets + 1).Where(subset => OutOfReach(subset).SequenceEqual(Unservable)).Min(int.PopCount);
    }

    /// <summary>The devices out of reach with everything switched on.</summary>
    public DeviceId[] Unservable { get; }

    /// <summary>The fewest routers with which nobody else is out of reach.</summary>
    public int Count { get; }

    private int AllOutlets => (1 << routers.Length) - 1;

    /// <summary>The devices that routing finds no route for when some outlets have a router.</summary>
    public DeviceId[] OutOfReach(int subset)
    {
        Device[] on = [.. devices, .. routers.Where((_, i) => (subset >> i & 1) != 0)];
        HashSet<DeviceId> ids = [.. on.Select(device => device.Id)];
        var graph = new MeshGraph(network, on, [.. links.Where(link => ids.Contains(link.From) && ids.Contains(link.To))], designMargin);
        ImmutableArray<Route?> routes = Routing.LeastEtx(graph);
        return [.. devices.Where((device, i) => device.Id != network.Coordinator && routes[i] is null).Select(device => device.Id)];
    }

    private static Device Router(Outlet outlet, int number) =>
        MeshSamples.Device(number, Role.Router) with { Storey = outlet.Storey, Point = outlet.Point, HeightMetres = outlet.HeightMetres };
}
