using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Margins;
using SkiaSharp;

namespace MeshSim.Drawing.Layers;

/// <summary>The margin field in steps of the scale; paper outside the building.</summary>
internal sealed class HeatLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        MarginRaster raster = map.Raster;
        uint[] colours = [.. map.Scale.Classes.Select(step => Packed(step.Colour))];
        uint[] pixels = new uint[raster.Width * raster.Height];
        for (int row = 0; row < raster.Height; row++)
        {
            for (int column = 0; column < raster.Width; column++)
            {
                byte index = raster[column, row];
                if (index != MarginRaster.Outside) pixels[(row * raster.Width) + column] = colours[index];
            }
        }

        pen.Raster(pixels, raster.Width, new(raster.Left, raster.Top));
    }

    private static uint Packed(SKColor colour) => 0xFF000000u | ((uint)colour.Blue << 16) | ((uint)colour.Green << 8) | colour.Red;
}
