namespace MeshSim.Drawing.Sheets;

/// <summary>How the plans of several storeys share one sheet: in columns, in the home's order, all at one scale.</summary>
/// <param name="Columns">How many storeys each column holds, from the left.</param>
/// <param name="PixelsPerMetre">The scale.</param>
internal sealed record StoreyPacking(IReadOnlyList<int> Columns, double PixelsPerMetre)
{
    /// <summary>More storeys than this are packed in one column only: the ways to divide them double with each.</summary>
    private const int MostDivided = 10;

    /// <summary>The division into columns that allows the greatest scale; of equal ones the one with the fewest columns.</summary>
    /// <param name="storeys">Their bounds, at least one.</param>
    /// <param name="width">What the columns may take together, pixels.</param>
    /// <param name="height">What a column may take, pixels.</param>
    /// <param name="aroundX">What a plan needs beside itself, pixels.</param>
    /// <param name="aroundY">What a plan needs above and below, pixels.</param>
    public static StoreyPacking Of(IReadOnlyList<PlanBounds> storeys, double width, double height, double aroundX, double aroundY)
    {
        int cuts = storeys.Count > MostDivided ? 0 : storeys.Count - 1;
        return Enumerable.Range(0, 1 << cuts)
            .Select(division => ColumnsOf(division, storeys.Count))
            .OrderBy(columns => columns.Count)
            .Select(columns => new StoreyPacking(columns, ScaleOf(columns, storeys, width, height, aroundX, aroundY)))
            .Aggregate((best, next) => next.PixelsPerMetre > best.PixelsPerMetre ? next : best);
    }

    /// <summary>A bit for each pair of neighbours says whether a new column begins between them.</summary>
    private static List<int> ColumnsOf(int division, int count)
    {
        List<int> columns = [1];
        for (int i = 0; i + 1 < count; i++)
        {
            if ((division >> i & 1) == 1) columns.Add(1);
            else columns[^1]++;
        }

        return columns;
    }

    private static double ScaleOf(List<int> columns, IReadOnlyList<PlanBounds> storeys, double width, double height, double aroundX, double aroundY)
    {
        double widthMetres = 0, scale = double.PositiveInfinity;
        int first = 0;
        foreach (int count in columns)
        {
            PlanBounds[] column = [.. storeys.Skip(first).Take(count)];
            first += count;
            widthMetres += Math.Max(1, column.Max(plan => plan.WidthMetres));
            scale = Math.Min(scale, (height - (count * aroundY)) / Math.Max(1, column.Sum(plan => plan.HeightMetres)));
        }

        return Math.Min(scale, (width - (columns.Count * aroundX)) / widthMetres);
    }
}
