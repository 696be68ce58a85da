using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Tables;

public sealed class ColumnNamesTests
{
    [Fact]
    public void Columns_go_by_the_names_of_a_spreadsheet_and_its_others_are_left_out()
    {
        using TemporaryFolder plain = new TemporaryFolder().WithSample();
        using TemporaryFolder spreadsheet = new TemporaryFolder().WithSample(
            devices: text =>
                string.Join('\n', text.TrimEnd('\n').Split('\n').Select((line, i) => line + (i == 0 ? ",Price" : ",9.99")))
                    .Replace("id,name", "Kennung,Was ist es", StringComparison.Ordinal) + "\n");
        File.WriteAllText(spreadsheet.File("columns.yaml"), "devices.csv: { id: kennung, name: was ist es, ignore: [price] }\n");

        spreadsheet.Says().Should().BeEmpty();
        spreadsheet.Read().Home!.Devices.Should().Equal(plain.Read().Home!.Devices);
    }

    [Fact]
    public void Every_mistake_is_said_with_its_place()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        File.WriteAllText(folder.File("columns.yaml"), "devices.csv:\n  id: ID 1\n  name: id1\n  colour: farbe\ndevice.csv: {}\n");

        folder.Says().Should().Equal(
            "columns.yaml(3,9): error: the column \"id1\" cannot be two columns; it is \"id\" already",
            "columns.yaml(4,3): error: a table has no key \"colour\"; none of the 19 keys has a similar name",
            "columns.yaml(5,1): error: a list of column names has no key \"device.csv\"; did you mean \"devices.csv\"?");
    }
}
