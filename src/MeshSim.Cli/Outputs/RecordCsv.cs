using System.Globalization;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Studies;

namespace MeshSim.Cli.Outputs;

/// <summary>The device record as a table for the binder: one line a device.</summary>
internal static class RecordCsv
{
    private static readonly string[] Columns =
    [
        "id", "name", "network", "kind", "power", "role", "storey", "room", "x_m", "y_m", "height_m", "mounting", "hidden", "circuit", "isolated_at",
        "switched_by", "parent", "way", "weakest_margin_db", "second_way", "drops", "left_with_one_way", "on_same_circuit", "drops_with_circuit",
        "take_out", "before", "after", "note",
    ];

    /// <summary>The records, in the order given; ids in one field are separated by blanks.</summary>
    public static string Of(IEnumerable<DeviceRecord> records) =>
        CsvText.Line(Columns) + string.Concat(records.Select(record => CsvText.Line([.. Thing(record), .. Radio(record), .. Handling(record)])));

    private static IEnumerable<string> Thing(DeviceRecord record)
    {
        Device device = record.Device;
        return
        [
            device.Id.Value, device.Name, device.Network.Value, device.Kind, DeviceWords.Of(device.Power), DeviceWords.Of(device.Role),
            device.Storey.Value, device.Room?.Value ?? "", Number(device.Point.XMetres), Number(device.Point.YMetres), Number(device.HeightMetres),
            device.Mounting.Name, device.Mounting.Description, device.Circuit ?? "", record.IsolatedAt ?? "", device.SwitchedBy ?? "",
        ];
    }

    private static IEnumerable<string> Radio(DeviceRecord record) =>
    [
        record.Parent?.Value ?? "",
        record.Reach?.Route is { } route ? RoutesTable.Way(route) : "",
        record.Reach?.Route is { } way ? Figures.Decibels(way.WeakestMargin) : "",
        record.Reach?.SecondRoute is { } second ? RoutesTable.Way(second) : "",
        Ids(record.Drops), Ids(record.LeavesOneWay), Ids(record.OnSameCircuit), Ids(record.DropsWithCircuit),
    ];

    private static IEnumerable<string> Handling(DeviceRecord record) =>
        [string.Join(' ', RemovalWords.Of(record)), record.Device.Before, record.Device.After, record.Device.Note];

    private static string Ids(IEnumerable<DeviceId> devices) => string.Join(' ', devices);

    private static string Number(double metres) => metres.ToString("0.####", CultureInfo.InvariantCulture);
}
