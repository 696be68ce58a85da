using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Drawing;
using MeshSim.Mesh;
using MeshSim.Mesh.Outages;
using MeshSim.Propagation;
using MeshSim.Studies.Changes;

namespace MeshSim.Cli.Json;

/// <summary>Two homes compared, as JSON.</summary>
internal sealed record CompareJson(
    string Before,
    string After,
    ModelName Model,
    bool IsWorse,
    HomeChangesJson Changes,
    ImmutableArray<NetworkChangesJson> Networks)
{
    /// <summary>The record of a comparison.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="names">How its pictures are called, or null when none was asked for.</param>
    /// <param name="format">Which kind of file they are.</param>
    public static CompareJson Of(HomeComparison comparison, PictureNames? names, PictureFormat format) => new(
        comparison.Before.Name,
        comparison.After.Name,
        comparison.Options.Model,
        comparison.IsWorse,
        HomeChangesJson.Of(comparison.Changes),
        [.. comparison.Networks.Select(network => NetworkChangesJson.Of(network, names, format))]);
}

/// <summary>What somebody changed.</summary>
internal sealed record HomeChangesJson(
    ImmutableArray<string> DevicesAdded,
    ImmutableArray<string> DevicesGone,
    ImmutableArray<Move> DevicesMoved,
    ImmutableArray<PropertyChange> DevicesChanged,
    ImmutableArray<string> OutletsAdded,
    ImmutableArray<string> OutletsGone,
    ImmutableArray<Move> OutletsMoved,
    ImmutableArray<PropertyChange> Settings,
    ImmutableArray<PlanChange> Plan)
{
    /// <summary>The record of the changes.</summary>
    public static HomeChangesJson Of(HomeChanges changes) => new(
        JsonIds.Of(changes.Added.Select(device => device.Id)),
        JsonIds.Of(changes.Gone.Select(device => device.Id)),
        changes.Moved,
        changes.Changed,
        [.. changes.OutletsAdded.Select(outlet => outlet.Id.Value)],
        [.. changes.OutletsGone.Select(outlet => outlet.Id.Value)],
        changes.OutletsMoved,
        changes.Settings,
        changes.Plan);
}

/// <summary>What came of it in one network.</summary>
internal sealed record NetworkChangesJson(
    string Network,
    double DesignMarginBeforeDb,
    double DesignMarginAfterDb,
    bool IsWorse,
    ImmutableArray<string> Pictures,
    ImmutableArray<DeviceChangeJson> Devices,
    ImmutableArray<OutageChangeJson> Outages,
    ImmutableArray<RoomChangeJson> Rooms)
{
    /// <summary>The record of a network.</summary>
    public static NetworkChangesJson Of(NetworkChanges network, PictureNames? names, PictureFormat format) => new(
        network.After.Coverage.Network.Name.Value,
        network.Before.Coverage.DesignMargin.Value,
        network.After.Coverage.DesignMargin.Value,
        network.IsWorse,
        names is null ? [] : [.. network.Maps.Select(map => names.Change(network.After.Coverage.Network.Name, map.Storey, format))],
        [.. network.Devices.Select(DeviceChangeJson.Of)],
        [.. network.Outages.Select(OutageChangeJson.Of)],
        [.. network.Rooms.Select(RoomChangeJson.Of)]);
}

/// <summary>What became of the way of one device. What belongs to a way is null without one.</summary>
internal sealed record DeviceChangeJson(
    string Device, WayChange Way, bool IsWorse, double? MarginAddedDb, ReachSideJson? Before, ReachSideJson? After)
{
    /// <summary>The record of a device.</summary>
    public static DeviceChangeJson Of(DeviceChange device) => new(
        device.Device.Value, device.Way, device.IsWorse, device.MarginAdded?.Value, ReachSideJson.Of(device.Before), ReachSideJson.Of(device.After));
}

/// <summary>How a device stands on one side.</summary>
internal sealed record ReachSideJson(bool IsReached, ImmutableArray<string>? Route, double? WeakestMarginDb, int DisjointRoutes)
{
    /// <summary>The record of a reach; null when the device is not in the network.</summary>
    public static ReachSideJson? Of(DeviceReach? reach) => reach is null
        ? null
        : new(reach.IsReached, reach.Route is { } route ? JsonIds.Of(route.Path) : null, reach.Route?.WeakestMargin.Value, reach.DisjointRoutes);
}

/// <summary>Who drops otherwise than before in one outage.</summary>
internal sealed record OutageChangeJson(OutageKind Kind, string Name, bool MustHold, ImmutableArray<string> DropsNow, ImmutableArray<string> DropsNoLonger)
{
    /// <summary>The record of an outage.</summary>
    public static OutageChangeJson Of(OutageChange outage) =>
        new(outage.Kind, outage.Name, outage.MustHold, JsonIds.Of(outage.DropsNow), JsonIds.Of(outage.DropsNoLonger));
}

/// <summary>How much of one room was covered, and is.</summary>
internal sealed record RoomChangeJson(
    string Storey, string Room, bool IsWorse, double CoveredBefore, double CoveredAfter, double MedianBeforeDb, double MedianAfterDb)
{
    /// <summary>The record of a room.</summary>
    public static RoomChangeJson Of(RoomChange room) => new(
        room.Storey.Value, room.Room.Value, room.IsWorse, room.Before.Covered, room.After.Covered, room.Before.Median.Value, room.After.Median.Value);
}
