using System.Collections.Immutable;
using System.Text;
using System.Xml.Linq;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Tests.Golden;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.Studies;

namespace MeshSim.Drawing.Tests;

public sealed class HousePictureTests
{
    private static readonly ImmutableArray<MarginMap> Maps = [SyntheticCoverage.Map(TwoStoreyFlat.Ground), SyntheticCoverage.Map(TwoStoreyFlat.Upper)];

    [Fact]
    public void Both_storeys_look_like_the_stored_picture() =>
        PictureComparison.ShouldLookLike(Draw(PictureFormat.Png).File, "two-storey-flat-house.png");

    [Fact]
    public void Both_storeys_are_on_one_sheet() => Draw(PictureFormat.Png).Storeys.Should().Equal(TwoStoreyFlat.Ground, TwoStoreyFlat.Upper);

    [Theory]
    [InlineData(PictureFormat.Png)]
    [InlineData(PictureFormat.Svg)]
    [InlineData(PictureFormat.Pdf)]
    public void The_same_input_gives_the_same_bytes(PictureFormat format) => Draw(format).File.Should().Equal(Draw(format).File);

    [Fact]
    public void An_svg_picture_has_every_name_as_text_and_a_group_for_each_layer()
    {
        string svg = Encoding.UTF8.GetString(Draw(PictureFormat.Svg).File);

        SvgText.Of(svg).Select(text => text.Text).Should().Contain(["living room", "study", "hall-lamp", "ground", "upper", "study-thermo: no reliable way"]);
        XDocument.Parse(svg).Descendants(SvgText.Svg + "g").Attributes("class").Select(name => name.Value).Distinct()
            .Should().Contain(["heat", "hatch", "contour", "wall", "route", "label", "device"]);
    }

    [Fact]
    public void Text_lies_on_the_sheet_and_no_text_covers_another()
    {
        IReadOnlyList<(string Text, PixelBox Box)> texts = SvgText.Of(Encoding.UTF8.GetString(Draw(PictureFormat.Svg).File));

        for (int i = 0; i < texts.Count; i++)
        {
            (texts[i].Box.Left >= 0 && texts[i].Box.Right <= HouseLayout.Width).Should().BeTrue("\"{0}\" lies on the sheet", texts[i].Text);
            for (int j = 0; j < i; j++)
                texts[i].Box.Overlaps(texts[j].Box).Should().BeFalse("\"{0}\" and \"{1}\" are apart", texts[i].Text, texts[j].Text);
        }
    }

    [Fact]
    public void A_pdf_picture_is_one_page_of_the_size_of_the_sheet()
    {
        using var ink = new Ink();
        PixelBox sheet = HousePicture.ContentsOf(SyntheticCoverage.Coverage, Maps, SyntheticCoverage.Repeaters, ink).Single()[0].Layout.Sheet;

        string pdf = Encoding.Latin1.GetString(Draw(PictureFormat.Pdf).File);

        const double pointsPerPixel = 0.75; // 72 points and 96 pixels to the inch
        pdf.Should().StartWith("%PDF-").And.Contain(FormattableString.Invariant($"/MediaBox [0 0 {sheet.Width * pointsPerPixel:0.##} {sheet.Height * pointsPerPixel:0.##}]"));
        pdf.Should().NotContain("CreationDate", "the same home makes the same bytes on any day");
    }

    [Fact]
    public void Pictures_inside_one_page_share_no_id()
    {
        string[] ids =
        [
            .. new[] { "first", "second" }
                .SelectMany(id => HousePicture.Inline(SyntheticCoverage.Coverage, Maps, SyntheticCoverage.Repeaters, id))
                .Append(LegendPicture.Inline(TwoStoreyFlat.Home, "signs"))
                .SelectMany(svg => XElement.Parse(svg).DescendantsAndSelf().Attributes("id").Select(id => id.Value)),
        ];

        ids.Should().OnlyHaveUniqueItems().And.HaveCountGreaterThan(3);
    }

    [Fact]
    public void Labels_of_the_small_maps_keep_their_places_apart()
    {
        using var ink = new Ink();
        foreach (MapContents map in HousePicture.ContentsOf(SyntheticCoverage.Coverage, Maps, SyntheticCoverage.Repeaters, ink).Single())
        {
            foreach (PlacedLabel label in map.Labels)
            {
                map.Layout.Map.Holds(label.Box).Should().BeTrue("{0} stays on its map", label.Request.Key);
                map.Labels.Should().NotContain(other => other != label && other.Box.Overlaps(label.Box), "{0} covers no label", label.Request.Key);
                map.Marks.All.Should().NotContain(mark => mark.Box.Overlaps(label.Box), "{0} covers no symbol", label.Request.Key);
            }
        }
    }

    [Fact]
    public void A_map_of_another_network_is_refused()
    {
        Action draw = () => HousePicture.Draw(SyntheticCoverage.Coverage, [Maps[0] with { Network = new("lighting") }], null, PictureFormat.Png);

        draw.Should().Throw<ArgumentException>().WithMessage("*\"lighting\", not \"plugs\"*");
    }

    private static HouseSheet Draw(PictureFormat format) =>
        HousePicture.Draw(SyntheticCoverage.Coverage, Maps, SyntheticCoverage.Repeaters, format).Should().ContainSingle().Which;
}
