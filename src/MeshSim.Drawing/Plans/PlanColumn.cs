using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Plans;

/// <summary>A construction with the letter that stands on its walls.</summary>
/// <param name="Letter">The letter.</param>
/// <param name="Construction">The construction.</param>
/// <param name="Style">How its walls are drawn.</param>
internal sealed record WallKey(string Letter, ConstructionName Construction, WallStyle Style);

/// <summary>The column beside a plan: remarks by their numbers, walls by their letters, symbols.</summary>
/// <param name="Remarks">What is said, each with its number.</param>
/// <param name="Walls">The constructions of the walls.</param>
/// <param name="Rows">What the column shows.</param>
internal sealed record PlanColumn(ImmutableArray<(int Number, PlanRemark Remark)> Remarks, ImmutableArray<WallKey> Walls, ImmutableArray<ColumnRow> Rows)
{
    /// <summary>More remarks than this have no place beside a plan; the text of the run has them all.</summary>
    public const int MostRemarks = 30;

    private const float NumberWidth = 30;

    /// <summary>What all rows take, pixels.</summary>
    public float HeightPixels => Rows.Sum(row => row.HeightPixels);

    /// <summary>Writes the column.</summary>
    public static PlanColumn Of(PlanDraft draft, IReadOnlyList<Storey> storeys, Ink ink)
    {
        ImmutableArray<(int, PlanRemark)> remarks = [.. draft.Remarks.Take(MostRemarks).Select((remark, i) => (i + 1, remark))];
        ImmutableArray<WallKey> walls =
        [
            .. storeys.SelectMany(storey => storey.Walls).Select(wall => wall.Construction).Distinct()
                .Select(name => (Name: name, Style: WallStyles.Of(name, draft.Home)))
                .OrderBy(one => one.Style).ThenBy(one => one.Name.Value, StringComparer.Ordinal)
                .Select((one, i) => new WallKey(LetterOf(i), one.Name, one.Style)),
        ];
        return new(remarks, walls, [.. RemarkRows(draft, remarks, ink), .. WallRows(walls), .. Signs(draft, ink)]);
    }

    // a to z, then aa, ab, …
    private static string LetterOf(int index) => (index >= 26 ? LetterOf((index / 26) - 1) : "") + (char)('a' + (index % 26));

    private static IEnumerable<ColumnRow> RemarkRows(PlanDraft draft, IEnumerable<(int Number, PlanRemark Remark)> remarks, Ink ink)
    {
        foreach (bool isError in new[] { true, false })
        {
            (int Number, PlanRemark Remark)[] ofKind = [.. remarks.Where(one => one.Remark.IsError == isError)];
            if (ofKind.Length == 0) continue;
            yield return new HeadingRow(isError ? "Problems" : "Notices");
            foreach ((int number, PlanRemark remark) in ofKind)
            {
                bool isFirst = true;
                foreach (string line in TextFlow.Lines(remark.Text, TextStyle.Body, PlanLayout.ColumnWidth - NumberWidth, ink))
                {
                    yield return isFirst ? new RemarkRow(number, isError, remark.Point is not null, line) : new NoteRow(line, TextStyle.Body, Tone.Text, NumberWidth);
                    isFirst = false;
                }
            }
        }

        int more = draft.Remarks.Length - MostRemarks;
        if (more > 0) yield return new NoteRow(FormattableString.Invariant($"and {more} more"), TextStyle.Body, Tone.Quiet, NumberWidth);
    }

    private static IEnumerable<ColumnRow> WallRows(ImmutableArray<WallKey> walls)
    {
        if (walls.IsEmpty) yield break;
        yield return new HeadingRow("Walls, by the letter on them");
        foreach (WallKey wall in walls) yield return new WallRow(wall.Style, $"{wall.Letter}   {wall.Construction}");
    }

    private static IEnumerable<ColumnRow> Signs(PlanDraft draft, Ink ink)
    {
        Device[] devices = [.. draft.Home.Devices];
        if (devices.Length > 0)
        {
            yield return new HeadingRow("Devices");
            yield return new RolesRow([.. Enum.GetValues<Role>().Where(role => devices.Any(device => device.Role == role))]);
            foreach (SymbolShape[] pair in devices.Select(SymbolShapes.Of).Distinct().Order().Chunk(2)) yield return new SymbolRow(pair[0], pair.Length > 1 ? pair[1] : null);
        }

        string[] notes =
        [
            .. draft.Home.Outlets.Any(outlet => !outlet.IsAssumed) ? ["A small square with a dot is an outlet for repeaters."] : Array.Empty<string>(),
            "Measures of rooms run between the middles of their walls.",
            .. draft.Unbuilt.IsEmpty ? Array.Empty<string>() : ["Dashed outlines could not become rooms."],
        ];
        yield return new HeadingRow("How to read it");
        foreach (string line in notes.SelectMany(note => TextFlow.Lines(note, TextStyle.Body, PlanLayout.ColumnWidth, ink)))
            yield return new NoteRow(line, TextStyle.Body, Tone.Quiet);
    }
}
