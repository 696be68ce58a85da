using System.Globalization;
using MeshSim.Devices;
using MeshSim.Fitting;
using MeshSim.Fitting.Findings;

namespace MeshSim.Cli.Wording;

/// <summary>What readings say about a plan, in sentences.</summary>
internal static class FitWords
{
    /// <summary>More odd paths than this are counted, not listed.</summary>
    private const int MostListed = 10;

    /// <summary>The answer: what the readings contradict, likeliest first, then how well the rest agrees.</summary>
    public static IEnumerable<string> Of(FitResult answer)
    {
        if (answer.Findings.IsEmpty) yield return $"{answer.Network.Name}: nothing in the readings contradicts the plan.";
        foreach (Finding finding in answer.Findings) yield return $"{answer.Network.Name}: {InWords(finding)}";
        yield return $"{answer.Network.Name}: {Figures.Counted(answer.Fit.Readings, "reading")} of {Figures.Counted(answer.PairsHeard, "pair")} that heard each other "
            + $"and {Figures.Count(answer.PairsNotHeard)} that did not. The catalogue is off by {answer.Before.Rmse} (RMSE), the fit by {answer.After.Rmse}, "
            + $"and by {answer.CrossValidated.Rmse} for a device that it has not seen. What remains scatters by {answer.Fit.Shadowing}.";
    }

    /// <summary>Further lines: single paths, what hangs together, what nothing was learnt about.</summary>
    public static IEnumerable<string> Remarks(FitResult answer)
    {
        foreach (OddPath odd in answer.OddPaths.Take(MostListed)) yield return InWords(odd);
        if (answer.OddPaths.Length > MostListed) yield return $"And {Figures.Count(answer.OddPaths.Length - MostListed)} more such paths; JSON has them all.";
        if (answer.Confounded.Length > 0)
            yield return $"Hardly told apart, so that only both together are sure: {string.Join("; ", answer.Confounded.Select(pair => $"{Name(pair.First)} and {Name(pair.Second)}"))}.";
        if (answer.Uncrossed.Length > 0) yield return $"No reading crosses these, so they keep their catalogue values: {string.Join(", ", answer.Uncrossed)}.";
        yield return "Offsets belong to what radios report; no margin hangs on them. What is named above is no part of the fit: put it right in the home folder.";
    }

    /// <summary>A finding with the likeliest physical reason.</summary>
    public static string InWords(Finding finding) => finding switch
    {
        HiddenDevice hidden => string.Create(CultureInfo.InvariantCulture,
            $"look at {hidden.Device}: all its {Figures.Counted(hidden.Pairs, "pair")} are low by {hidden.Loss.Value:0.0} ± {hidden.StandardError.Value:0.0} dB, both ways "
            + $"and whatever lies between. Likeliest reason: a metal box around it, or something metal right at its antenna."),
        MovedDevice moved => string.Create(CultureInfo.InvariantCulture,
            $"look at {moved.Device}: its {Figures.Counted(moved.Pairs, "pair")} fit another place, best ({moved.Likeliest.XMetres:0.0}, {moved.Likeliest.YMetres:0.0}) "
            + $"on {moved.Storey}. Likeliest reason: its position on the plan is wrong."),
        OtherElement other => string.Create(CultureInfo.InvariantCulture,
            $"look at {other.Element} ({other.Construction}): the {Figures.Counted(other.Pairs, "pair")} through it lose "
            + $"{Math.Abs(other.Loss.Value):0.0} ± {other.StandardError.Value:0.0} dB {(other.Loss.Value > 0 ? "more" : "less")} than that. "
            + $"Likeliest reason: it is built of something else than the plan says, or {(other.Loss.Value > 0 ? "lined with foil or metal" : "an opening is missing on the plan")}."),
        _ => throw new ArgumentOutOfRangeException(nameof(finding), finding, "no such finding"),
    };

    /// <summary>What a parameter is called.</summary>
    public static string Name(FittedParameter parameter) => parameter.Kind switch
    {
        FittedKind.Exponent => "exponent",
        FittedKind.Detour => "way round the walls",
        FittedKind.CommonOffset => "offset of all receivers",
        FittedKind.Offset => $"offset of {parameter.Name}",
        _ => parameter.Name,
    };

    private static string InWords(OddPath odd) => string.Create(CultureInfo.InvariantCulture,
        $"One path alone that nothing explains: {odd.First} – {odd.Second}, {Math.Abs(odd.Excess.Value):0.0} dB too "
        + $"{(odd.Excess.Value < 0 ? "weak: something metal in just that way" : "strong: a door that stood open, a way round")}, or a reading gone wrong.");
}
