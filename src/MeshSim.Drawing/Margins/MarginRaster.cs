using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;

namespace MeshSim.Drawing.Margins;

/// <summary>The margin class of every pixel of the map: what the heat and hatch layers draw.</summary>
internal sealed class MarginRaster
{
    /// <summary>Marks a pixel outside the building or without a value.</summary>
    public const byte Outside = 255;

    private readonly byte[] classes;

    /// <summary>Reads the field at the middle of every pixel.</summary>
    /// <param name="field">Margins, dB.</param>
    /// <param name="storey">Whose rooms bound the building.</param>
    /// <param name="scale">The classes.</param>
    /// <param name="layout">The sheet.</param>
    public MarginRaster(Field field, Storey storey, FieldScale scale, SheetLayout layout)
    {
        Left = (int)layout.Map.Left;
        Top = (int)layout.Map.Top;
        Width = (int)layout.Map.Width;
        Height = (int)layout.Map.Height;
        classes = new byte[Width * Height];
        Pixel[][] outlines = RoomMask.OutlinesOf(storey, layout.Projection);
        bool[] inside = new bool[Width];
        double stepPixels = Lattice.ToMetres(field.Grid.Step) * layout.Projection.PixelsPerMetre;
        Pixel origin = layout.Projection.ToPixel(field.Grid.Origin);
        for (int row = 0; row < Height; row++)
        {
            RoomMask.Mark(outlines, Left, Top + row + 0.5f, inside);
            double ySteps = (origin.Y - (Top + row + 0.5)) / stepPixels;
            for (int column = 0; column < Width; column++)
            {
                float margin = inside[column] ? Sample(field, (Left + column + 0.5 - origin.X) / stepPixels, ySteps) : float.NaN;
                classes[(row * Width) + column] = float.IsNaN(margin) ? Outside : (byte)scale.ClassOf(margin);
            }
        }
    }

    /// <summary>x of its first column on the sheet.</summary>
    public int Left { get; }

    /// <summary>y of its first row on the sheet.</summary>
    public int Top { get; }

    /// <summary>Pixels in a row.</summary>
    public int Width { get; }

    /// <summary>Number of rows.</summary>
    public int Height { get; }

    /// <summary>Index of the class of a pixel, or <see cref="Outside"/>.</summary>
    public byte this[int column, int row] => classes[(row * Width) + column];

    /// <summary>
    /// The field at a place between its points: bilinear, or the nearest point's where a neighbour has no value. Not-a-number
    /// outside the grid.
    /// </summary>
    public static float Sample(Field field, double xSteps, double ySteps)
    {
        FieldGrid grid = field.Grid;
        if (xSteps < 0 || ySteps < 0 || xSteps > grid.Columns - 1 || ySteps > grid.Rows - 1) return float.NaN;

        int column = Math.Min((int)xSteps, Math.Max(grid.Columns - 2, 0)), row = Math.Min((int)ySteps, Math.Max(grid.Rows - 2, 0));
        int right = Math.Min(column + 1, grid.Columns - 1), up = Math.Min(row + 1, grid.Rows - 1);
        float tx = (float)(xSteps - column), ty = (float)(ySteps - row);
        float low = field[column, row] + ((field[right, row] - field[column, row]) * tx);
        float high = field[column, up] + ((field[right, up] - field[column, up]) * tx);
        float value = low + ((high - low) * ty);
        return float.IsNaN(value) ? field[tx < 0.5f ? column : right, ty < 0.5f ? row : up] : value;
    }
}
