using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.Studies;
using MeshSim.Studies.Changes;

namespace MeshSim.Drawing.Legends;

/// <summary>The column beside the map of a home before and after.</summary>
internal static class ChangeColumn
{
    /// <summary>Writes the column.</summary>
    public static Column Of(NetworkChanges changes, StoreyName storey, DifferenceScale scale, Ink ink) => new([.. Rows(changes, storey, scale, ink)]);

    private static IEnumerable<ColumnRow> Rows(NetworkChanges changes, StoreyName storey, DifferenceScale scale, Ink ink)
    {
        NetworkCoverage after = changes.After.Coverage;
        Device[] here = [.. after.Home.DevicesOf(after.Network).Where(device => device.Storey == storey)];
        yield return new HeadingRow("After against before");
        foreach (ColumnRow row in Lines(["+ more margin after", "\u2212 less margin after", "Devices as they are after"], ink)) yield return row;

        yield return new HeadingRow("Difference of margins, dB");
        foreach (MarginClass step in scale.Classes.Reverse())
            yield return new ClassRow(step, DifferenceScale.RangeOf(step).Replace('-', '\u2212').Replace("neither covers", "dark before and after", StringComparison.Ordinal) + Side(step));
        string[] notes =
        [
            $"Hatched: below the design margin of {after.DesignMargin} before and after",
            "Below a room's name: the difference of the medians of its floor",
        ];
        foreach (ColumnRow row in Lines(notes, ink)) yield return row;

        yield return new HeadingRow("Signs");
        if (after.Home.FloorPlan.Storeys.Length > 1) yield return new SignRow(Sign.Stairwell, "stairwell");
        if (after.Devices.Any(reach => !reach.IsReached)) yield return new SignRow(Sign.Unreached, Column.NoReliableWay);
        if (here.Length > 0) yield return new RolesRow([.. Enum.GetValues<Role>().Where(role => here.Any(device => device.Role == role))]);
        foreach (ColumnRow row in Column.Symbols(here)) yield return row;
    }

    private static string Side(MarginClass step)
    {
        if (step.IsBelowDesign) return "";
        if (step.LowerDb >= 0) return ": better";
        return step.UpperDb <= 0 ? ": worse" : ": about as before";
    }

    private static IEnumerable<ColumnRow> Lines(string[] texts, Ink ink) =>
        from text in texts
        from line in TextFlow.Lines(text, TextStyle.Body, SheetLayout.ColumnWidth, ink)
        select new NoteRow(line, TextStyle.Body, Tone.Quiet);
}
