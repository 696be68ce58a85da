using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Symbols;
using SkiaSharp;

namespace MeshSim.Drawing.Layers;

/// <summary>Devices: a symbol for the kind, a letter for the role, a warning sign where there is no route.</summary>
internal sealed class DeviceLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => DrawAll(map.Marks.Devices, pen);

    /// <summary>Draws devices.</summary>
    public static void DrawAll(IReadOnlyList<DeviceMark> devices, Pen pen)
    {
        foreach (DeviceMark mark in devices.Where(mark => mark.IsMoved))
        {
            pen.Line(mark.TruePlace, mark.Centre, Tone.Text, 1);
            pen.Disc(mark.TruePlace, 2.5f, Tone.Text);
        }

        foreach (DeviceMark mark in devices)
        {
            SKColor colour = mark.Standing == Standing.Off ? Tone.Quiet : Tone.Text;
            DeviceSigns.DrawSymbol(SymbolShapes.Of(mark.Device), mark.Centre, colour, pen);
            DeviceSigns.DrawRole(mark.Device.Role, new(mark.Centre.X + 10, mark.Centre.Y + 9), colour, pen);
            if (mark.Standing == Standing.Unreached) DeviceSigns.DrawWarning(new(mark.Centre.X - 11, mark.Centre.Y - 11), pen);
        }
    }
}
