using System.Text.RegularExpressions;
using System.Xml.Linq;
using MeshSim.Cli.Reporting;
using MeshSim.Placement;

namespace MeshSim.Cli.Tests.Reporting;

public sealed partial class ReportPageTests
{
    private static readonly string Page = ReportPage.Of(new(
        Samples.Home, ["home.yaml(3,1): notice: an edge was moved"], new(), [Samples.Answer]));

    [Fact]
    public void The_page_says_what_was_approved() =>
        Approval.Verify(Picture().Replace(Page, "<svg>(a picture)</svg>"), "report.html");

    [Fact]
    public void The_answer_comes_first_and_the_cautions_come_last()
    {
        string[] expected = ["answer", "reading", "network-1", "rooms", "record", "outlets", "assumptions", "cautions"];

        SectionId().Matches(Page).Select(match => match.Groups["id"].Value).Should().Equal(expected);
        Page.Should().Contain("Buy 1 mains repeater").And.Contain("1 of 3 devices has no reliable way to stick");
    }

    [Fact]
    public void What_is_at_risk_stands_with_what_to_do() =>
        Page.Should().Contain("<li>plugs: bedtime must hold and drops lamp: plug carries it; replace plug by an always-on device, or bypass the switch.</li>");

    [Fact]
    public void What_must_stay_powered_stands_with_what_to_buy()
    {
        KeptDevice kept = new(new("lamp"), "hall switch", [new(new("bedtime", null), [new("shed-sensor")])], new(8), new(9));
        ReportContent content = new(Samples.Home, [], new(), [Samples.Answer with { Placement = Samples.Placement with { Repeaters = [], KeptOn = [kept] } }]);

        ReportPage.Of(content).Should().Contain("<li>plugs: lamp (past hall switch: work for an electrician), for shed-sensor in bedtime</li>")
            .And.Contain("<caption>Devices to keep powered</caption>");
    }

    [Fact]
    public void Nothing_comes_from_elsewhere() =>
        Page.Should().NotContainAny("http:", "https:", "<link", "@import", "onclick", "url(h", "url(\"", "fetch(", "src=");

    [Fact]
    public void The_answer_says_what_to_buy_what_is_at_risk_and_what_cannot_be_helped() =>
        WellFormed().Descendants("section").First().Descendants("h3").Select(heading => heading.Value)
            .Should().Equal("What to buy and where to put it", "What is at risk tonight", "What that leaves over");

    [Fact]
    public void Headings_come_in_order_without_leaving_out_a_level()
    {
        int[] levels = [.. WellFormed().Descendants().Where(element => element.Name.LocalName is "h1" or "h2" or "h3" or "h4").Select(element => element.Name.LocalName[1] - '0')];

        levels[0].Should().Be(1);
        levels.Count(level => level == 1).Should().Be(1);
        levels.Zip(levels.Skip(1)).Should().OnlyContain(pair => pair.Second <= pair.First + 1);
    }

    [Fact]
    public void Every_table_has_a_caption_and_headings_with_a_scope()
    {
        XElement[] tables = [.. WellFormed().Descendants("table")];

        tables.Should().HaveCountGreaterThan(5);
        tables.Should().OnlyContain(table => table.Element("caption")!.Value.Length > 0);
        tables.Descendants("th").Should().OnlyContain(heading => heading.Attribute("scope") != null);
        tables.Should().OnlyContain(table => table.Element("tbody")!.Elements("tr").All(row => row.Elements("th").Count() == 1));
    }

    [Fact]
    public void No_two_elements_share_an_id() =>
        WellFormed().Descendants().Attributes("id").Select(id => id.Value).Should().OnlyHaveUniqueItems();

    [Fact]
    public void Names_of_the_home_are_text_and_never_markup()
    {
        Page.Should().Contain("&lt;shed&gt; &amp; co").And.NotContain("<shed>");
        XDocument document = WellFormed();

        document.Descendants("td").Should().Contain(cell => cell.Value == "ground, <shed> & co");
    }

    [Fact]
    public void Every_picture_is_in_the_page_and_has_words_for_those_who_do_not_see_it()
    {
        XDocument document = WellFormed();
        XElement[] pictures = [.. document.Descendants("svg")];

        pictures.Should().HaveCount(2, "there are the signs and one map");
        foreach (XElement picture in pictures)
        {
            picture.Attribute("role")!.Value.Should().Be("img");
            string title = picture.Attribute("aria-labelledby")!.Value;
            document.Descendants("title").Single(element => element.Attribute("id")?.Value == title).Value.Should().StartWith("Sample: ");
        }
    }

    [Fact]
    public void Every_link_of_the_contents_leads_to_a_section()
    {
        XDocument document = WellFormed();

        document.Descendants("nav").Descendants("a").Select(link => link.Attribute("href")!.Value)
            .Should().Equal(document.Descendants("section").Select(section => "#" + section.Attribute("id")!.Value));
    }

    [Theory]
    [InlineData("licensed electricians")]
    [InlineData("prove it dead")]
    [InlineData("Alarms must not depend on this mesh")]
    public void The_cautions_are_there(string caution) => Page.Should().Contain(caution);

    /// <summary>The page as XML: void elements closed, the document type left out. It fails on any tag that is not balanced.</summary>
    private static XDocument WellFormed() =>
        XDocument.Parse(VoidElement().Replace(Page.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal), "<${tag}/>"));

    /// <summary>The tests of the drawing look at pictures.</summary>
    [GeneratedRegex("<svg.*?</svg>", RegexOptions.NonBacktracking | RegexOptions.Singleline)]
    private static partial Regex Picture();

    [GeneratedRegex("<section id=\"(?<id>[a-z0-9-]+)\">", RegexOptions.NonBacktracking)]
    private static partial Regex SectionId();

    [GeneratedRegex("<(?<tag>meta\\b[^>]*)>", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex VoidElement();
}
