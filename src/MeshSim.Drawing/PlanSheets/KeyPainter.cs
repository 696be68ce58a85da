using System.Globalization;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>Draws key and title block.</summary>
internal static class KeyPainter
{
    /// <summary>What a sample takes before its text, pixels.</summary>
    private const float SampleWidth = 104;

    /// <summary>Draws one column of the key.</summary>
    public static void Draw(KeyColumn column, Pen pen)
    {
        float y = column.Box.Top;
        foreach (ColumnRow row in column.Rows)
        {
            DrawRow(row, new(column.Box.Left, y, column.Box.Right, y + row.HeightPixels), pen);
            y += row.HeightPixels;
        }
    }

    /// <summary>Draws a title block.</summary>
    public static void Draw(SheetTitle title, PixelBox box, Pen pen, Ink ink)
    {
        pen.Frame(box, Tone.Text, 1.6f);
        float y = box.Top + SheetTitle.Pad;
        foreach ((string text, TextStyle style) in title.Lines(box.Width, ink))
        {
            y += style.LineHeight;
            pen.Text(text, new(box.Left + SheetTitle.Pad, y - (style.LineHeight * 0.25f)), style, Tone.Text);
        }
    }

    private static void DrawRow(ColumnRow row, PixelBox box, Pen pen)
    {
        switch (row)
        {
            case KeyHeadRow:
                DrawCells("No.", [.. KeyTable.Columns.Select(column => column.Head)], box, pen, KeyTable.HeadStyle);
                pen.Line(new(box.Left, box.Bottom - 2), new(box.Right, box.Bottom - 2), Tone.Text, 1);
                break;
            case KeyNetworkRow network:
                RouteLayer.DrawLink(new(box.Left, box.Centre.Y + 3), new(box.Left + SampleWidth - 10, box.Centre.Y + 3), 0, 0, pen, network.Dash);
                pen.Text(network.Text, new(box.Left + SampleWidth, box.Bottom - 7), TextStyle.Strong, Tone.Text);
                break;
            case KeyDeviceRow device:
                for (int line = 0; line < device.Cells.Max(cell => cell.Length); line++)
                {
                    string number = line == 0 ? device.Number.ToString(CultureInfo.InvariantCulture) : "";
                    DrawCells(number, [.. device.Cells.Select(cell => line < cell.Length ? cell[line] : "")], box with { Top = box.Top + (line * KeyTable.LineHeight) }, pen, KeyTable.Style);
                }

                break;
            case KeyCircuitRow circuit:
                pen.Text(circuit.Letter, new(box.Left, box.Top + KeyTable.LineHeight - 3), KeyTable.HeadStyle, Tone.Text);
                for (int line = 0; line < circuit.Lines.Length; line++)
                    pen.Text(circuit.Lines[line], new(box.Left + KeyTable.NumberWidth, box.Top + ((line + 1) * KeyTable.LineHeight) - 3), KeyTable.Style, Tone.Text);
                break;
            case KeyOutletRow:
                PlanPainter.DrawOutlet(new(box.Left + 22, box.Centre.Y), pen);
                LegendRows.DrawMeaning("outlet without a device, with its circuit", box with { Right = box.Left + 44 }, pen);
                break;
            default:
                ColumnLayer.DrawRow(row, box, pen);
                break;
        }
    }

    private static void DrawCells(string number, string[] cells, PixelBox box, Pen pen, TextStyle style)
    {
        float x = box.Left, y = box.Top + KeyTable.LineHeight - 3;
        pen.Text(number, new(x, y), KeyTable.HeadStyle, Tone.Text);
        x += KeyTable.NumberWidth;
        foreach ((string cell, (_, float width)) in cells.Zip(KeyTable.Columns))
        {
            pen.Text(cell, new(x, y), style, Tone.Text);
            x += width;
        }
    }
}
