using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Mesh.Outages;

namespace MeshSim.Studies.Changes;

/// <summary>Lays the answers about one network of two homes side by side.</summary>
internal static class NetworkComparing
{
    /// <summary>Each device of either.</summary>
    public static ImmutableArray<DeviceChange> Devices(NetworkCoverage before, NetworkCoverage after)
    {
        Dictionary<DeviceId, DeviceReach> was = before.Devices.ToDictionary(reach => reach.Device);
        HashSet<DeviceId> stays = [.. after.Devices.Select(reach => reach.Device)];
        return
        [
            .. after.Devices.Select(reach => new DeviceChange(reach.Device, was.GetValueOrDefault(reach.Device), reach)),
            .. before.Devices.Where(reach => !stays.Contains(reach.Device)).Select(reach => new DeviceChange(reach.Device, reach, null)),
        ];
    }

    /// <summary>
    /// Each outage in which somebody drops otherwise than before. One that is new is compared with nothing being off, for the devices
    /// that had a reliable way; one that is gone drops nobody any longer.
    /// </summary>
    public static ImmutableArray<OutageChange> Outages(NetworkRehearsal before, NetworkRehearsal after)
    {
        HashSet<DeviceId> hadWay = Reached(before.Coverage), hasWay = Reached(after.Coverage);
        Dictionary<(OutageKind, string), Rehearsal> was = before.Rehearsals.ToDictionary(KeyOf);
        Dictionary<(OutageKind, string), Rehearsal> becomes = after.Rehearsals.ToDictionary(KeyOf);
        return
        [
            .. from key in after.Rehearsals.Select(KeyOf).Concat(before.Rehearsals.Select(KeyOf).Where(key => !becomes.ContainsKey(key)))
               let then = was.GetValueOrDefault(key)
               let now = becomes.GetValueOrDefault(key)
               let drops = Without(now?.Dropped, then?.Dropped).Where(hadWay.Contains).ToImmutableArray()
               let keeps = Without(then?.Dropped, now?.Dropped).Where(device => hasWay.Contains(device) && now?.Off.Contains(device) != true).ToImmutableArray()
               where !drops.IsEmpty || !keeps.IsEmpty
               select new OutageChange(key.Item1, key.Item2, now?.Outage.MustHold == true, drops, keeps),
        ];
    }

    /// <summary>Each room of both homes.</summary>
    public static ImmutableArray<RoomChange> Rooms(NetworkCoverage before, NetworkCoverage after, StudyOptions options)
    {
        BandFloors floorsBefore = new(before, options), floorsAfter = new(after, options);
        return
        [
            .. from storeys in Storeys(before, after)
               from room in HomeComparing.Pairs(storeys.Before.Rooms, storeys.After.Rooms, room => room.Name.Value)
               select new RoomChange(
                   storeys.After.Name, room.After.Name, floorsBefore.Of(storeys.Before, room.Before), floorsAfter.Of(storeys.After, room.After)),
        ];
    }

    /// <summary>The margins over each storey whose points can be laid over each other.</summary>
    public static ImmutableArray<MarginChange> Maps(NetworkCoverage before, NetworkCoverage after, StudyOptions options)
    {
        BandFloors floorsBefore = new(before, options), floorsAfter = new(after, options);
        HashSet<string> hidden = [.. PlanComparing.Of(before.Home.FloorPlan, after.Home.FloorPlan).Where(change => change.HidesTheMap).Select(change => change.Subject)];
        return
        [
            .. from storeys in Storeys(before, after)
               where !hidden.Contains(storeys.After.Name.Value) && !(storeys.After.Rooms.IsEmpty && storeys.After.Walls.IsEmpty)
               select new MarginChange(storeys.After.Name, floorsBefore.MapOf(storeys.After.Name), floorsAfter.MapOf(storeys.After.Name)),
        ];
    }

    private static IEnumerable<(Storey Before, Storey After)> Storeys(NetworkCoverage before, NetworkCoverage after) =>
        HomeComparing.Pairs(before.Home.FloorPlan.Storeys, after.Home.FloorPlan.Storeys, storey => storey.Name.Value);

    private static (OutageKind Kind, string Name) KeyOf(Rehearsal rehearsal) => (rehearsal.Outage.Kind, rehearsal.Outage.Name);

    private static HashSet<DeviceId> Reached(NetworkCoverage coverage) => [.. coverage.Devices.Where(reach => reach.IsReached).Select(reach => reach.Device)];

    private static IEnumerable<DeviceId> Without(ImmutableArray<DeviceId>? some, ImmutableArray<DeviceId>? others) => (some ?? []).Except(others ?? []);
}
