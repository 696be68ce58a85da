using MeshSim.FloorPlans.Geometry;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>Why a room is dark, in sentences.</summary>
internal static class RoomWords
{
    /// <summary>The verdict, the worst place, the main reason and the best fix.</summary>
    public static string Answer(RoomExplanation answer)
    {
        string room = $"{answer.Room.Name} ({answer.Storey})";
        string share = answer.Now.DarkShare switch
        {
            0 => $"{room} is covered everywhere: a battery device works wherever it is put",
            1 => $"{room} is dark all over: a battery device has too little margin wherever it is put",
            _ => $"{room} is dark in {Figures.Percent(answer.Now.DarkShare)} % of its floor: there a battery device has too little margin",
        };
        string worst = double.IsFinite(answer.Now.Worst.Value)
            ? $". The worst place is at {Place(answer.Now.WorstPlace)}, with a margin of {Figures.Decibels(answer.Now.Worst)} dB "
                + $"where {Figures.Decibels(answer.Coverage.DesignMargin)} dB are wanted."
            : CoverageWords.IsCoordinatorOff(answer.Coverage) ? $". Coordinator {answer.Coverage.Network.Coordinator} is off."
            : ". There is nobody whom it could speak to.";
        string reason = answer.Now.DarkShare > 0 ? ExplainWords.Dearest(answer.Budget) : "";
        return share + worst + reason + (answer.Fixes.IsEmpty ? "" : $" What helps best: {answer.Fixes[0].Fix.Words}.");
    }

    /// <summary>Further lines: what darkens it, and how other networks do.</summary>
    public static IEnumerable<string> Situations(RoomExplanation answer)
    {
        if (answer.Darkened.Length > 0)
        {
            string outages = string.Join(", ", answer.Darkened.Select(entry =>
                $"{entry.Outage.Name} ({OutageWords.Kind(entry.Outage.Kind)}: {Figures.Percent(entry.DarkShare)} %)"));
            yield return $"Darker when this is off: {outages}.";
        }

        if (answer.Elsewhere.Length > 0)
        {
            yield return $"Dark in the other networks of the home: "
                + string.Join("; ", answer.Elsewhere.Select(other => $"{other.Network.Name} ({other.Network.Carrier}) {Figures.Percent(other.DarkShare)} %")) + ".";
        }

        if (answer.Tried > 0 && answer.Fixes.IsEmpty) yield return $"No single change helps ({Figures.Counted(answer.Tried, "change")} tried).";
    }

    private static string Place(PlanPoint place) => FormattableString.Invariant($"x {place.XMetres:0.0} m, y {place.YMetres:0.0} m");
}
