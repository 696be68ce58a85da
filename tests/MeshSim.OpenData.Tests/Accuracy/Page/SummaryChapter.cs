using MeshSim.OpenData.Tests.Accuracy.Fits;
using MeshSim.Propagation;
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
        *Fitted*: the program's own estimate, as [`fit`](models-fitting.md) makes it, with its priors and robust: exponent, a correction for the
        construction that all walls are taken as, the way round, and, in buildings with walls, an offset for each fixed end. The building is
        written as a home with a device at each place; devices send with what leaves the catalogue no bias over the links that are known. *Distance only*: plain least
        squares, for comparison. *One transmitter left out*: fitted to the others, judged on the one (its own offset then is unknown), for each in turn, a few at a time where there
        are more than 25; that is what a new device may expect. Errors are predicted less measured; levels are
        means over a cell or a point, so fading is mostly out of them and shadowing is not. Links are those with a level, unless it says otherwise.

        RMSE in dB:

        | data | links | distance only, left out | catalogue, plain sum | catalogue, way round | fitted, left out, plain sum | fitted, left out, way round |
        |---|---:|---:|---:|---:|---:|---:|
        """;

    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Lines() => [.. Head.Split('\n'), .. AccuracySets.All.Select(Row), "", .. Findings()];

    private static IEnumerable<string> Findings()
    {
        Assessment flat = AccuracySets.Flat, office = AccuracySets.Office;
        string Gain(Assessment of) => Tenths(of.FiguresOf(of.LeftOutOfLine()).RmseDb - of.ErrorsOf(of.Catalogue(ModelName.Detour)).RmseDb);
        yield return $"- Where there are walls, the catalogue without any fit beats a fit of distance, by {Gain(flat)} and {Gain(office)} dB.";
        yield return $"- Walls that simply add up are wrong in a large building: {Catalogue(office, ModelName.LogDistance)} dB, where the way round leaves "
            + $"{Catalogue(office, ModelName.Detour)} dB.";
        yield return $"- For a transmitter that was not measured {LeftOut(flat, ModelName.Detour)} dB remain in the flat and {LeftOut(office, ModelName.Detour)} dB on the office floor. "
            + "The default shadowing of this program is 5 dB: right for a flat, too little for a long floor.";
        yield return "- On the office floor a fit is no better than the catalogue for a transmitter that it has not seen: what was learnt at six others says less about "
            + "the seventh than about themselves.";
        yield return "- Both buildings favour a way round: doorways stood open in the flat, and on the office floor all points lie in the corridor and the hall. Into "
            + "rooms behind shut doors it will be dearer.";
        yield return "- Without walls distance alone decides, and exponents run from 1.5 in a reflecting hall to 3.3 between book shelves. No one value would be right; "
            + "2 is kept, and a home can say otherwise. "
            + "Fitted, the program is as good there as least squares.";
    }

    private static string Row(Assessment assessment)
    {
        string[] figures = assessment.Building.HasWalls
            ?
            [
                Catalogue(assessment, ModelName.LogDistance), Catalogue(assessment, ModelName.Detour),
                LeftOut(assessment, ModelName.LogDistance), LeftOut(assessment, ModelName.Detour),
            ]
            : [Catalogue(assessment, ModelName.Detour), "same", LeftOut(assessment, ModelName.Detour), "same"];
        return $"| {assessment.Building.Name} | {Count(assessment.Heard.Length)} | {Hundredths(assessment.FiguresOf(assessment.LeftOutOfLine()).RmseDb)} | {string.Join(" | ", figures)} |";
    }

    private static string Catalogue(Assessment of, ModelName model) => Hundredths(of.ErrorsOf(of.Catalogue(model)).RmseDb);

    private static string LeftOut(Assessment of, ModelName model) => Hundredths(of.FiguresOf(of.LeftOut(model)).RmseDb);
}
