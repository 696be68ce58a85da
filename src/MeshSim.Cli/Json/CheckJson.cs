using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;

namespace MeshSim.Cli.Json;

/// <summary>What was read from a home folder, as JSON.</summary>
internal sealed record CheckJson(
    string Home,
    string Region,
    ImmutableArray<StoreyJson> Storeys,
    ImmutableArray<NetworkJson> Networks,
    ImmutableArray<string> States,
    int OutletsGiven,
    int OutletsAssumed,
    int Readings,
    ImmutableArray<string> Notices)
{
    /// <summary>The record of a home.</summary>
    /// <param name="home">As read.</param>
    /// <param name="notices">What a person should know about the reading.</param>
    public static CheckJson Of(Home home, IEnumerable<string> notices) => new(
        home.Name,
        home.Region,
        [.. home.FloorPlan.Storeys.Select(StoreyJson.Of)],
        [.. home.Networks.Select(network => NetworkJson.Of(home, network))],
        [.. home.States.Select(state => state.Name)],
        home.Outlets.Count(outlet => !outlet.IsAssumed),
        home.Outlets.Count(outlet => outlet.IsAssumed),
        home.Readings.Length,
        [.. notices]);
}

/// <summary>One storey in numbers.</summary>
internal sealed record StoreyJson(string Storey, int Rooms, int Walls, int Doors, int Windows, int Objects, string? Floor)
{
    /// <summary>The record of a storey.</summary>
    public static StoreyJson Of(Storey storey) => new(
        storey.Name.Value,
        storey.Rooms.Length,
        storey.Walls.Length,
        Count(storey, OpeningKind.Door),
        Count(storey, OpeningKind.Window),
        storey.Objects.Length,
        storey.Floor?.Construction.Value);

    private static int Count(Storey storey, OpeningKind kind) =>
        storey.Walls.Sum(wall => wall.Openings.Count(opening => opening.Kind == kind));
}

/// <summary>One network in numbers. The coordinator counts as a device, and as neither router nor end device.</summary>
internal sealed record NetworkJson(
    string Network,
    string Radio,
    int Channel,
    double CarrierMegahertz,
    string Coordinator,
    int Devices,
    int Routers,
    int EndDevices)
{
    /// <summary>The record of a network.</summary>
    public static NetworkJson Of(Home home, Network network) => new(
        network.Name.Value,
        network.Radio.Name,
        network.Channel,
        network.Carrier.Megahertz,
        network.Coordinator.Value,
        home.DevicesOf(network).Count(),
        home.DevicesOf(network).Count(device => device.Role == Role.Router),
        home.DevicesOf(network).Count(device => device.Role == Role.EndDevice));
}
