using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Margins;

namespace MeshSim.Drawing.Layers;

/// <summary>Light lines at 45° over everything below the design margin, so that a dark place shows without any colour.</summary>
internal sealed class HatchLayer : ILayer
{
    /// <summary>Distance between two lines along a row, pixels.</summary>
    public const int Period = 10;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        MarginRaster raster = map.Raster;
        uint[] pixels = new uint[raster.Width * raster.Height];
        for (int row = 0; row < raster.Height; row++)
        {
            for (int column = 0; column < raster.Width; column++)
            {
                byte index = raster[column, row];
                if (index != MarginRaster.Outside && map.Scale.Classes[index].IsBelowDesign)
                    pixels[(row * raster.Width) + column] = LineAt(raster.Left + column + raster.Top + row);
            }
        }

        pen.Raster(pixels, raster.Width, new(raster.Left, raster.Top));
    }

    /// <summary>White, the more opaque the nearer to the middle of a line; transparent between lines.</summary>
    private static uint LineAt(int diagonal)
    {
        uint opacity = (diagonal % Period) switch
        {
            0 => Tone.Hatch.Alpha,
            1 or Period - 1 => (uint)Tone.Hatch.Alpha / 3,
            _ => 0,
        };
        return opacity * 0x01010101u;
    }
}
