using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;
using MeshSim.Quantities;

namespace MeshSim.Files.Tables;

/// <summary>Reads <c>readings.csv</c>.</summary>
internal static class ReadingTable
{
    /// <summary>Columns that must be there.</summary>
    public static readonly ImmutableArray<string> Required = ["from", "to", "rssi_dbm"];

    /// <summary>Columns that may be there.</summary>
    public static readonly ImmutableArray<string> Optional = ["note"];

    private static readonly ValidRange RssiDbm = new(-150, 20, "dBm");

    /// <summary>The readings that could be read, in the order written; null with an error when it is no table of readings.</summary>
    /// <param name="file">The file.</param>
    /// <param name="names">What its columns are called.</param>
    /// <param name="devices">The devices; null when their table could not be read.</param>
    /// <param name="problems">Takes the errors.</param>
    public static ImmutableArray<Reading>? Read(SourceFile file, ColumnNames names, DeviceTable? devices, DiagnosticList problems)
    {
        if (CsvTable.Read(file, Required, Optional, problems, names.For(file)) is not { } table) return null;

        ImmutableArray<Reading>.Builder readings = ImmutableArray.CreateBuilder<Reading>();
        foreach (RowReader row in table.Rows.Select(row => new RowReader(row, problems)))
        {
            double? rssiDbm = row.Number("rssi_dbm", RssiDbm);
            string? from = row.RequiredText("from"), to = row.RequiredText("to");
            if (from is null || to is null || devices is null) continue;
            bool areKnown = IsKnown(row, "from", from, devices, problems) & IsKnown(row, "to", to, devices, problems);
            if (areKnown && CanHear(row, from, to, devices, problems))
                readings.Add(new(new(from), new(to), rssiDbm is { } dbm ? new PowerLevel(dbm) : null, row.Note("note")));
        }

        return readings.ToImmutable();
    }

    private static bool IsKnown(RowReader row, string column, string id, DeviceTable devices, DiagnosticList problems)
    {
        if (devices.Ids.ContainsKey(id)) return true;
        if (devices.IsComplete)
            problems.Error(
                row.PlaceOf(column),
                $"no device is called {KnownNames.Quote(id)}",
                () => KnownNames.Help(id, devices.Ids.Keys, "devices"));
        return false;
    }

    private static bool CanHear(RowReader row, string from, string to, DeviceTable devices, DiagnosticList problems)
    {
        string? sender = devices.Ids[from], receiver = devices.Ids[to];
        if (from == to) problems.Error(row.PlaceOf("to"), "a device does not hear itself", "name another device");
        else if (sender is not null && receiver is not null && sender != receiver)
            problems.Error(
                row.PlaceOf("to"),
                $"{KnownNames.Quote(to)} is in network {KnownNames.Quote(receiver)}, {KnownNames.Quote(from)} in {KnownNames.Quote(sender)}",
                "a reading is between two devices of one network");
        else return true;
        return false;
    }
}
