using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Tables;

/// <summary>Tables as spreadsheets save them.</summary>
public sealed class CsvTableTests
{
    [Theory]
    [InlineData(";", "")]
    [InlineData("\t", "")]
    [InlineData(";", "\uFEFF")]
    [InlineData("\t", "\uFEFF")]
    public void Semicolons_tabs_and_a_byte_order_mark_make_no_difference(string separator, string mark)
    {
        using TemporaryFolder plain = new TemporaryFolder().WithSample();
        using TemporaryFolder spreadsheet = new TemporaryFolder().WithSample(devices: text => mark + Separated(text, separator));

        spreadsheet.Says().Should().BeEmpty();
        spreadsheet.Read().Home!.Devices.Should().Equal(plain.Read().Home!.Devices);
    }

    [Fact]
    public void A_decimal_comma_is_read_where_no_comma_separates_and_said_once()
    {
        using TemporaryFolder plain = new TemporaryFolder().WithSample();
        using TemporaryFolder spreadsheet = new TemporaryFolder().WithSample(devices: text => Separated(text, ";").Replace(".", ",", StringComparison.Ordinal));

        spreadsheet.Says().Should().ContainSingle().Which.Should().Match(
            "devices.csv(2,*): notice: \"*,*\" has a decimal comma and is read as *.*; so is every such number of this file, whose fields are not separated "
                + "by commas");
        spreadsheet.Read().Home!.Devices.Select(device => (device.Point, device.HeightMetres)).Should()
            .Equal(plain.Read().Home!.Devices.Select(device => (device.Point, device.HeightMetres)));
    }

    [Theory]
    [InlineData("1.234,5")]
    [InlineData("1,2,3")]
    public void What_could_be_two_numbers_is_none(string number)
    {
        using TemporaryFolder spreadsheet = new TemporaryFolder().WithSample(outlets: _ => $"id;storey;x;y;height\no1;ground;{number};1;1\n");

        spreadsheet.Says().Should().ContainSingle(line => line.StartsWith("outlets.csv(2,11): error: x: ", StringComparison.Ordinal));
    }

    [Fact]
    public void Between_commas_a_decimal_comma_stays_an_error()
    {
        using TemporaryFolder spreadsheet = new TemporaryFolder().WithSample(outlets: _ => "id,storey,x,y,height\no1,ground,\"1,5\",1,1\n");

        spreadsheet.Says().Should().Contain("outlets.csv(2,11): error: x: \"1,5\" has a decimal comma; use a point: 1.5");
    }

    [Fact]
    public void Names_of_columns_differ_by_neither_capitals_nor_spaces()
    {
        using TemporaryFolder plain = new TemporaryFolder().WithSample();
        using TemporaryFolder spreadsheet = new TemporaryFolder().WithSample(
            devices: text => text.Replace("switched_by", " Switched By ", StringComparison.Ordinal).Replace("tx_dbm", "TX dBm", StringComparison.Ordinal));

        spreadsheet.Says().Should().BeEmpty();
        spreadsheet.Read().Home!.Devices.Should().Equal(plain.Read().Home!.Devices);
    }

    private static string Separated(string text, string separator) =>
        string.Concat(text.Split('"').Select((part, i) => i % 2 == 0 ? part.Replace(",", separator, StringComparison.Ordinal) : $"\"{part}\""));
}
