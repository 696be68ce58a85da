using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Tests.Scenes;
using SkiaSharp;

namespace MeshSim.Drawing.Tests.Inks;

public sealed class InkTests
{
    [Fact]
    public void The_embedded_faces_have_every_character_that_a_picture_sets()
    {
        using var ink = new Ink();
        MapContents[] maps = [Contents.Of(TwoStoreyFlat.Ground), Contents.Of(TwoStoreyFlat.Upper)];
        IEnumerable<string> texts = maps.SelectMany(map => map.Labels.SelectMany(label => label.Request.Lines.Select(line => line.Text)))
            .Concat(maps.SelectMany(map => map.Column.Rows.OfType<NoteRow>().Select(row => row.Text)))
            .Concat(Enum.GetValues<SymbolShape>().Select(SymbolShapes.Meaning))
            .Append("ÄÖÜäöüßéèêçñøåłčΩ°µ≥≤–…×");

        foreach (string text in texts)
        {
            ink.Font(TextStyle.Body).ContainsGlyphs(text).Should().BeTrue(text);
            ink.Font(TextStyle.Strong).ContainsGlyphs(text).Should().BeTrue(text);
        }
    }

    [Fact]
    public void The_same_paint_is_made_once()
    {
        using var ink = new Ink();

        ink.Line(SKColors.Red, 2).Should().BeSameAs(ink.Line(SKColors.Red, 2));
        ink.Line(SKColors.Red, 2, dash: 3).Should().NotBeSameAs(ink.Line(SKColors.Red, 2));
        ink.Fill(SKColors.Red).Style.Should().Be(SKPaintStyle.Fill);
    }

    [Fact]
    public void A_capital_is_as_high_as_the_styles_say()
    {
        using var ink = new Ink();
        const float designUnit = 0.01f; // the face states its capital height to about a hundredth of its size

        (ink.Font(TextStyle.Title).Metrics.CapHeight / TextStyle.Title.SizePixels).Should()
            .BeApproximately(TextStyle.Title.CapitalHeight / TextStyle.Title.SizePixels, designUnit);
    }
}
