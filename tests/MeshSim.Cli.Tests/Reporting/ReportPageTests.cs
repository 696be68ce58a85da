using System.Text.RegularExpressions;
using System.Xml.Linq;
using MeshSim.Cli.Reporting;

namespace MeshSim.Cli.Tests.Reporting;

public sealed partial class ReportPageTests
{
    private static readonly string Page = ReportPage.Of(new(
        Samples.Home, ["home.yaml(3,1): notice: an edge was moved"], new(), [Samples.Answer]));

    [Fact]
    public void The_page_says_what_was_approved() => Approval.Verify(Page, "report.html");

    [Fact]
    public void The_answer_comes_first_and_the_cautions_come_last()
    {
        string[] expected = ["answer", "maps", "routes", "routers", "rehearsals", "links", "air", "outlets", "assumptions", "cautions"];

        SectionId().Matches(Page).Select(match => match.Groups["id"].Value).Should().Equal(expected);
        Page.Should().Contain("Buy 1 mains repeater").And.Contain("1 of 3 devices has no reliable way to stick");
    }

    [Fact]
    public void What_is_at_risk_stands_with_what_to_do() =>
        Page.Should().Contain("<li>plugs: bedtime must hold and drops lamp: plug carries it; replace plug by an always-on device, or bypass the switch.</li>");

    [Fact]
    public void Nothing_comes_from_elsewhere_and_nothing_runs() =>
        Page.Should().NotContainAny("http:", "https:", "<script", "<link", "@import", "url(", "onclick");

    [Fact]
    public void Names_of_the_home_are_text_and_never_markup()
    {
        Page.Should().Contain("&lt;shed&gt; &amp; co").And.NotContain("<shed>");
        XDocument document = WellFormed();

        document.Descendants("td").Should().Contain(cell => cell.Value == "ground, <shed> & co");
    }

    [Fact]
    public void Every_picture_is_beside_the_page_and_has_words_for_those_who_do_not_see_it()
    {
        XElement[] images = [.. WellFormed().Descendants("img")];

        images.Select(image => image.Attribute("src")!.Value).Should().Equal("margin_plugs_ground.png");
        images.Should().OnlyContain(image => image.Attribute("alt")!.Value.Length > 0);
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

    [GeneratedRegex("<section id=\"(?<id>[a-z]+)\">", RegexOptions.NonBacktracking)]
    private static partial Regex SectionId();

    [GeneratedRegex("<(?<tag>(meta|img)\\b[^>]*)>", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex VoidElement();
}
