using System.Globalization;
using System.Text;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;
using MeshSim.Studies;

namespace MeshSim.Cli.Outputs;

/// <summary>The values of maps as CSV, one line a point.</summary>
internal static class GridCsv
{
    /// <summary>
    /// The maps one after the other, each row by row from its lower left: storey, place in metres, margin in hundredths of
    /// a dB. Points without a value are left out.
    /// </summary>
    public static string Of(IEnumerable<MarginMap> maps)
    {
        var csv = new StringBuilder("storey,x,y,valueDb\n");
        foreach (MarginMap map in maps) Append(csv, CsvText.Field(map.Storey.Value), map.Margin);
        return csv.ToString();
    }

    private static void Append(StringBuilder csv, string storey, Field field)
    {
        for (int row = 0; row < field.Grid.Rows; row++)
        {
            for (int column = 0; column < field.Grid.Columns; column++)
            {
                if (!float.IsFinite(field[column, row])) continue;
                PlanPoint point = field.Grid.At(column, row).Plan;
                csv.Append(CultureInfo.InvariantCulture, $"{storey},{point.XMetres:0.####},{point.YMetres:0.####},{field[column, row]:0.00}\n");
            }
        }
    }
}
