using MeshSim.OpenData.Tests.Accuracy.Regression;
using MeshSim.OpenData.Tests.Accuracy.Sets;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>What the page says of one building.</summary>
internal static class BuildingChapter
{
    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Of(Assessment assessment)
    {
        MeasuredBuilding building = assessment.Building;
        yield return $"## {building.Name}";
        yield return "";
        yield return building.What;
        yield return "";
        yield return $"**Source.** {building.Citation}. **Licence.** {building.Licence}. **Radio.** {building.Radio}. **Links.** {Count(assessment.Points.Length)} with a level"
            + (building.Links.Length > assessment.Points.Length ? $" of {Count(building.Links.Length)} measured" : "") + "."
            + (building.Assumed.Length > 0 ? $" **Assumed.** {Capital(building.Assumed)}." : "");
        yield return "";
        yield return "| law | RMSE dB | bias dB | 95 % within dB |";
        yield return "|---|---:|---:|---:|";
        foreach (string row in Rows(assessment)) yield return row;
        yield return "";
        foreach (string line in Laws(assessment)) yield return line;
        yield return "";
        yield return $"![Measured against predicted levels, {building.Name.ToLowerInvariant()}](pictures/accuracy/{PictureFiles.Scatter(building)})";
        if (!building.HasWalls) yield break;
        yield return "";
        yield return $"![Where predictions are too high or too low, {building.Name.ToLowerInvariant()}](pictures/accuracy/{PictureFiles.Residuals(building)})";
    }

    private static IEnumerable<string> Rows(Assessment assessment)
    {
        yield return Row("distance only, fitted", assessment.Fitted(WallForm.None));
        yield return Row("distance only, one transmitter left out", assessment.LeftOutFigures(WallForm.None));
        if (!assessment.Building.HasWalls)
        {
            yield return Row("catalogue (n = 2), one offset, nothing else fitted", assessment.Catalogue(WallForm.None));
            if (assessment.Building.SentDbm is { } sentDbm)
                yield return Row($"catalogue, power as stated, antennas of `{FrameCurve.Radio.Name}`, nothing fitted", assessment.Stated(sentDbm, FrameCurve.Radio));
            yield break;
        }

        foreach ((WallForm form, string name) in new[] { (WallForm.Sum, "log-distance"), (WallForm.Detour, "**detour**") })
        {
            yield return Row($"{name}, catalogue, one offset, nothing else fitted", assessment.Catalogue(form));
            yield return Row($"{name}, fitted", assessment.Fitted(form));
            yield return Row($"{name}, fitted, one transmitter left out", assessment.LeftOutFigures(form));
        }

        if (!assessment.Building.Links.Any(link => link.IsTest)) yield break;
        yield return Row("distance only, fitted to the training points, on the test points", assessment.SetApart(WallForm.None, withOffsets: false));
        yield return Row("log-distance, the same", assessment.SetApart(WallForm.Sum, withOffsets: false));
        yield return Row("**detour**, the same", assessment.SetApart(WallForm.Detour, withOffsets: false));
        yield return Row("**detour**, the same, with an offset for each transmitter", assessment.SetApart(WallForm.Detour, withOffsets: true));
    }

    private static IEnumerable<string> Laws(Assessment assessment)
    {
        LevelLaw distance = LevelFit.Of(WallForm.None, assessment.Points);
        if (!assessment.Building.HasWalls)
        {
            yield return $"Fitted: n = {Hundredths(distance.Exponent)}, {Tenths(distance.OffsetDbm)} dBm at 1 m. Without walls log-distance and detour are the same.";
            yield break;
        }

        LevelLaw sum = LevelFit.Of(WallForm.Sum, assessment.Points), detour = LevelFit.Of(WallForm.Detour, assessment.Points);
        yield return $"Fitted: distance only n = {Hundredths(distance.Exponent)}; log-distance n = {Hundredths(sum.Exponent)} and {Hundredths(sum.WallFactor)} times the losses of the "
            + $"catalogue; detour n = {Hundredths(detour.Exponent)}, {Hundredths(detour.WallFactor)} times, and {Tenths(detour.DetourDb)} dB for the way round.";
    }

    private static string Row(string law, ErrorFigures figures) =>
        $"| {law} | {Hundredths(figures.RmseDb)} | {Hundredths(figures.BiasDb)} | {Tenths(figures.MostDb)} |";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
