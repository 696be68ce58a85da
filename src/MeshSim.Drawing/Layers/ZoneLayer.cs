using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Zones;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Layers;

/// <summary>Zones: hatched, each number in another direction, and outlined, so that they show without any colour.</summary>
internal sealed class ZoneLayer : ILayer
{
    /// <summary>Distance between two lines along a row, pixels.</summary>
    private const int Period = 12;

    /// <summary>Width of an outline, pixels.</summary>
    private const float Rim = 1.8f;

    /// <summary>Opacity of a line and of the ground between lines.</summary>
    private const byte LineAlpha = 150, GroundAlpha = 20;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        pen.Within(RoomMask.OutlinesOf(map.Storey, map.Layout.Projection), () =>
        {
            foreach (ZoneShape zone in map.Zones)
            {
                pen.Raster(Hatching(zone, map), (int)map.Layout.Map.Width, new((int)map.Layout.Map.Left, (int)map.Layout.Map.Top));
                foreach (Pixel[] edge in zone.Edges) pen.Outline(edge, isClosed: true, Tone.Zone, Rim);
            }
        });
    }

    /// <summary>Draws a sample of a zone's hatching, for the legend.</summary>
    /// <param name="number">The number of its site.</param>
    /// <param name="box">Where.</param>
    /// <param name="pen">What draws.</param>
    public static void DrawSample(int number, PixelBox box, Pen pen)
    {
        (int left, int top, int width, int height) = ((int)box.Left, (int)box.Top + 3, (int)box.Width, (int)box.Height - 6);
        uint[] pixels = [.. Enumerable.Range(0, width * height).Select(i => Ink(IsLine(number, i % width, i / width) ? LineAlpha : GroundAlpha))];
        pen.Raster(pixels, width, new(left, top));
        pen.Outline([new(left, top), new(left + width, top), new(left + width, top + height), new(left, top + height)], isClosed: true, Tone.Zone, Rim);
    }

    private static uint[] Hatching(ZoneShape zone, MapContents map)
    {
        (int left, int top, int width, int height) = ((int)map.Layout.Map.Left, (int)map.Layout.Map.Top, (int)map.Layout.Map.Width, (int)map.Layout.Map.Height);
        double stepPixels = Lattice.ToMetres(zone.Inside.Grid.Step) * map.Layout.Projection.PixelsPerMetre;
        Pixel origin = map.Layout.Projection.ToPixel(zone.Inside.Grid.Origin);
        uint[] pixels = new uint[width * height];
        for (int row = 0; row < height; row++)
        {
            double ySteps = (origin.Y - (top + row + 0.5)) / stepPixels;
            for (int column = 0; column < width; column++)
            {
                if (MarginRaster.Sample(zone.Inside, (left + column + 0.5 - origin.X) / stepPixels, ySteps) >= 0)
                    pixels[(row * width) + column] = Ink(IsLine(zone.Number, left + column, top + row) ? LineAlpha : GroundAlpha);
            }
        }

        return pixels;
    }

    /// <summary>Rising, falling, upright, level lines by turns.</summary>
    private static bool IsLine(int number, int x, int y) => (number % 4) switch
    {
        1 => (x + y) % Period == 0,
        2 => (((x - y) % Period) + Period) % Period == 0,
        3 => x % Period == 0,
        _ => y % Period == 0,
    };

    /// <summary>The zone's colour, multiplied by an opacity.</summary>
    private static uint Ink(byte alpha) =>
        ((uint)alpha << 24) | ((uint)(Tone.Zone.Blue * alpha / 255) << 16) | ((uint)(Tone.Zone.Green * alpha / 255) << 8) | (uint)(Tone.Zone.Red * alpha / 255);
}
