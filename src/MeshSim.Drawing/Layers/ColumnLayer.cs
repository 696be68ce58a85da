using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;

namespace MeshSim.Drawing.Layers;

/// <summary>The answer and the legend beside the map.</summary>
internal sealed class ColumnLayer : ILayer
{
    private const float SampleWidth = 44, TextIndent = 56;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        PixelBox column = map.Layout.Column;
        float y = column.Top;
        foreach (ColumnRow row in map.Column.Rows)
        {
            DrawRow(row, new(column.Left, y, column.Right, y + row.HeightPixels), pen);
            y += row.HeightPixels;
        }
    }

    private static void DrawRow(ColumnRow row, PixelBox box, Pen pen)
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
                DrawStep(step, sample, pen);
                break;
            case SymbolRow symbols:
                DrawSymbol(symbols.First, new(box.Left + 16, box.Centre.Y), pen);
                if (symbols.Second is { } second) DrawSymbol(second, new(box.Centre.X + 16, box.Centre.Y), pen);
                break;
            case RolesRow roles:
                DrawRoles(roles, box, pen);
                break;
            case SignRow sign:
                SignSample.Draw(sign.Sign, sample, pen);
                DrawMeaning(sign.Text, sample, pen);
                break;
        }
    }

    private static void DrawStep(ClassRow step, PixelBox sample, Pen pen)
    {
        PixelBox swatch = new(sample.Left, sample.Top + 1, sample.Right, sample.Bottom - 1);
        Pixel[] corners = [new(swatch.Left, swatch.Top), new(swatch.Right, swatch.Top), new(swatch.Right, swatch.Bottom), new(swatch.Left, swatch.Bottom)];
        pen.Area(corners, step.Class.Colour);
        if (step.Class.IsBelowDesign) pen.Hatching(corners, Tone.Hatch, 1.6f, HatchLayer.Period);
        pen.Frame(swatch, Tone.Quiet, 1);
        DrawMeaning(step.Text, sample, pen);
    }

    private static void DrawSymbol(SymbolShape shape, Pixel centre, Pen pen)
    {
        DeviceLayer.DrawSymbol(shape, centre, Tone.Text, pen);
        pen.Text(SymbolShapes.Meaning(shape), new(centre.X + 20, centre.Y + (TextStyle.Body.CapitalHeight / 2)), TextStyle.Body, Tone.Text);
    }

    private static void DrawRoles(RolesRow roles, PixelBox box, Pen pen)
    {
        float x = box.Left + 9;
        foreach (Role role in roles.Roles)
        {
            DeviceLayer.DrawRole(role, new(x, box.Centre.Y), Tone.Text, pen);
            string word = role switch { Role.Coordinator => "coordinator", Role.Router => "router", _ => "end device" };
            pen.Text(word, new(x + 13, box.Centre.Y + (TextStyle.Body.CapitalHeight / 2)), TextStyle.Body, Tone.Text);
            x += role == Role.Coordinator ? 124 : 86;
        }
    }

    private static void DrawMeaning(string text, PixelBox sample, Pen pen) =>
        pen.Text(text, new(sample.Left + TextIndent, sample.Centre.Y + (TextStyle.Body.CapitalHeight / 2)), TextStyle.Body, Tone.Text);
}
