using System.Collections.Immutable;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>Rows of the key in one column.</summary>
/// <param name="Box">The column.</param>
/// <param name="Rows">From above.</param>
internal sealed record KeyColumn(PixelBox Box, ImmutableArray<ColumnRow> Rows);

/// <summary>Fills columns with the rows of a key, one after the other.</summary>
internal static class KeyFlow
{
    /// <summary>Fills the columns of one sheet.</summary>
    /// <param name="rows">The rows; what was placed is taken out.</param>
    /// <param name="boxes">The columns.</param>
    public static ImmutableArray<KeyColumn> Fill(Queue<ColumnRow> rows, ImmutableArray<PixelBox> boxes)
    {
        var columns = ImmutableArray.CreateBuilder<KeyColumn>();
        foreach (PixelBox box in boxes)
            if (rows.Count > 0) columns.Add(new(box, FillOne(rows, box.Height)));
        return columns.ToImmutable();
    }

    private static ImmutableArray<ColumnRow> FillOne(Queue<ColumnRow> rows, float height)
    {
        List<ColumnRow> placed = [];
        if (rows.Peek() is KeyDeviceRow or KeyNetworkRow) placed.Add(new KeyHeadRow());
        float left = height - placed.Sum(row => row.HeightPixels);
        while (rows.TryPeek(out ColumnRow? row))
        {
            float needed = row.HeightPixels + (IsHeading(row) ? rows.ElementAtOrDefault(1)?.HeightPixels ?? 0 : 0);

            // A row taller than any column goes in all the same: nothing else would ever let it.
            if (needed > left && placed.Exists(one => one is not KeyHeadRow)) break;
            placed.Add(rows.Dequeue());
            left -= row.HeightPixels;
        }

        return [.. placed];
    }

    private static bool IsHeading(ColumnRow row) => row is HeadingRow or KeyNetworkRow or KeyHeadRow;
}
