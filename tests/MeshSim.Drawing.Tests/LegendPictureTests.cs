using System.Xml.Linq;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Tests.Scenes;

namespace MeshSim.Drawing.Tests;

public sealed class LegendPictureTests
{
    private static readonly string Legend = LegendPicture.Inline(TwoStoreyFlat.Home, "signs");

    [Fact]
    public void It_explains_every_sign_symbol_role_and_wall_of_the_home() =>
        SvgText.Of(Legend).Select(text => text.Text).Should().Contain(["design margin", "recommended repeater", "no reliable way", "coordinator", "end device", "brick-half, cavity-brick"])
            .And.Contain(TwoStoreyFlat.Home.Devices.Select(SymbolShapes.Of).Distinct().Select(SymbolShapes.Meaning));

    [Fact]
    public void Its_texts_lie_on_the_sheet_apart_from_each_other()
    {
        IReadOnlyList<(string Text, PixelBox Box)> texts = SvgText.Of(Legend);

        for (int i = 0; i < texts.Count; i++)
        {
            texts[i].Box.Right.Should().BeLessThanOrEqualTo(HouseLayout.Width, texts[i].Text);
            for (int j = 0; j < i; j++)
                texts[i].Box.Overlaps(texts[j].Box).Should().BeFalse("\"{0}\" and \"{1}\" are apart", texts[i].Text, texts[j].Text);
        }
    }

    [Fact]
    public void It_says_what_it_is() => XElement.Parse(Legend).Elements().First().Value.Should().Be("Two-storey flat: signs of the maps");
}
