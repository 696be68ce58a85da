using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Palettes;
using MeshSim.Propagation.Fields;

namespace MeshSim.Drawing.Tests.Scenes;

/// <summary>Fields over the upper storey of the flat that are the same everywhere, and what a map of their difference shows.</summary>
internal static class UniformFields
{
    /// <summary>Two fields.</summary>
    public static (Field First, Field Second) Of(float first, float second) => (Filled(first), Filled(second));

    /// <summary>The ranges of the classes that a map has anywhere inside the rooms.</summary>
    public static IEnumerable<string> RangesOn(MapContents map)
    {
        byte[] classes =
        [
            .. from row in Enumerable.Range(0, map.Raster.Height)
               from column in Enumerable.Range(0, map.Raster.Width)
               select map.Raster[column, row],
        ];
        return classes.Where(index => index != MarginRaster.Outside).Distinct().Select(index => DifferenceScale.RangeOf(map.Scale.Classes[index]));
    }

    private static Field Filled(float value)
    {
        FieldGrid grid = SyntheticCoverage.Map(TwoStoreyFlat.Upper).Margin.Grid;
        return new(grid, [.. Enumerable.Repeat(value, grid.Count)]);
    }
}
