using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Legends;

/// <summary>Says of what the walls of a picture are built.</summary>
internal static class WallLegend
{
    /// <summary>What a sample takes before its text, pixels.</summary>
    private const float SampleWidth = 56;

    /// <summary>A row for each style in use with the constructions that are drawn in it; further rows where their names need them.</summary>
    /// <param name="home">The home.</param>
    /// <param name="storeys">The storeys that are drawn.</param>
    /// <param name="width">What a row may take, pixels.</param>
    /// <param name="ink">Measures text.</param>
    public static IEnumerable<ColumnRow> Of(Home home, IReadOnlyList<Storey> storeys, float width, Ink ink)
    {
        var styles = storeys.SelectMany(storey => storey.Walls).Select(wall => wall.Construction).Distinct()
            .GroupBy(construction => WallStyles.Of(construction, home)).OrderBy(group => group.Key).ToList();
        if (styles.Count > 0) yield return new HeadingRow("Walls");
        foreach (var style in styles)
        {
            string names = string.Join(", ", style.Select(construction => construction.Value).Order(StringComparer.Ordinal));
            string[] lines = [.. TextFlow.Lines(names, TextStyle.Body, width - SampleWidth, ink)];
            yield return new WallRow(style.Key, lines[0]);
            foreach (string line in lines.Skip(1)) yield return new NoteRow(line, TextStyle.Body, Tone.Text, SampleWidth);
        }
    }
}
