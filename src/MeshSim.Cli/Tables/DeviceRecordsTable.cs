using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>The record of many devices, a row for each: what <see cref="DeviceRecordTable"/> says of one, close enough for paper.</summary>
internal static class DeviceRecordsTable
{
    /// <summary>The table of a network's records.</summary>
    /// <param name="home">The home.</param>
    /// <param name="records">The records, in the order of the rows.</param>
    /// <param name="removals">The ways in which devices come out, as they are told beside the table; a row names its own by its number.</param>
    public static Table Of(Home home, IReadOnlyList<DeviceRecord> records, ImmutableArray<string> removals)
    {
        bool hasText = records.Any(record => Free(record.Device).Length > 0);
        return new(
            [
                new("Device"), new("Where, hidden"), new("Fed by"), new("Way, second way"), new("When it is off"), new("Out by"),
                .. hasText ? [new("Before, after, note")] : Array.Empty<Column>(),
            ],
            [
                .. records.Select(record => (ImmutableArray<string>)
                [
                    $"{record.Device.Id}: {record.Device.Name}",
                    $"{RecordWords.Place(home, record.Device)}; {record.Device.Mounting.Name}",
                    FedBy(record),
                    Ways(record),
                    $"drops: {RecordWords.Drops(record)}" + (record.Device.Circuit is null ? "" : $"; with its circuit {RecordWords.WithCircuit(record)}"),
                    Name(removals.IndexOf(Removal(record))),
                    .. hasText ? [Free(record.Device)] : Array.Empty<string>(),
                ]),
            ]);
    }

    /// <summary>How a device comes out, its steps one after the other.</summary>
    public static string Removal(DeviceRecord record) => string.Join(' ', RemovalWords.Of(record));

    /// <summary>What a way out is called.</summary>
    /// <param name="index">Its place among those that are told, from 0.</param>
    public static string Name(int index) => FormattableString.Invariant($"R{index + 1}");

    private static string FedBy(DeviceRecord record)
    {
        if (record.Device.Power == PowerSource.Battery) return DeviceWords.Of(record.Device.Power);
        string circuit = record is { Device.Circuit: { } known, IsolatedAt: null } ? known : RecordWords.Circuit(record); // What is not on record stands above the table, once.
        string manual = record.Device.SwitchedBy is { } switchedBy ? $"; switch: {switchedBy}" : "";
        return $"{DeviceWords.Of(record.Device.Power)}; {circuit}{manual}";
    }

    private static string Ways(DeviceRecord record)
    {
        if (record.Device.Role == Role.Coordinator) return "it is the coordinator";
        if (record.Reach is not { } reach) return "without power in this state";
        if (reach.Route is not { } route) return CoverageWords.NoReliableWay;
        return $"{RoutesTable.Way(route)}; second: {(reach.SecondRoute is { } second ? RoutesTable.Way(second) : SecondWaysTable.NoSecond(reach))}";
    }

    private static string Free(Device device) => string.Join("; ", new[] { Labelled("before", device.Before), Labelled("after", device.After), device.Note }.Where(text => text.Length > 0));

    private static string Labelled(string label, string text) => text.Length == 0 ? "" : $"{label}: {text}";
}
