using MeshSim.OpenData.Tests.Accuracy.Regression;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>The head of the page and its table of all buildings.</summary>
internal static class SummaryChapter
{
    private const string Head =
        """
        # Accuracy

        How far this program's path loss lies from what others measured. `AccuracyPageTests` writes this page and its pictures from the
        data sets and fails when they are stale; where the data are ([datasets/README.md](../datasets/README.md)) it is made anew with

        ```
        MESHSIM_APPROVE=1 dotnet test -c Release --project tests/MeshSim.OpenData.Tests
        ```

        **Level at a place** = offset − 10 n log₁₀ d − walls. *Catalogue*: n = 2, walls as the catalogue has them, a way round of 25 dB; only
        the offset (transmit power, antennas, the receiver's register, none of them stated) is taken from the data, one for the whole set.
        *Fitted*: least squares for the offset, n, one factor for all walls, and the way round, without any prior. *One transmitter left out*: fitted to the
        others, judged on the one, for each in turn; that is what a new device may expect. Errors are predicted less measured; levels are
        means over a cell or a point, so fading is mostly out of them and shadowing is not.

        RMSE in dB:

        | data | links | distance only, left out | catalogue, plain sum | catalogue, way round | fitted, left out, plain sum | fitted, left out, way round |
        |---|---:|---:|---:|---:|---:|---:|
        """;

    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Lines() => [.. Head.Split('\n'), .. AccuracySets.All.Select(Row), "", .. Findings()];

    private static IEnumerable<string> Findings()
    {
        Assessment flat = AccuracySets.Flat, office = AccuracySets.Office;
        string Gain(Assessment of) => Tenths(of.LeftOutFigures(WallForm.None).RmseDb - of.Catalogue(WallForm.Detour).RmseDb);
        yield return $"- Where there are walls, the catalogue without any fit beats a fit of distance, by {Gain(flat)} and {Gain(office)} dB.";
        yield return $"- Walls that simply add up are wrong in a large building: {Rmse(office.Catalogue(WallForm.Sum))} dB, where the way round leaves {Rmse(office.Catalogue(WallForm.Detour))} dB.";
        yield return $"- For a transmitter that was not measured {Rmse(flat.LeftOutFigures(WallForm.Detour))} dB remain in the flat and {Rmse(office.LeftOutFigures(WallForm.Detour))} dB on the office floor. "
            + "The default shadowing of this program is 5 dB: right for a flat, too little for a long floor.";
        yield return "- Both buildings favour a way round: doorways stood open in the flat, and on the office floor all points lie in the corridor and the hall. Into rooms behind shut doors it will be dearer.";
        yield return "- Without walls distance alone decides, and exponents run from 1.5 in a reflecting hall to 3.3 between book shelves. No one value would be right; 2 is kept, and a home can say otherwise.";
    }

    private static string Row(Assessment assessment)
    {
        string[] walls = assessment.Building.HasWalls
            ?
            [
                Rmse(assessment.Catalogue(WallForm.Sum)), Rmse(assessment.Catalogue(WallForm.Detour)),
                Rmse(assessment.LeftOutFigures(WallForm.Sum)), Rmse(assessment.LeftOutFigures(WallForm.Detour)),
            ]
            : [Rmse(assessment.Catalogue(WallForm.None)), "same", "same as distance only", "same"];
        return $"| {assessment.Building.Name} | {Count(assessment.Points.Length)} | {Rmse(assessment.LeftOutFigures(WallForm.None))} | {string.Join(" | ", walls)} |";
    }

    private static string Rmse(ErrorFigures figures) => Hundredths(figures.RmseDb);
}
