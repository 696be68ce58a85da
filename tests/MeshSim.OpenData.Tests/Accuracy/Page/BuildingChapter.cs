using MeshSim.OpenData.Tests.Accuracy.Fits;
using MeshSim.OpenData.Tests.Accuracy.Sets;
using MeshSim.Propagation;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>What the page says of one building.</summary>
internal static class BuildingChapter
{
    private static readonly (ModelName Model, string Name)[] Models = [(ModelName.LogDistance, "log-distance"), (ModelName.Detour, "**detour**")];

    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Of(Assessment assessment)
    {
        MeasuredBuilding building = assessment.Building;
        yield return $"## {building.Name}";
        yield return "";
        yield return building.What;
        yield return "";
        yield return $"**Source.** {building.Citation}. **Licence.** {building.Licence}. **Radio.** {building.Radio}. **Links.** {Count(assessment.Heard.Length)} with a level"
            + (building.Links.Length > assessment.Heard.Length ? $" of {Count(building.Links.Length)} measured" : "") + "."
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
        yield return Row("distance only, least squares", assessment.ErrorsOf(assessment.Line));
        yield return Row("distance only, one transmitter left out", assessment.FiguresOf(assessment.LeftOutOfLine()));
        foreach (string row in assessment.Building.HasWalls ? RowsOfWalls(assessment) : RowsOfAir(assessment)) yield return row;
    }

    private static IEnumerable<string> RowsOfAir(Assessment assessment)
    {
        yield return Row("catalogue (n = 2), one offset, nothing else fitted", assessment.ErrorsOf(assessment.Catalogue(ModelName.Detour)));
        yield return Row("fitted", assessment.ErrorsOf(assessment.Fitted(ModelName.Detour, hasOffsets: false)));
        yield return Row("fitted, one transmitter left out", assessment.FiguresOf(assessment.LeftOut(ModelName.Detour)));
        if (assessment.Building.SentDbm is { } sentDbm)
            yield return Row($"catalogue, power as stated, antennas of `{FrameCurve.Radio.Name}`, nothing fitted", assessment.ErrorsOf(assessment.Stated(sentDbm, FrameCurve.Radio)));
    }

    private static IEnumerable<string> RowsOfWalls(Assessment assessment)
    {
        foreach ((ModelName model, string name) in Models)
        {
            yield return Row($"{name}, catalogue, one offset, nothing else fitted", assessment.ErrorsOf(assessment.Catalogue(model)));
            yield return Row($"{name}, fitted with one offset", assessment.ErrorsOf(assessment.Fitted(model, hasOffsets: false)));
            yield return Row($"{name}, fitted", assessment.ErrorsOf(assessment.Fitted(model, hasOffsets: true)));
            yield return Row($"{name}, fitted, one transmitter left out", assessment.FiguresOf(assessment.LeftOut(model)));
        }

        if (assessment.Building.Links.Length > assessment.Heard.Length)
            yield return Row("**detour**, fitted to silent links too", assessment.ErrorsOf(assessment.FittedWithSilent(ModelName.Detour, hasOffsets: true)));
        if (!assessment.Building.Links.Any(link => link.IsTest)) yield break;
        yield return Row("distance only, fitted to the training points, on the test points", assessment.SetApartOfLine());
        foreach ((ModelName model, string name) in Models)
        {
            yield return Row($"{name}, catalogue, one offset of the training points, on the test points", assessment.SetApartOfCatalogue(model));
            yield return Row($"{name}, fitted to the training points with one offset, on the test points", assessment.SetApart(model, hasOffsets: false));
            yield return Row($"{name}, fitted to the training points, on the test points", assessment.SetApart(model, hasOffsets: true));
        }
    }

    private static IEnumerable<string> Laws(Assessment assessment)
    {
        BuildingFit detour = assessment.Fitted(ModelName.Detour, hasOffsets: assessment.Building.HasWalls);
        if (!assessment.Building.HasWalls)
        {
            yield return $"Least squares: n = {Hundredths(assessment.Line.Exponent)}, {Tenths(assessment.Line.OffsetDbm)} dBm at 1 m. Fitted: n = "
                + $"{Hundredths(detour.Exponent)}, one offset for all. Without walls log-distance and detour are the same.";
            yield break;
        }

        BuildingFit sum = assessment.Fitted(ModelName.LogDistance, hasOffsets: true);
        yield return $"Distance only: n = {Hundredths(assessment.Line.Exponent)}. Fitted: log-distance n = {Hundredths(sum.Exponent)}, a wall "
            + $"{Signed(sum.WallCorrectionDb)} dB against the catalogue; "
            + $"detour n = {Hundredths(detour.Exponent)}, a wall {Signed(detour.WallCorrectionDb)} dB, and {Tenths(detour.DetourDb ?? 0)} dB for the way round.";
        if (assessment.Building.Links.Any(link => link.IsTest)) yield return TestRemark(assessment);
    }

    private static string TestRemark(Assessment assessment)
    {
        ErrorFigures one = assessment.SetApart(ModelName.Detour, hasOffsets: false);
        double scatter = Math.Sqrt((one.RmseDb * one.RmseDb) - (one.BiasDb * one.BiasDb));
        return $"On the test points all laws are low by one to two decibels: other phones were used there. Without that common difference {Hundredths(scatter)} dB "
            + $"would remain of the {Hundredths(one.RmseDb)} dB with one offset.";
    }

    private static string Signed(double? decibels) => (decibels > 0 ? "+" : "") + Tenths(decibels ?? 0);

    private static string Row(string law, ErrorFigures figures) =>
        $"| {law} | {Hundredths(figures.RmseDb)} | {Hundredths(figures.BiasDb)} | {Tenths(figures.MostDb)} |";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
