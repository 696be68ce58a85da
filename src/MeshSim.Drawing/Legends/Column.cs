using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Drawing.Legends;

/// <summary>The column beside the map: the answer first, then the legend.</summary>
/// <param name="Rows">From above.</param>
internal sealed record Column(ImmutableArray<ColumnRow> Rows)
{
    /// <summary>What a device lacks to which no links of the design margin lead; the tables say it in the same words.</summary>
    public const string NoReliableWay = "no reliable way";

    /// <summary>More rows than this of one list give way to a line that counts the rest: the tables have them all.</summary>
    private const int LongestList = 8;

    /// <summary>How far continued lines of a list stand in, pixels.</summary>
    private const float HangingIndent = 16;

    /// <summary>What all rows take, pixels.</summary>
    public float HeightPixels => Rows.Sum(row => row.HeightPixels);

    /// <summary>Writes the column.</summary>
    public static Column Of(NetworkCoverage coverage, MarginMap map, RepeaterPlacement? placement, MarginScale scale, Ink ink)
    {
        Device[] here = [.. coverage.Home.DevicesOf(coverage.Network).Where(device => device.Storey == map.Storey)];
        return new(
        [
            .. Answer(coverage, ink),
            .. placement is null ? [] : Recommendation(placement, ink),
            .. Margins(map, scale, ink),
            .. Signs(coverage, placement, here),
            .. Symbols(here),
            .. WallLegend.Of(coverage.Home, [coverage.Home.FloorPlan.Storey(map.Storey)], SheetLayout.ColumnWidth, ink),
        ]);
    }

    private static IEnumerable<ColumnRow> Answer(NetworkCoverage coverage, Ink ink)
    {
        DeviceReach[] lost = [.. coverage.Devices.Where(reach => !reach.IsReached)];
        yield return new HeadingRow(FormattableString.Invariant($"{coverage.Devices.Length - lost.Length} of {coverage.Devices.Length} devices reached reliably"));
        if (lost.Length == 0) yield break;

        yield return new NoteRow("No reliable way:", TextStyle.Strong, Tone.Unreached);
        foreach (ColumnRow row in Listed([.. lost.Select(reach => Lacking(reach, coverage))], ink)) yield return row;
    }

    private static string Lacking(DeviceReach reach, NetworkCoverage coverage)
    {
        string where = coverage.Home.Devices.First(device => device.Id == reach.Device).Storey.Value;
        if (reach.NearestLink is not { } link) return $"{reach.Device} ({where})";
        double shortDb = coverage.DesignMargin.Value - link.Margin.Value;
        return shortDb > 0
            ? FormattableString.Invariant($"{reach.Device} ({where}): {shortDb:0.0} dB short to {link.Other(reach.Device)}")
            : FormattableString.Invariant($"{reach.Device} ({where}): too many hops");
    }

    private static IEnumerable<ColumnRow> Recommendation(RepeaterPlacement placement, Ink ink)
    {
        yield return new HeadingRow(placement.Repeaters.Length switch
        {
            0 when placement.ServesAll || !placement.KeptOn.IsEmpty => "No repeater needed",
            0 => "No repeater helps",
            1 => "Add 1 repeater",
            int count => FormattableString.Invariant($"Add {count} repeaters"),
        });
        string[] texts =
        [
            .. placement.Repeaters.Select((repeater, index) => FormattableString.Invariant($"{index + 1}  {repeater.Outlet.Id}, {Place(repeater.Outlet)}")),
            .. placement.KeptOn.Select(kept => $"Keep {kept.Device} powered"),
            .. Left(placement),
        ];
        foreach (ColumnRow row in Listed(texts, ink)) yield return row;
    }

