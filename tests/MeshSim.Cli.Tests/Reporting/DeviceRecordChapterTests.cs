using System.Xml.Linq;
using MeshSim.Cli.Reporting;

namespace MeshSim.Cli.Tests.Reporting;

public sealed class DeviceRecordChapterTests
{
    private static readonly string Chapter = DeviceRecordChapter.Of(new(Samples.Home, [], new(), [Samples.Answer]), new HtmlTables());

    [Fact]
    public void Each_device_has_a_row_under_its_network()
    {
        XElement chapter = XElement.Parse($"<div>{Chapter}</div>");

        chapter.Elements("h3").First().Value.Should().Be("plugs");
        chapter.Descendants("tbody").Elements("tr").Select(row => row.Elements().First().Value).Should().Equal("stick: stick", "plug: plug", "lamp: lamp", "shed-sensor: shed-sensor");
        chapter.Descendants("td").Should().Contain(cell => cell.Value == "via plug; second: NONE");
    }

    [Fact]
    public void Every_row_says_how_its_device_comes_out()
    {
        XElement chapter = XElement.Parse($"<div>{Chapter}</div>");
        string[] told = [.. chapter.Elements("ul").Last().Elements("li").Select(item => item.Value.Split(':')[0])];

        told.Should().OnlyHaveUniqueItems().And.NotBeEmpty();
        chapter.Descendants("td").Where(cell => cell.Attribute("data-heading")!.Value == "Out by").Select(cell => cell.Value)
            .Should().HaveCount(4).And.OnlyContain(name => told.Contains(name));
    }

    [Fact]
    public void Cautions_come_before_any_device()
    {
        Chapter.Should().Contain("prove dead").And.Contain("alarms must not depend on this mesh");
        Chapter.IndexOf("prove dead", StringComparison.Ordinal).Should().BeLessThan(Chapter.IndexOf("<table", StringComparison.Ordinal));
    }

    [Fact]
    public void Names_are_text_and_never_markup() => Chapter.Should().Contain("&lt;shed&gt; &amp; co").And.NotContain("<shed>");
}
