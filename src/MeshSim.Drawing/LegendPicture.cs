using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing;

/// <summary>What the signs of all maps of a home mean, on one sheet.</summary>
public static class LegendPicture
{
    private const int Rim = 8, Gap = 20;

    /// <summary>Widths of the columns, pixels: the letters of the roles need the most.</summary>
    private static readonly int[] Widths = [240, 316, HouseLayout.Width - (2 * Rim) - (2 * Gap) - 240 - 316];

    /// <summary>Writes the legend as SVG to stand inside a page.</summary>
    /// <param name="home">The home.</param>
    /// <param name="id">Begins every id of the picture; unique in the page.</param>
    public static string Inline(Home home, string id)
    {
        ArgumentNullException.ThrowIfNull(home);
        ArgumentException.ThrowIfNullOrEmpty(id);
        using var ink = new Ink();
        ColumnRow[][] columns =
        [
            [.. Column.SignRows(home.FloorPlan.Storeys.Length > 1, hasUnreached: true, hasRepeaters: true)],
            [new HeadingRow("Devices"), .. Roles(home), .. Column.Symbols(home.Devices)],
            [.. WallLegend.Of(home, home.FloorPlan.Storeys, Widths[2], ink)],
        ];
        PixelBox sheet = new(0, 0, HouseLayout.Width, columns.Max(rows => rows.Sum(row => row.HeightPixels)) + (2 * Rim));
        var pen = new SvgPen(ink, id);
        pen.Flood(Tone.Paper);
        float left = Rim;
        foreach ((ColumnRow[] rows, int width) in columns.Zip(Widths))
        {
            ColumnLayer.DrawRows(rows, new(left, Rim, left + width, sheet.Bottom - Rim), pen);
            left += width + Gap;
        }

        return pen.Inline(sheet, $"{home.Name}: signs of the maps");
    }

    private static IEnumerable<ColumnRow> Roles(Home home)
    {
        Role[] roles = [.. Enum.GetValues<Role>().Where(role => home.Devices.Any(device => device.Role == role))];
        if (roles.Length > 0) yield return new RolesRow(roles);
    }
}
