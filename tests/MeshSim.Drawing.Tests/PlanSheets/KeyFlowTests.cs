using MeshSim.Drawing.Legends;
using MeshSim.Drawing.PlanSheets;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Tests.PlanSheets;

public sealed class KeyFlowTests
{
    private static readonly PixelBox Column = new(0, 0, 100, 120);

    [Fact]
    public void Rows_go_on_in_the_next_column_with_their_head()
    {
        var rows = new Queue<ColumnRow>([new KeyHeadRow(), .. Enumerable.Range(1, 12).Select(Device)]);

        var columns = KeyFlow.Fill(rows, [Column, Column with { Left = 110, Right = 210 }]);

        columns.Should().HaveCount(2);
        columns.Should().OnlyContain(column => column.Rows[0] is KeyHeadRow);
        columns.Should().OnlyContain(column => column.Rows.Sum(row => row.HeightPixels) <= column.Box.Height);
        columns.SelectMany(column => column.Rows).OfType<KeyDeviceRow>().Select(row => row.Number)
            .Concat(rows.Cast<KeyDeviceRow>().Select(row => row.Number)).Should().Equal(Enumerable.Range(1, 12));
    }

    [Fact]
    public void A_heading_stays_with_what_it_heads()
    {
        // The heading of the second network would fit as the last row of the column, its first device would not.
        var rows = new Queue<ColumnRow>([new KeyHeadRow(), Device(1), Device(2), Device(3), new KeyNetworkRow("other", 0), Device(4)]);

        var columns = KeyFlow.Fill(rows, [Column]);

        columns[0].Rows.Should().NotContain(row => row is KeyNetworkRow);
        rows.Should().HaveCount(2);
    }

    [Fact]
    public void A_row_taller_than_the_column_is_placed_all_the_same()
    {
        var tall = new KeyDeviceRow(1, [[.. Enumerable.Repeat("line", 20)]]);
        var rows = new Queue<ColumnRow>([tall, Device(2)]);

        KeyFlow.Fill(rows, [Column])[0].Rows.Should().Contain(tall);
        rows.Should().HaveCount(1);
    }

    private static ColumnRow Device(int number) => new KeyDeviceRow(number, [["a"], ["b"]]);
}
