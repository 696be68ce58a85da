using System.Text;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing;
using MeshSim.Files.Importing.Svg;
using MeshSim.Files.Sources;

namespace MeshSim.Files.Tests.Importing.Svg;

public sealed class SvgDrawingTests
{
    private const double Micrometre = 1e-6;

    [Fact]
    public void The_page_gives_the_scale_and_y_runs_up()
    {
        Drawing drawing = Read("""<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="0 0 200 100"><line x1="0" y1="0" x2="200" y2="40"/></svg>""", ratio: 50);

        DrawnLine line = drawing.Shapes.Single().Lines.Single();
        (line.Points[1].XMetres - line.Points[0].XMetres).Should().BeApproximately(5, Micrometre);
        (line.Points[1].YMetres - line.Points[0].YMetres).Should().BeApproximately(-1, Micrometre);
    }

    [Fact]
    public void A_stated_length_gives_the_scale_and_is_no_shape()
    {
        Drawing drawing = Read("""<svg xmlns="http://www.w3.org/2000/svg"><line id="tape" x1="10" y1="5" x2="90" y2="5"/><rect id="r" width="40" height="20"/></svg>""", new("tape", 4));

        drawing.Shapes.Single().Names.Id.Should().Be("r");
        drawing.Shapes.Single().Points.Max(point => point.XMetres).Should().BeApproximately(2, Micrometre);
    }

    [Fact]
    public void Lines_of_a_text_are_words_and_parts_within_a_line_are_not()
    {
        Drawing drawing = Read("""
            <svg xmlns="http://www.w3.org/2000/svg">
              <text id="a" x="0" y="0"><tspan x="0" y="0">living</tspan><tspan x="0" dy="7">room</tspan></text>
              <text id="b" x="0" y="0">hall<tspan style="font-weight:bold">way</tspan></text>
            </svg>
            """);

        drawing.Shapes.Select(shape => shape.Text).Should().Equal("living room", "hallway");
    }

    [Fact]
    public void Groups_uses_symbols_and_drawings_within_the_drawing_nest_their_transforms()
    {
        Drawing drawing = Read("""
            <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="1in" height="1in" viewBox="0 0 96 96">
              <defs><line id="l" x1="0" y1="0" x2="1" y2="0"/><symbol id="s" viewBox="0 0 10 10"><path d="M 0 0 L 10 10"/></symbol></defs>
              <g id="a" transform="translate(10 20)"><g class="c" transform="scale(2)"><use id="u" xlink:href="#l" x="3" y="4" transform="rotate(90)"/></g></g>
              <use href="#s" x="50" y="60" width="20" height="20"/>
              <svg x="5" y="6" width="20" height="10" viewBox="0 0 2 2"><line x1="0" y1="0" x2="2" y2="2"/></svg>
            </svg>
            """);

        InUnits(drawing.Shapes[0]).Should().Equal((2, 26), (2, 28));
        drawing.Shapes[0].Names.Layers.Should().Equal("a", "u");
        drawing.Shapes[0].Names.Classes.Should().Equal("c");
        InUnits(drawing.Shapes[1]).Should().Equal((50, 60), (70, 80));
        InUnits(drawing.Shapes[2]).Should().Equal((10, 6), (20, 16)); // Fitted into the middle: 10 by 10 within 20 by 10.
    }

    [Fact]
    public void What_is_hidden_unknown_or_empty_is_named_with_its_line()
    {
        Drawing drawing = Read("""
            <svg xmlns="http://www.w3.org/2000/svg">
              <g id="old" style="display: none"><rect width="1" height="1"/></g>
              <rect id="h" width="1" height="1" visibility="hidden"/>
              <image id="photo" href="plan.png"/>
              <style>.x { display: none }</style>
              <rect id="flat" width="0" height="4"/>
              <use id="gone" href="#nowhere"/>
              <rect id="cut" width="1" height="1" clip-path="url(#c)"/>
              <g visibility="hidden"><rect id="seen" width="2" height="1" visibility="visible"/></g>
            </svg>
            """);

        drawing.LeftOut.Select(one => FormattableString.Invariant($"{one.Place.Line}: {one.What}: {one.Why}")).Should().Equal(
            "2: g \"old\": it is hidden (display: none)",
            "3: rect \"h\": it is hidden (visibility)",
            "4: image \"photo\": it is neither a line, an area nor a text",
            "5: style: style sheets are not read",
            "6: rect \"flat\": it has no extent",
            "7: use \"gone\": it uses \"#nowhere\", which is not in the drawing",
            "8: rect \"cut\": of it only its clip-path: it is taken whole");
        drawing.Shapes.Select(shape => shape.Names.Id).Should().Equal("cut", "seen");
    }

