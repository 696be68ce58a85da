using System.Xml.Linq;
using MeshSim.Cli.Reporting;

namespace MeshSim.Cli.Tests.Reporting;

public sealed class DeviceRecordChapterTests
{
    private static readonly string Chapter = DeviceRecordChapter.Of(new(Samples.Home, [], new(), [Samples.Answer]));

    [Fact]
    public void Each_device_has_a_table_under_its_network()
    {
        XElement chapter = XElement.Parse($"<div>{Chapter}</div>");

        chapter.Elements("h3").Select(heading => heading.Value).Should().Equal("plugs");
        chapter.Descendants("table").Select(table => table.Descendants("th").First().Value).Should().Equal("stick", "plug", "lamp", "shed-sensor");
        chapter.Descendants("td").Should().Contain(cell => cell.Value == "via plug, margin 12.5 dB");
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
