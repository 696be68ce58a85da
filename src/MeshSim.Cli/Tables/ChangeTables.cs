using System.Collections.Immutable;
using System.Globalization;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Quantities;
using MeshSim.Studies.Changes;

namespace MeshSim.Cli.Tables;

/// <summary>Two homes compared.</summary>
internal static class ChangeTables
{
    /// <summary>What somebody changed.</summary>
    public static Table Home(HomeChanges changes) => new(
        [new("Changed"), new("What"), new("Before"), new("After")],
        [
            .. changes.Added.Select(device => Row(device.Id.Value, "device added", "", $"{device.Network}, {Place(device)}")),
            .. changes.Gone.Select(device => Row(device.Id.Value, "device gone", $"{device.Network}, {Place(device)}", "")),
            .. changes.Moved.Select(move => Row(move.Id, $"device moved {Metres(move)}", move.Before, move.After)),
            .. changes.Changed.Select(Row),
            .. changes.OutletsAdded.Select(outlet => Row(outlet.Id.Value, "outlet added", "", CoverageWords.Place(outlet.Storey, outlet.Room))),
            .. changes.OutletsGone.Select(outlet => Row(outlet.Id.Value, "outlet gone", CoverageWords.Place(outlet.Storey, outlet.Room), "")),
            .. changes.OutletsMoved.Select(move => Row(move.Id, $"outlet moved {Metres(move)}", move.Before, move.After)),
            .. changes.Settings.Select(Row),
            .. changes.Plan.Select(change => Row(change.Subject, change.Words, "", "")),
        ]);

    /// <summary>Devices whose way is another, the worse first.</summary>
    public static Table Ways(NetworkChanges network) => new(
        [new("Device"), new("Way"), new("Before"), new("After"), new("dB before", true), new("dB after", true), new("Ways", true)],
        [
            .. network.Devices.Where(device => device.Way != WayChange.Unchanged)
                .OrderByDescending(device => device.IsWorse)
                .Select(device => ImmutableArray.Create(
                    device.Device.Value,
                    ChangeWords.Of(device),
                    ChangeWords.Way(network.Before.Coverage, device.Before),
                    ChangeWords.Way(network.After.Coverage, device.After),
                    device.Before?.Route is { } was ? Figures.Decibels(was.WeakestMargin) : "",
                    device.After?.Route is { } becomes ? Figures.Decibels(becomes.WeakestMargin) : "",
                    $"{Ways(device.Before?.DisjointRoutes)} > {Ways(device.After?.DisjointRoutes)}")),
        ])
    {
        Notes =
        [
            "dB: margin of the weakest link of the best way. Ways: ways that share no router, before > after. "
                + "Not listed: devices whose way and margin are as before, and that have one way or several as before.",
        ],
    };

    /// <summary>Outages in which somebody drops otherwise than before, the worse first.</summary>
    public static Table Outages(NetworkChanges network) => new(
        [new("What is off"), new("Kind"), new("Drops now"), new("Drops no longer")],
        [
            .. network.Outages.OrderByDescending(outage => outage.IsWorse).Select(outage => ImmutableArray.Create(
                outage.Name + (outage.MustHold ? " (must hold)" : ""),
                OutageWords.Kind(outage.Kind),
                NameList.Short(outage.DropsNow),
                NameList.Short(outage.DropsNoLonger))),
        ]);

    /// <summary>Rooms of which another share is covered, or with another margin.</summary>
    public static Table Rooms(NetworkChanges network) => new(
        [new("Room"), new("% before", true), new("% after", true), new("dB before", true), new("dB after", true), new("Difference", true)],
        [
            .. network.Rooms.Where(room => room.Before != room.After).OrderByDescending(room => room.IsWorse).Select(room => ImmutableArray.Create(
                CoverageWords.Place(room.Storey, room.Room),
                Figures.Percent(room.Before.Covered),
                Figures.Percent(room.After.Covered),
                Margin(room.Before.Median),
                Margin(room.After.Median),
                Signed(room.After.Median - room.Before.Median))),
        ])
    {
        Notes = ["%: share of the floor where a battery device, mounted in the open, has the design margin. dB: the median of its margin over the floor. Not listed: rooms as before."],
    };

    private static ImmutableArray<string> Row(PropertyChange change) =>
        Row(change.Subject.Length == 0 ? "home" : change.Subject, change.Property, Shown(change.Before), Shown(change.After));

    private static ImmutableArray<string> Row(string subject, string what, string before, string after) => [subject, what, before, after];

    private static string Shown(string value) => value.Length == 0 ? "-" : value.ReplaceLineEndings(" ");

    private static string Place(Device device) => CoverageWords.Place(device.Storey, device.Room);

    private static string Metres(Move move) => FormattableString.Invariant($"{move.DistanceMetres:0.00} m");

    private static string Ways(int? ways) => ways is { } count ? Figures.Count(count) : "-";

    private static string Margin(Decibels margin) => double.IsFinite(margin.Value) ? Figures.Decibels(margin) : "none";

    private static string Signed(Decibels difference) =>
        double.IsFinite(difference.Value) ? Math.Round(difference.Value, 1).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture) : "";
}
