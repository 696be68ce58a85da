using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Drawing;

namespace MeshSim.Cli.Reporting;

/// <summary>How to read the maps, how much of each room is dark, and how the bands differ room by room.</summary>
internal static class RoomsChapter
{
    /// <summary>The signs of all maps.</summary>
    public static string Legend(ReportContent content) =>
        Html.Paragraph(
            $"Each map is for a battery sensor carried around the storey at {Figures.Plain(content.Options.ProbeHeightMetres)} m above the floor, "
            + "as the house stands, without the repeaters that are recommended. Its colours are margins in decibels, the lighter the better: how far the link "
            + "lies above the weakest level that its receiver can use. Hatched: below the margin that a link must have to be planned with.")
        + Html.Figure(LegendPicture.Inline(content.Home, "signs"), "Signs of the maps", "map legend");

    /// <summary>Dark floor in all networks, then the bands compared.</summary>
    public static string Of(ReportContent content, HtmlTables tables)
    {
        string html = tables.Write(DarkRoomsTable.Across([.. content.Answers.Select(answer => answer.Maps)]), "Share of each room's floor that is dark, %");
        if (content.Bands is not { } bands || bands.Rooms.IsEmpty) return html;
        return html + Html.Heading($"{bands.First.Network.Name} ({bands.First.Network.Carrier}) against {bands.Second.Network.Name} ({bands.Second.Network.Carrier})")
            + Html.Paragraph(BandWords.Answer(bands))
            + tables.Write(BandTables.Rooms(bands), "Covered floor and median margin, room by room");
    }
}
