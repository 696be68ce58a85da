using System.Text.Json;
using MeshSim.Cli.Json;

namespace MeshSim.Cli.Tests.Json;

public sealed class JsonTextTests
{
    [Fact]
    public void One_network_is_an_object_and_several_are_an_array()
    {
        var one = LinksJson.Of(Samples.Coverage);

        Root(JsonText.OfEach([one])).ValueKind.Should().Be(JsonValueKind.Object);
        Root(JsonText.OfEach([one, one])).GetArrayLength().Should().Be(2);
        Root(JsonText.OfEach<LinksJson>([])).GetArrayLength().Should().Be(0);
    }

    [Fact]
    public void Links_have_the_documented_fields_in_order()
    {
        JsonElement links = Root(JsonText.Of(LinksJson.Of(Samples.Coverage)));

        Names(links).Should().Equal("home", "model", "network", "fittedToReadings", "links", "air");
        Names(links.GetProperty("links")[0]).Should().Equal(
            "from", "to", "distanceMetres", "pathLossDb", "receivedDbm", "reverseDbm", "marginDb", "uncertainty", "holds", "delivery", "reverseDelivery", "atFrom", "atTo", "losses");
        Names(links.GetProperty("air")).Should().Equal("channel", "bestChannel", "channels", "coordinatorNoiseRiseDb", "duty");
        Names(links.GetProperty("links")[0].GetProperty("losses")[1]).Should().Equal(
            "kind", "name", "construction", "angleDegrees", "lossDb", "isExtrapolated");
        links.GetProperty("model").GetString().Should().Be("log-distance");
        links.GetProperty("links")[0].GetProperty("losses")[1].GetProperty("kind").GetString().Should().Be("wall");
    }

    [Fact]
    public void Routes_say_what_an_unreachable_device_lacks()
    {
        JsonElement routes = Root(JsonText.Of(RoutesJson.Of(Samples.Coverage)));

        routes.GetProperty("unreachable").GetInt32().Should().Be(1);
        routes.GetProperty("devices")[1].GetProperty("route").EnumerateArray().Select(id => id.GetString()).Should().Equal("lamp", "plug", "stick");
        JsonElement shed = routes.GetProperty("devices")[2];
        shed.GetProperty("route").ValueKind.Should().Be(JsonValueKind.Null);
        shed.GetProperty("nearest").GetString().Should().Be("lamp");
        shed.GetProperty("shortfallDb").GetDouble().Should().Be(3.2);
    }

    [Fact]
    public void Repeaters_say_where_they_go_and_whom_they_serve()
    {
        JsonElement repeater = Root(JsonText.Of(RepeatersJson.Of(Samples.Coverage, Samples.Placement))).GetProperty("repeaters")[0];

        repeater.GetProperty("outlet").GetString().Should().Be("shed-wall");
        repeater.GetProperty("xMetres").GetDouble().Should().Be(4.1);
        repeater.GetProperty("serves")[0].GetString().Should().Be("shed-sensor");
        repeater.GetProperty("downlinkMarginDb").GetDouble().Should().Be(21.25);
    }

    [Theory]
    [InlineData(0.1 + 0.2, "0.3")]
    [InlineData(1e21, "1E+21")]
    [InlineData(double.PositiveInfinity, "null")]
    [InlineData(double.NaN, "null")]
    [InlineData(61.2345678901234, "61.2345678901")]
    public void A_figure_has_twelve_digits_and_what_is_no_number_is_null(double value, string expected) => JsonText.Of(value).Should().Be(expected + "\n");

    private static JsonElement Root(string json) => JsonDocument.Parse(json).RootElement;

    private static IEnumerable<string> Names(JsonElement element) => element.EnumerateObject().Select(property => property.Name);
}
