using MeshSim.Devices;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Studies.Changes;

/// <summary>Lays two homes side by side, without computing anything.</summary>
internal static class HomeComparing
{
    /// <summary>What is different.</summary>
    public static HomeChanges Of(Home before, Home after)
    {
        (Outlet[] outletsBefore, Outlet[] outletsAfter) = (Listed(before), Listed(after));
        (Device Before, Device After)[] kept = [.. Pairs(before.Devices, after.Devices, device => device.Id.Value)];
        return new()
        {
            Added = [.. Only(after.Devices, before.Devices, device => device.Id.Value)],
            Gone = [.. Only(before.Devices, after.Devices, device => device.Id.Value)],
            Moved =
            [
                .. from pair in kept
                   let move = MoveOf(pair.Before.Id.Value, PlaceOf(pair.Before), before.PositionOf(pair.Before), PlaceOf(pair.After), after.PositionOf(pair.After))
                   where move is not null
                   select move,
            ],
            Changed = [.. kept.SelectMany(pair => PropertyChanges.Of(pair.Before, pair.After))],
            OutletsAdded = [.. Only(outletsAfter, outletsBefore, outlet => outlet.Id.Value)],
            OutletsGone = [.. Only(outletsBefore, outletsAfter, outlet => outlet.Id.Value)],
            OutletsMoved =
            [
                .. from pair in Pairs(outletsBefore, outletsAfter, outlet => outlet.Id.Value)
                   let move = MoveOf(pair.Before.Id.Value, PlaceOf(pair.Before), before.PositionOf(pair.Before), PlaceOf(pair.After), after.PositionOf(pair.After))
                   where move is not null
                   select move,
            ],
            Settings = [.. PropertyChanges.OfSettings(before, after)],
            Plan = PlanComparing.Of(before.FloorPlan, after.FloorPlan),
        };
    }

    /// <summary>The things of one list that another has too, in the order of the second.</summary>
    public static IEnumerable<(T Before, T After)> Pairs<T>(IEnumerable<T> before, IEnumerable<T> after, Func<T, string> nameOf)
    {
        Dictionary<string, T> known = before.ToDictionary(nameOf, StringComparer.Ordinal);
        return after.Where(thing => known.ContainsKey(nameOf(thing))).Select(thing => (known[nameOf(thing)], thing));
    }

    /// <summary>The things of one list that another lacks.</summary>
    public static IEnumerable<T> Only<T>(IEnumerable<T> here, IEnumerable<T> there, Func<T, string> nameOf)
    {
        HashSet<string> known = there.Select(nameOf).ToHashSet(StringComparer.Ordinal);
        return here.Where(thing => !known.Contains(nameOf(thing)));
    }

    private static Outlet[] Listed(Home home) => [.. home.Outlets.Where(outlet => !outlet.IsAssumed)];

    private static Move? MoveOf(string id, string before, Position from, string after, Position to) =>
        before == after ? null : new(id, from.DistanceMetresTo(to), before, after);

    private static string PlaceOf(Device device) => Place(device.Storey.Value, device.Point, device.HeightMetres);

    private static string PlaceOf(Outlet outlet) => Place(outlet.Storey.Value, outlet.Point, outlet.HeightMetres);

    private static string Place(string storey, PlanPoint point, double heightMetres) => FormattableString.Invariant($"{storey} {point} {heightMetres:0.####} m up");
}