    /// <summary>Who has no way whatever is plugged in, who hangs on one thing, who has no way in a state: each device of a kind once.</summary>
    private static IEnumerable<string> Left(RepeaterPlacement placement)
    {
        HashSet<DeviceId> outOfReach = [.. placement.Unserved.Where(u => u.Case == default).Select(u => u.Device)];
        foreach (DeviceId device in outOfReach) yield return $"No outlet serves {device}";
        foreach (var left in placement.Unserved.Where(u => !outOfReach.Contains(u.Device)).GroupBy(u => (u.Device, u.Case.State)))
        {
            int others = left.Count() - 1;
            yield return left.Key.State is { } state
                ? $"{left.Key.Device}: no way in {state}"
                : FormattableString.Invariant($"{left.Key.Device} hangs on {left.First().Case.Lost}{(others > 0 ? FormattableString.Invariant($" and {others} more") : "")}");
        }
    }

    private static string Place(Outlet outlet) => outlet.Room is { } room ? $"{room.Value} ({outlet.Storey.Value})" : outlet.Storey.Value;

    private static IEnumerable<ColumnRow> Margins(MarginMap map, MarginScale scale, Ink ink)
    {
        yield return new HeadingRow("Link margin, dB");
        foreach (MarginClass step in scale.Classes.Reverse())
        {
            string note = double.IsNegativeInfinity(step.LowerDb) ? ": mostly lost" : step.IsBelowDesign ? ": too little" : "";
            yield return new ClassRow(step, step.Range + note);
        }

        foreach (string line in TextFlow.Lines($"Hatched: below the design margin of {map.DesignMargin}", TextStyle.Body, SheetLayout.ColumnWidth, ink))
            yield return new NoteRow(line, TextStyle.Body, Tone.Quiet);
    }

    private static IEnumerable<ColumnRow> Signs(NetworkCoverage coverage, RepeaterPlacement? placement, Device[] here)
    {
        foreach (ColumnRow row in SignRows(
            coverage.Home.FloorPlan.Storeys.Length > 1, coverage.Devices.Any(reach => !reach.IsReached), placement is { Repeaters.IsEmpty: false })) yield return row;
        if (here.Length > 0) yield return new RolesRow([.. Enum.GetValues<Role>().Where(role => here.Any(device => device.Role == role))]);
    }

    /// <summary>The signs of a map with their meanings.</summary>
    public static IEnumerable<ColumnRow> SignRows(bool hasStoreys, bool hasUnreached, bool hasRepeaters)
    {
        yield return new HeadingRow("Signs");
        yield return new SignRow(Sign.DesignContour, "design margin");
        yield return new SignRow(Sign.Contour, "other margins");
        yield return new SignRow(Sign.Route, "route towards the coordinator");
        if (hasStoreys)
        {
            yield return new SignRow(Sign.Stub, "link to another storey");
            yield return new SignRow(Sign.Stairwell, "stairwell");
        }

        if (hasUnreached) yield return new SignRow(Sign.Unreached, NoReliableWay);
        if (hasRepeaters) yield return new SignRow(Sign.Repeater, "recommended repeater");
    }

    /// <summary>The symbols of some devices with their meanings.</summary>
    public static IEnumerable<ColumnRow> Symbols(IEnumerable<Device> here) =>
        here.Select(SymbolShapes.Of).Distinct().Order().Chunk(2)
            .Select(pair => new SymbolRow(pair[0], pair.Length > 1 ? pair[1] : null));

    /// <summary>A list that may go on in further lines; the rest of a long one is counted.</summary>
    public static IEnumerable<ColumnRow> Listed(string[] texts, Ink ink, int longest = LongestList)
    {
        int shown = texts.Length > longest ? longest - 1 : texts.Length;
        foreach (string text in texts.Take(shown))
        {
            float indent = 0;
            foreach (string line in TextFlow.Lines(text, TextStyle.Body, SheetLayout.ColumnWidth - HangingIndent, ink))
            {
                yield return new NoteRow(line, TextStyle.Body, Tone.Text, indent);
                indent = HangingIndent;
            }
        }

        if (shown < texts.Length) yield return new NoteRow(FormattableString.Invariant($"and {texts.Length - shown} more"), TextStyle.Body, Tone.Quiet);
    }
}
