using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace MeshSim.Cli.Tests.Reporting;

/// <summary>The report on the largest shipped home, as a browser shows and prints it; skipped where there is no browser.</summary>
public sealed partial class ReportInBrowserTests(QuayTerraceReport report) : IClassFixture<QuayTerraceReport>
{
    /// <summary>Width of a small phone, CSS pixels.</summary>
    private const int Phone = 360;

    /// <summary>A page of A4 less its margins of 15 mm, CSS pixels.</summary>
    private const int Paper = (int)(180 / 25.4 * 96);

    /// <summary>Paper that somebody still reads.</summary>
    private const int MostPages = 20;

    [Fact]
    public async Task No_error_is_told_and_every_table_can_be_sorted()
    {
        (JsonElement answer, string[] errors) = await Ask(1280, """
            (() => {
              const heads = [...view.document.querySelectorAll("thead th")];
              for (const head of heads) { head.querySelector("button").click(); head.querySelector("button").click(); }
              const rows = [...view.document.querySelector("#network-1 table tbody").rows].length;
              return { heads: heads.length, sorted: view.document.querySelectorAll("th[aria-sort=descending]").length, tables: view.document.querySelectorAll("thead").length, rows };
            })()
            """);

        errors.Should().BeEmpty();
        answer.GetProperty("heads").GetInt32().Should().BeGreaterThan(50);
        answer.GetProperty("sorted").GetInt32().Should().Be(answer.GetProperty("tables").GetInt32(), "the last column asked for is marked in each table");
        answer.GetProperty("rows").GetInt32().Should().BeGreaterThan(0);
    }

    [Fact]
    public async Task A_layer_can_be_hidden_and_shown()
    {
        (JsonElement answer, string[] errors) = await Ask(1280, """
            (() => {
              const figure = view.document.querySelector("#network-1 figure"), box = figure.querySelector("input");
              const seen = () => view.getComputedStyle(figure.querySelector("g.heat")).display !== "none";
              const before = seen(); box.click(); const hidden = seen(); box.click();
              return [before, hidden, seen()];
            })()
            """);

        errors.Should().BeEmpty();
        answer.EnumerateArray().Select(shown => shown.GetBoolean()).Should().Equal(true, false, true);
    }

    [Theory]
    [InlineData(Phone)]
    [InlineData(768)]
    [InlineData(1280)]
    public async Task Nothing_is_wider_than_the_screen(int widthPixels)
    {
        (JsonElement answer, _) = await Ask(widthPixels, """
            ({ wide: view.document.documentElement.scrollWidth,
               out: [...view.document.querySelectorAll("table, td, tbody th, p, li, figure, figcaption, h1, h2, h3")]
                 .filter(e => e.getBoundingClientRect().right > view.innerWidth + 0.5).map(e => e.outerHTML.slice(0, 80)) })
            """);

        answer.GetProperty("wide").GetInt32().Should().Be(widthPixels);
        answer.GetProperty("out").EnumerateArray().Select(element => element.GetString()).Should().BeEmpty();
    }

    [Fact]
    public async Task On_a_phone_a_row_is_a_card_whose_lines_say_what_they_are()
    {
        (JsonElement answer, _) = await Ask(Phone, """
            (() => {
              const cell = view.document.querySelector("#network-1 table td:not(:empty)");
              return { display: view.getComputedStyle(cell).display, before: view.getComputedStyle(cell, "::before").content, heading: cell.dataset.heading };
            })()
            """);

        answer.GetProperty("display").GetString().Should().Be("block");
        answer.GetProperty("before").GetString().Should().Contain(answer.GetProperty("heading").GetString());
    }

    [Fact]
    public async Task On_paper_no_table_and_no_picture_is_clipped()
    {
        // The rules for paper take effect on a screen as wide as the paper, where places can be measured.
        string onPaper = report.Page.Replace("@media print", "@media all", StringComparison.Ordinal).Replace("@media screen", "@media not all", StringComparison.Ordinal);

        (JsonElement answer, _) = await Found().Ask(onPaper, Paper, """
            ({ sheets: [...view.document.querySelectorAll("table, figure, svg")].length,
               out: [...view.document.querySelectorAll("table, td, th, svg, .scroll")]
                 .filter(e => e.getBoundingClientRect().right > view.innerWidth + 0.5
                   || (e.tagName !== "svg" && e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0))
                 .map(e => e.outerHTML.slice(0, 80)) })
            """);

        answer.GetProperty("sheets").GetInt32().Should().BeGreaterThan(20);
        answer.GetProperty("out").EnumerateArray().Select(element => element.GetString()).Should().BeEmpty();
    }

    [Fact]
    public async Task It_prints_on_few_pages_of_A4()
    {
        string pdf = Encoding.Latin1.GetString(await Found().Print(report.Page));

        (double Width, double Height)[] pages = [.. MediaBox().Matches(pdf).Select(match => (Number(match.Groups["width"]), Number(match.Groups["height"])))];
        pages.Should().HaveCountGreaterThan(5).And.HaveCountLessThanOrEqualTo(MostPages);
        const double points = 72 / 25.4, rounding = 0.5; // a browser lays out in whole pixels: 0.75 points
        foreach ((double width, double height) in pages)
        {
            width.Should().BeApproximately(210 * points, rounding);
            height.Should().BeApproximately(297 * points, rounding);
        }
    }

    private static double Number(Group group) => double.Parse(group.ValueSpan, CultureInfo.InvariantCulture);

    private Task<(JsonElement Answer, string[] Errors)> Ask(int widthPixels, string question) => Found().Ask(report.Page, widthPixels, question);

    private static Browser Found()
    {
        if (Browser.Found is null) Assert.Skip(Browser.Absent);
        return Browser.Found;
    }

    [GeneratedRegex(@"/MediaBox \[0 0 (?<width>[0-9.]+) (?<height>[0-9.]+)\]", RegexOptions.NonBacktracking)]
    private static partial Regex MediaBox();
}

/// <summary>The report on Quay Terrace, made once, and only where a browser can show it.</summary>
public sealed class QuayTerraceReport : IAsyncLifetime
{
    /// <summary>The page.</summary>
    public string Page { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        if (Browser.Found is null) return;
        using var folder = new TemporaryFolder();
        await Run.Of("report", Path.Combine(Run.Root, "floorplans", "quay-terrace"), "--out", folder["page.html"]);
        Page = await File.ReadAllTextAsync(folder["page.html"], TestContext.Current.CancellationToken);
    }

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;
}
