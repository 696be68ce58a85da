using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>The record of one device: its id and name above, then a line for each thing to know.</summary>
internal static class DeviceRecordTable
{
    /// <summary>The table of a record.</summary>
    /// <param name="home">The home.</param>
    /// <param name="record">The record.</param>
    public static Table Of(Home home, DeviceRecord record)
    {
        Device device = record.Device;
        ImmutableArray<(string Label, string Text)> lines =
        [
            ("Network", $"{device.Network}, {DeviceWords.Of(device.Role)}"),
            ("Where", RecordWords.Place(home, device)),
            ("Hidden", $"{device.Mounting.Name}: {device.Mounting.Description}"),
            ("Power", DeviceWords.Of(device.Power)),
            ("Circuit", RecordWords.Circuit(record)),
            ("Switch", device.SwitchedBy ?? "none"),
            .. Ways(record),
            ("If it is off", "drops: " + RecordWords.Drops(record)),
            .. device.Circuit is null ? [] : ImmutableArray.Create(("Circuit off", RecordWords.WithCircuit(record))),
            .. RemovalWords.Of(record).Select((step, index) => (index == 0 ? "Take it out" : "", step)),
            .. Free("Before", device.Before),
            .. Free("After", device.After),
            .. Free("Note", device.Note),
        ];
        string what = device.Kind.Length == 0 ? device.Name : $"{device.Name} ({device.Kind})";
        return new([new(device.Id.Value), new(what)], [.. lines.Select(line => ImmutableArray.Create(line.Label, line.Text))]);
    }

    private static ImmutableArray<(string Label, string Text)> Ways(DeviceRecord record)
    {
        if (record.Device.Role == Role.Coordinator) return [("Way", "it is the coordinator")];
        if (record.Reach is not { } reach) return [("Way", "without power in this state")];
        if (reach.Route is not { } route) return [("Way", CoverageWords.NoReliableWay)];
        return
        [
            ("Parent", route.Path[1].Value),
            ("Way", $"{RoutesTable.Way(route)}, margin {route.WeakestMargin}"),
            ("Second way", reach.SecondRoute is { } second ? $"{RoutesTable.Way(second)}, margin {second.WeakestMargin}" : SecondWaysTable.NoSecond(reach)),
        ];
    }

    private static IEnumerable<(string Label, string Text)> Free(string label, string text) =>
        text.Length == 0 ? [] : text.ReplaceLineEndings("\n").Split('\n').Select((line, index) => (index == 0 ? label : "", line));
}
