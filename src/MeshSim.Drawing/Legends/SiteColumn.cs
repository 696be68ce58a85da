using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Drawing.Legends;

/// <summary>The column beside a map of sites.</summary>
internal static class SiteColumn
{
    /// <summary>Each number on the map has its line, as far as the ten best sites and the present one, or as many repeaters, go.</summary>
    private const int LongestList = 11;

    /// <summary>Writes the column.</summary>
    public static Column Of(NetworkCoverage coverage, SitePlan plan, Storey storey, Ink ink) => new([.. Rows(coverage, plan, storey, ink)]);

    private static IEnumerable<ColumnRow> Rows(NetworkCoverage coverage, SitePlan plan, Storey storey, Ink ink)
    {
        yield return new HeadingRow(plan.Heading);
        foreach (ColumnRow row in Column.Listed([.. plan.Lines], ink, LongestList)) yield return row;
        foreach (ColumnRow row in Note(plan.Note, ink)) yield return row;

        yield return new HeadingRow("Signs");
        yield return plan.IsHub ? new SignRow(Sign.Site, "site of the hub by rank") : new SignRow(Sign.Repeater, "recommended repeater");
        foreach (ColumnRow row in Zones(plan, storey, ink)) yield return row;

        if (coverage.Home.FloorPlan.Storeys.Length > 1) yield return new SignRow(Sign.Stairwell, "stairwell");
        if (plan.IsHub && coverage.Home.Networks.Length > 1)
            foreach (ColumnRow row in Note($"devices: those of network {coverage.Network.Name} alone", ink)) yield return row;
        if (coverage.Devices.Any(reach => !reach.IsReached)) yield return new SignRow(Sign.Unreached, Column.NoReliableWay + " as it stands");
        Device[] here = [.. coverage.Home.DevicesOf(coverage.Network).Where(device => device.Storey == storey.Name)];
        if (here.Length > 0) yield return new RolesRow([.. Enum.GetValues<Role>().Where(role => here.Any(device => device.Role == role))]);
        foreach (ColumnRow row in Column.Symbols(here)) yield return row;
        foreach (ColumnRow row in WallLegend.Of(coverage.Home, [storey], SheetLayout.ColumnWidth, ink)) yield return row;
    }

    private static IEnumerable<ColumnRow> Zones(SitePlan plan, Storey storey, Ink ink)
    {
        int[] here = [.. plan.Zones.Where(entry => entry.Zone.Parts.Any(part => part.Storey == storey.Name)).Select(entry => entry.Number)];
        if (here.Length == 0) yield break;

        foreach (int number in here) yield return new ZoneRow(number, plan.IsHub ? "the hub does as well here" : FormattableString.Invariant($"zone {number}"));
        string note = plan.IsHub
            ? "with the repeaters recommended for the first site"
            : "any outlet in a zone does as well as the site of that number, the others staying where they are";
        foreach (ColumnRow row in Note(note, ink)) yield return row;
    }

    private static IEnumerable<ColumnRow> Note(string text, Ink ink) =>
        TextFlow.Lines(text, TextStyle.Body, SheetLayout.ColumnWidth, ink).Select(line => new NoteRow(line, TextStyle.Body, Tone.Quiet));
}