    [Fact]
    public void Every_mistake_is_said_in_one_run() =>
        Says("""
            <svg xmlns="http://www.w3.org/2000/svg">
              <g transform="spin(3)"/>
              <rect width="wide" height="1"/>
              <path id="p" d="M 0 0 L 1"/>
              <polygon points="0,0 1,1 2"/>
              <g id="loop"><use href="#loop"/></g>
              <svg viewBox="0 0 0 3"/>
            </svg>
            """).Should().Equal(
            "plan.svg(2,3): error: g: its transform \"spin(3)\" makes no sense; write matrix, translate, rotate, scale, skewX or skewY with their numbers, in the attribute transform",
            "plan.svg(3,3): error: rect: width is \"wide\", which is no length; put it right in the drawing",
            "plan.svg(4,3): error: path \"p\": its path data makes no sense from character 10 on; put it right in the drawing",
            "plan.svg(5,3): error: polygon: its points are not pairs of numbers; put it right in the drawing",
            "plan.svg(6,16): error: use: it uses \"#loop\", which uses itself; take one of them away",
            "plan.svg(7,3): error: svg: its viewBox makes no sense; write four numbers, the last two above 0");

    [Theory]
    [InlineData("""<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]><svg xmlns="http://www.w3.org/2000/svg"><text>&b;</text></svg>""")]
    [InlineData("""<!DOCTYPE svg SYSTEM "file:///etc/passwd"><svg xmlns="http://www.w3.org/2000/svg"/>""")]
    [InlineData("""<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]><svg xmlns="http://www.w3.org/2000/svg"><text>&x;</text></svg>""")]
    public void A_document_type_is_refused_and_nothing_is_fetched(string text) => Says(text).Should().ContainSingle().Which.Should().Contain("document types are not read");

    [Theory]
    [InlineData("<svg", "not well-formed")]
    [InlineData("<html/>", "\"html\", not an SVG drawing")]
    public void What_is_no_drawing_is_said(string text, string message) => Says(text).Should().ContainSingle().Which.Should().Contain(message);

    [Fact]
    public void Uses_that_grow_without_end_are_cut_off_and_said()
    {
        StringBuilder text = new("""<svg xmlns="http://www.w3.org/2000/svg"><defs><line id="g0" x1="0" y1="0" x2="1" y2="1"/>""");
        for (int i = 1; i < 8; i++)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"<g id=\"g{i}\">{string.Concat(Enumerable.Repeat($"<use href=\"#g{i - 1}\"/>", 10))}</g>");
        Drawing drawing = Read(text.Append("""</defs><use href="#g7"/></svg>""").ToString());

        drawing.Shapes.Should().HaveCount(SvgWalker.MostShapes);
        drawing.LeftOut.Should().NotBeEmpty();
    }

    private static IEnumerable<(double X, double Y)> InUnits(DrawnShape shape) =>
        shape.Points.Select(point => (Math.Round(point.XMetres * SvgLengths.PerMetre, 6), Math.Round(-point.YMetres * SvgLengths.PerMetre, 6)));

    private static Drawing Read(string text, StatedLength? length = null, double? ratio = null)
    {
        DiagnosticList problems = new(["plan.svg"]);
        Drawing? drawing = SvgDrawing.Read(SourceFile.FromBytes("plan.svg", Encoding.UTF8.GetBytes(text), problems)!, length, ratio, 0.01, problems);
        problems.Sorted(Severity.Error).Should().BeEmpty();
        return drawing!;
    }

    private static string[] Says(string text)
    {
        DiagnosticList problems = new(["plan.svg"]);
        SvgDrawing.Read(SourceFile.FromBytes("plan.svg", Encoding.UTF8.GetBytes(text), problems)!, null, null, 0.01, problems);
        return [.. problems.Sorted(Severity.Error).Select(problem => problem.ToString())];
    }
}
