using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Devices;
using MeshSim.Drawing;
using MeshSim.Drawing.PlanSheets;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>Plan sheets as JSON.</summary>
internal sealed record SheetsJson(string Home, ImmutableArray<string> Networks, ImmutableArray<StoreySheetsJson> Storeys)
{
    /// <summary>The record of a set.</summary>
    /// <param name="home">The home.</param>
    /// <param name="coverages">The networks that are drawn.</param>
    /// <param name="set">The sheets.</param>
    /// <param name="names">How the files of the storeys are called, or null when all is in one file.</param>
    public static SheetsJson Of(Home home, ImmutableArray<NetworkCoverage> coverages, PlanSheetSet set, PictureNames? names) => new(
        home.Name,
        [.. coverages.Select(coverage => coverage.Network.Name.Value)],
        [.. set.Storeys.Select(storey => StoreySheetsJson.Of(storey, names))]);
}

/// <summary>The sheets of one storey.</summary>
internal sealed record StoreySheetsJson(
    string Storey, string? File, int FirstSheet, int PlanSheets, int KeySheets, int Scale, PaperFormat Paper, bool IsLandscape)
{
    /// <summary>The record of a storey.</summary>
    public static StoreySheetsJson Of(StoreySheets sheets, PictureNames? names) => new(
        sheets.Storey.Value, names?.Sheets(sheets.Storey), sheets.First, sheets.PlanSheets, sheets.KeySheets, sheets.Scale, sheets.Paper, sheets.IsLandscape);
}
