using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Routes;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>The key of a storey: its devices by number, its circuits by letter, the signs in use.</summary>
internal static class KeyTable
{
    /// <summary>Lettering of the tables.</summary>
    public static readonly TextStyle Style = new(false, 11.5f), HeadStyle = new(true, 11.5f);

    /// <summary>Distance between lines of a table, pixels.</summary>
    public const float LineHeight = 15;

    /// <summary>Heads and widths of the columns right of the number, pixels.</summary>
    public static readonly ImmutableArray<(string Head, float Width)> Columns =
        [("device", 158), ("kind", 120), ("mounting", 168), ("supply", 124), ("switch", 124)];

    /// <summary>Width of the column of numbers, pixels.</summary>
    public const float NumberWidth = 34;

    private const float CellGap = 8;

    /// <summary>Every row, from above.</summary>
    /// <param name="subject">The home and its networks.</param>
    /// <param name="storey">The storey.</param>
    /// <param name="ink">Measures text.</param>
    public static ImmutableArray<ColumnRow> Of(SheetSubject subject, Storey storey, Ink ink)
    {
        Device[] here = [.. subject.Coverages.SelectMany(coverage => subject.Home.DevicesOf(coverage.Network)).Where(device => device.Storey == storey.Name)];
        return
        [
            .. here.Length == 0 ? [] : ImmutableArray.Create<ColumnRow>(new KeyHeadRow()),
            .. subject.Coverages.SelectMany(coverage => Network(subject, coverage, storey, ink)),
            .. Circuits(subject, storey, here, ink),
            .. WallLegend.Of(subject.Home, [storey], PlanSheetLayout.KeyWidth, ink),
            .. Signs(subject, storey, here),
        ];
    }

    private static IEnumerable<ColumnRow> Network(SheetSubject subject, NetworkCoverage coverage, Storey storey, Ink ink)
    {
        Device[] devices = [.. subject.Home.DevicesOf(coverage.Network).Where(device => device.Storey == storey.Name)];
        if (devices.Length == 0) yield break;
        int hub = subject.Numbers[coverage.Network.Coordinator];
        yield return new KeyNetworkRow(FormattableString.Invariant($"{coverage.Network.Name}, {coverage.Network.Carrier}, coordinator {hub}"), subject.DashOf(coverage.Network.Name));
        foreach (Device device in devices)
        {
            string circuit = device.Circuit is { } fed ? $"{subject.LetterOf(fed)} {fed}" : device.Power == PowerSource.Battery ? "battery" : "";
            string[] cells = [device.Id.Value, device.Kind, device.Mounting.Name, circuit, device.SwitchedBy ?? ""];
            yield return new KeyDeviceRow(subject.Numbers[device.Id], [.. cells.Zip(Columns, (cell, column) => Lines(cell, column.Width - CellGap, ink))]);
        }
    }

    private static IEnumerable<ColumnRow> Circuits(SheetSubject subject, Storey storey, Device[] here, Ink ink)
    {
        HashSet<string> used =
        [
            .. here.Select(device => device.Circuit).Concat(subject.Home.Outlets.Where(outlet => outlet.Storey == storey.Name).Select(outlet => outlet.Circuit)).OfType<string>(),
        ];
        if (used.Count == 0) yield break;
        yield return new HeadingRow("Circuits");
        foreach (string circuit in subject.Circuits.Where(used.Contains))
        {
            string isolated = subject.IsolationOf(circuit) is { } at ? $"isolated at: {at}" : "where it is isolated is not on record";
            yield return new KeyCircuitRow(subject.LetterOf(circuit), Lines($"{circuit}: {isolated}", PlanSheetLayout.KeyWidth - NumberWidth - CellGap, ink));
        }
    }

    private static IEnumerable<ColumnRow> Signs(SheetSubject subject, Storey storey, Device[] here)
    {
        yield return new HeadingRow("Signs");
        if (here.Length > 0)
        {
            Device shown = here.FirstOrDefault(device => device.Circuit is not null, here[0]);
            string label = FormattableString.Invariant($"{subject.Numbers[shown.Id]}{subject.LetterOf(shown.Circuit)}");
            string fed = shown.Circuit is { } circuit ? $", on circuit {subject.LetterOf(circuit)}" : "";
            yield return new NoteRow(FormattableString.Invariant($"{label}: device {subject.Numbers[shown.Id]}{fed}"), TextStyle.Body, Tone.Text);
        }

        if (subject.Home.Outlets.Any(outlet => outlet.Storey == storey.Name && !outlet.IsAssumed)) yield return new KeyOutletRow();
        if (subject.Coverages.Any(coverage => !RouteLines.On(storey.Name, coverage).Stubs.IsEmpty)) yield return new SignRow(Sign.Stub, "link to that device on another storey");
        if (MapContents.StairwellsOf(subject.Home.FloorPlan, storey).Any()) yield return new SignRow(Sign.Stairwell, "stairwell");
        if (subject.Coverages.Any(coverage => coverage.Devices.Any(reach => !reach.IsReached))) yield return new SignRow(Sign.Unreached, Column.NoReliableWay);
        if (here.Length > 0) yield return new RolesRow([.. Enum.GetValues<Role>().Where(role => here.Any(device => device.Role == role))]);
        foreach (ColumnRow row in Column.Symbols(here)) yield return row;
    }

    private static ImmutableArray<string> Lines(string text, float width, Ink ink)
    {
        string[] lines = [.. TextFlow.Lines(text, Style, width, ink)];
        return lines.Length == 0 ? [""] : [.. lines];
    }
}
