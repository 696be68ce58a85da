using MeshSim.Cli.Answers;
using MeshSim.Mesh.Outages;
using MeshSim.Mesh.Routers;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>What is at risk although it works as the home stands, in sentences that say what to do.</summary>
internal static class RiskWords
{
    /// <summary>
    /// A sentence for each state that must hold and does not, such as "bedtime must hold and drops roof-window-contact:
    /// landing-bulb carries it; replace landing-bulb by an always-on device, or bypass its switch", then one for each further
    /// router that somebody needs. What the recommended repeaters mend asks for nothing else.
    /// </summary>
    public static IEnumerable<string> Of(NetworkAnswer answer)
    {
        HashSet<RouterDuty> told = [];
        foreach (Rehearsal broken in answer.Rehearsal.Broken)
        {
            RouterDuty[] missed = [.. answer.Routers.Duties.Where(duty => duty.MissedIn.Any(outage => outage.Name == broken.Outage.Name))];
            told.UnionWith(missed);
            yield return $"{broken.Outage.Name} must hold and drops {NameList.Short(broken.Dropped)}{Carried(broken, missed, Holds(answer.Placement, broken.Outage))}";
        }

        foreach (RouterDuty duty in answer.Routers.Duties.Where(duty => !told.Contains(duty)))
        {
            bool isMended = IsMended(answer, duty);
            if (duty.Verdict == RouterVerdict.Replace) yield return $"{duty.Device}: {RouterWords.Why(duty)}; {(isMended ? Mended : Advice(duty.Device.Value))}";
            if (duty.Verdict == RouterVerdict.Keep) yield return $"{duty.Device}: {RouterWords.Why(duty)}; {(isMended ? Mended : "keep it powered")}";
        }
    }

    private const string Mended = "what is recommended above mends that";

    private static bool Holds(RepeaterPlacement placement, Outage state) =>
        placement.StatesHeld.Contains(state.Name) && placement.Unserved.All(unserved => unserved.Case.State != state.Name);

    private static bool IsMended(NetworkAnswer answer, RouterDuty duty) =>
        answer.Placement is { Goals.Ways: > 1, Repeaters.IsEmpty: false } placement
        && placement.Unserved.All(unserved => unserved.Case.Lost != duty.Device.Value)
        && duty.MissedIn.All(outage => outage.Kind == OutageKind.State ? Holds(placement, outage) : TakesAlone(answer.Rehearsal, outage, duty));

    /// <summary>Repeaters are chosen for one loss at a time: a switch that takes others of the network as well is not foreseen.</summary>
    private static bool TakesAlone(NetworkRehearsal rehearsal, Outage outage, RouterDuty duty) =>
        rehearsal.Rehearsals.Any(r => r.Outage.Kind == outage.Kind && r.Outage.Name == outage.Name && r.Off.All(off => off == duty.Device));

    private static string Carried(Rehearsal broken, RouterDuty[] missed, bool isMended)
    {
        if (missed.Length == 0) return isMended ? $"; {Mended}" : "";
        string carriers = NameList.Spoken([.. missed.Select(duty => duty.Device.Value)]);
        string carry = missed.Length == 1 ? "carries" : "carry", whom = broken.Dropped.Length == 1 ? "it" : "them";
        return $": {carriers} {carry} {whom}; {(isMended ? Mended : Advice(carriers))}";
    }

    private static string Advice(string carriers) => $"replace {carriers} by an always-on device, or bypass the switch";
}
