using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh.Outages;
using MeshSim.Mesh.Routers;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>Which mains devices carry one network, as JSON.</summary>
internal sealed record RoutersJson(
    NetworkCoverage Coverage,
    ImmutableArray<RouterJson> Routers,
    int Considered,
    ImmutableArray<NewRouterJson> NewRouters)
    : WaysHeadJson(Coverage)
{
    /// <summary>The record of an answer.</summary>
    public static RoutersJson Of(NetworkRouters routers)
    {
        NetworkCoverage coverage = routers.Coverage;
        return new(
            coverage,
            [.. routers.Duties.Select(duty => RouterJson.Of(coverage.Home, duty))],
            routers.Considered,
            [.. routers.NewRouters.Select(router => NewRouterJson.Of(coverage.Home, router))]);
    }
}

/// <summary>What one mains device does for the others.</summary>
internal sealed record RouterJson(
    string Device,
    string Storey,
    string? Room,
    RouterVerdict Verdict,
    bool Relays,
    bool IsReached,
    ImmutableArray<string> Carries,
    ImmutableArray<string> NeededBy,
    ImmutableArray<string> LeavesOneWay,
    ImmutableArray<OutageNameJson> TakenBy,
    ImmutableArray<OutageNameJson> MissedIn)
{
    /// <summary>The record of a duty.</summary>
    public static RouterJson Of(Home home, RouterDuty duty)
    {
        Device device = home.Devices.First(d => d.Id == duty.Device);
        return new(
            duty.Device.Value,
            device.Storey.Value,
            device.Room?.Value,
            duty.Verdict,
            duty.Relays,
            duty.IsReached,
            JsonIds.Of(duty.Carries),
            JsonIds.Of(duty.NeededBy),
            JsonIds.Of(duty.LeavesOneWay),
            [.. duty.TakenBy.Select(outage => new OutageNameJson(outage.Kind, outage.Name))],
            [.. duty.MissedIn.Select(outage => new OutageNameJson(outage.Kind, outage.Name))]);
    }
}

/// <summary>What can be off.</summary>
internal sealed record OutageNameJson(OutageKind Kind, string Name);

/// <summary>A mains device that would help if it routed in the network.</summary>
internal sealed record NewRouterJson(
    string Device, string NetworkNow, string Storey, string? Room, string? SwitchedBy, ImmutableArray<string> Reached, ImmutableArray<string> SecondWay)
{
    /// <summary>The record of a device.</summary>
    public static NewRouterJson Of(Home home, NewRouter router)
    {
        Device device = home.Devices.First(d => d.Id == router.Device);
        return new(
            router.Device.Value,
            router.Network.Value,
            device.Storey.Value,
            device.Room?.Value,
            router.SwitchedBy,
            JsonIds.Of(router.Reached),
            JsonIds.Of(router.SecondWay));
    }
}
