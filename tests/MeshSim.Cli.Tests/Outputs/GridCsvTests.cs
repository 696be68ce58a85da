using MeshSim.Cli.Outputs;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Outputs;

public sealed class GridCsvTests
{
    [Fact]
    public void Each_point_with_a_value_is_a_line_lowest_row_first() =>
        GridCsv.Of([Samples.Map]).Should().Be("storey,x,y,valueDb\nground,-0.5,0,10.12\nground,0,0,-3.50\nground,0,0.5,0.00\n");

    [Fact]
    public void A_storey_with_a_comma_is_quoted()
    {
        MarginMap map = Samples.Map with { Storey = new("rear, \"upper\"") };

        GridCsv.Of([map]).Split('\n')[1].Should().Be("\"rear, \"\"upper\"\"\",-0.5,0,10.12");
    }
}
