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
    private readonly Network _network;
    private readonly Device[] _devices;
    private readonly Device[] _routers;
    private readonly ImmutableArray<Link> _links;
    private readonly Decibels _designMargin;

    public PluggedInHome(Home home, Network network)
    {
        _network = network;
        _devices = [.. home.Devices];
        _routers = [.. home.Outlets.Select((outlet, i) => Router(outlet, home.Devices.Length + i))];
        Home full = home with { Devices = [.. _devices, .. _routers] };
        IPathLossModel model = PathLossModels.Create(
            new StudyOptions().Model, home.FloorPlan, home.Constructions, network.Carrier, home.Parameters.Exponent, home.Parameters.Detour.Value);
        _links = LinkTable.Compute(full, network, model, state: null);
        _designMargin = FadingMargin.LogNormal(home.Parameters.Shadowing, home.Parameters.Availability);
        Unservable = OutOfReach(AllOutlets);
        Count = Enumerable.Range(0, AllOutlets + 1).Where(subset => OutOfReach(subset).SequenceEqual(Unservable)).Min(int.PopCount);
    }

    /// <summary>The devices out of reach with everything switched on.</summary>
    public DeviceId[] Unservable { get; }

    /// <summary>The fewest routers with which nobody else is out of reach.</summary>
    public int Count { get; }

    private int AllOutlets => (1 << _routers.Length) - 1;

    /// <summary>The devices that routing finds no route for when some outlets have a router.</summary>
    public DeviceId[] OutOfReach(int subset)
    {
        Device[] on = [.. _devices, .. _routers.Where((_, i) => (subset >> i & 1) != 0)];
        HashSet<DeviceId> ids = [.. on.Select(device => device.Id)];
        var graph = new MeshGraph(_network, on, [.. _links.Where(link => ids.Contains(link.From) && ids.Contains(link.To))], _designMargin);
        ImmutableArray<Route?> routes = Routing.LeastEtx(graph);
        return [.. _devices.Where((device, i) => device.Id != _network.Coordinator && routes[i] is null).Select(device => device.Id)];
    }

    private static Device Router(Outlet outlet, int number) =>
        MeshSamples.Device(number, Role.Router) with { Storey = outlet.Storey, Point = outlet.Point, HeightMetres = outlet.HeightMetres };
}
