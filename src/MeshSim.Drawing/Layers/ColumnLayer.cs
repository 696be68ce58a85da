using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Layers;

/// <summary>The answer and the legend beside the map.</summary>
internal sealed class ColumnLayer : ILayer
{
    private const float SampleWidth = 44;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => DrawRows(map.Column.Rows, map.Layout.Column, pen);

    /// <summary>Draws rows one below the other.</summary>
    public static void DrawRows(IEnumerable<ColumnRow> rows, PixelBox column, Pen pen)
    {
        float y = column.Top;
        foreach (ColumnRow row in rows)
        {
            DrawRow(row, new(column.Left, y, column.Right, y + row.HeightPixels), pen);
            y += row.HeightPixels;
        }
    }

    /// <summary>Draws one row in its box.</summary>
    public static void DrawRow(ColumnRow row, PixelBox box, Pen pen)
    {
        PixelBox sample = new(box.Left, box.Top, box.Left + SampleWidth, box.Bottom);
        switch (row)
        {
            case HeadingRow heading:
                pen.Text(heading.Text, new(box.Left, box.Bottom - 9), TextStyle.Heading, Tone.Text);
                break;
            case NoteRow note:
                pen.Text(note.Text, new(box.Left + note.IndentPixels, box.Bottom - 5), note.Style, note.Colour);
                break;
            case ClassRow step:
                LegendRows.DrawStep(step, sample, pen);
                break;
            case SymbolRow symbols:
                LegendRows.DrawSymbol(symbols.First, new(box.Left + 16, box.Centre.Y), pen);
                if (symbols.Second is { } second) LegendRows.DrawSymbol(second, new(box.Centre.X + 16, box.Centre.Y), pen);
                break;
            case RolesRow roles:
                LegendRows.DrawRoles(roles, box, pen);
                break;
            case RemarkRow remark:
                LegendRows.DrawRemark(remark, box, pen);
                break;
            case WallRow walls:
                LegendRows.DrawWall(walls, sample, pen);
                break;
            case ZoneRow zone:
                ZoneLayer.DrawSample(zone.Number, sample, pen);
                LegendRows.DrawMeaning(zone.Text, sample, pen);
                break;
            case SignRow sign:
                SignSample.Draw(sign.Sign, sample, pen);
                LegendRows.DrawMeaning(sign.Text, sample, pen);
                break;
        }
    }
}
