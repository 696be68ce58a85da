using System.Collections.Immutable;
using CsvHelper;
using MeshSim.Devices;
using MeshSim.Files.Tables;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Writing;

/// <summary>Writes the tables of a home folder.</summary>
internal static class TableFiles
{
    private static readonly CsvWriterOptions Options = new() { NewLine = "\n", Quoting = CsvQuoting.WhenNeededOrWhitespace };

    private static readonly ImmutableArray<string> DeviceColumns =
        ["id", "name", "network", "kind", "power", "role", "storey", "x", "y", "height", "room", "mounting", "circuit", "switched_by", "tx_dbm", "note", "before", "after"];

    /// <summary>Writes <c>devices.csv</c>.</summary>
    public static void WriteDevices(string path, IEnumerable<Device> devices, FloorPlan plan) => Write(path, DeviceColumns, devices.Select(device => new[]
    {
        device.Id.Value,
        device.Name == device.Id.Value ? "" : device.Name,
        device.Network.Value,
        device.Kind,
        DeviceTable.PowerWords.First(word => word.Value == device.Power).Key,
        DeviceTable.RoleWords.First(word => word.Value == device.Role).Key,
        device.Storey.Value,
        YamlWords.Number(device.Point.XMetres),
        YamlWords.Number(device.Point.YMetres),
        YamlWords.Number(device.HeightMetres),
        RoomOf(device.Room, plan.Storey(device.Storey), device.Point),
        device.Mounting.Name,
        device.Circuit ?? "",
        device.SwitchedBy ?? "",
        device.TransmitPower is { } power ? YamlWords.Number(power.Dbm) : "",
        device.Note,
        device.Before,
        device.After,
    }));

    /// <summary>Writes <c>outlets.csv</c>.</summary>
    public static void WriteOutlets(string path, IEnumerable<Outlet> outlets, FloorPlan plan) =>
        Write(path, [.. OutletTable.Required, .. OutletTable.Optional], outlets.Select(outlet => new[]
        {
            outlet.Id.Value,
            outlet.Storey.Value,
            YamlWords.Number(outlet.Point.XMetres),
            YamlWords.Number(outlet.Point.YMetres),
            YamlWords.Number(outlet.HeightMetres),
            RoomOf(outlet.Room, plan.Storey(outlet.Storey), outlet.Point),
            outlet.Circuit ?? "",
        }));

    /// <summary>Writes <c>readings.csv</c>.</summary>
    public static void WriteReadings(string path, IEnumerable<Reading> readings) =>
        Write(path, [.. ReadingTable.Required, .. ReadingTable.Optional], readings.Select(reading => new[]
        {
            reading.From.Value,
            reading.To.Value,
            reading.Level is { } level ? YamlWords.Number(level.Dbm) : "",
            reading.Note,
        }));

    private static string RoomOf(RoomName? room, Storey storey, PlanPoint point) =>
        room?.Value ?? (storey.Rooms.IsEmpty || storey.Rooms.Any(candidate => candidate.Outline.Contains(point)) ? "" : RoomFinder.Outdoors);

    private static void Write(string path, ImmutableArray<string> columns, IEnumerable<string[]> rows)
    {
        using FileStream stream = File.Create(path);
        using CsvWriter writer = CsvWriter.Create(stream, Options);
        writer.WriteRecord(columns.AsSpan());
        foreach (string[] row in rows) writer.WriteRecord(row);
    }
}
