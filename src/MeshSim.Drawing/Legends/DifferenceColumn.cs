using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;
using MeshSim.Studies;

namespace MeshSim.Drawing.Legends;

/// <summary>The column beside the map of a difference.</summary>
internal static class DifferenceColumn
{
    /// <summary>Writes the column.</summary>
    public static Column Of(BandComparison bands, DifferenceScale scale, Ink ink) => new([.. Rows(bands, scale, ink)]);

    private static IEnumerable<ColumnRow> Rows(BandComparison bands, DifferenceScale scale, Ink ink)
    {
        (Network first, Network second) = (bands.First.Network, bands.Second.Network);
        yield return new HeadingRow($"{first.Name} against {second.Name}");
        string[] sides = [$"+ more margin in {first.Name} ({first.Carrier})", $"\u2212 more margin in {second.Name} ({second.Carrier})"];
        foreach (ColumnRow row in Lines(sides, ink)) yield return row;

        yield return new HeadingRow("Difference of margins, dB");
        foreach (MarginClass step in scale.Classes.Reverse())
            yield return new ClassRow(step, DifferenceScale.RangeOf(step).Replace('-', '\u2212') + Side(step, first, second));
        foreach (ColumnRow row in Lines([$"Hatched: below the design margin of {bands.First.DesignMargin} in both", "Below a room's name: the difference of the medians of its floor"], ink))
            yield return row;

        yield return new HeadingRow("Signs");
        yield return new SignRow(Sign.DesignContour, "both alike (0 dB)");
        if (bands.First.Home.FloorPlan.Storeys.Length > 1) yield return new SignRow(Sign.Stairwell, "stairwell");
    }

    private static string Side(MarginClass step, Network first, Network second)
    {
        if (step.IsBelowDesign) return "";
        if (step.LowerDb >= 0) return $": {first.Name}";
        return step.UpperDb <= 0 ? $": {second.Name}" : ": about alike";
    }

    private static IEnumerable<ColumnRow> Lines(string[] texts, Ink ink) =>
        from text in texts
        from line in TextFlow.Lines(text, TextStyle.Body, SheetLayout.ColumnWidth, ink)
        select new NoteRow(line, TextStyle.Body, Tone.Quiet);
}
