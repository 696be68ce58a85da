using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>Who has two ways, one or none once a recommendation is followed, in sentences.</summary>
internal static class ServedWords
{
    /// <summary>How many have what, such as "of 24 devices, 21 then have two ways and 3 only one; nobody drops in bedtime".</summary>
    /// <param name="coverage">The network as it is.</param>
    /// <param name="placement">The recommendation.</param>
    /// <param name="then">" then" where something is to be done first; else empty.</param>
    public static string Counts(NetworkCoverage coverage, RepeaterPlacement placement, string then)
    {
        int all = coverage.Devices.Length, none = OutOfReach(placement).Count, one = OneWay(placement).Count;
        string asked = placement.Goals.Ways > 1 ? $"two reliable ways{OrStraight(coverage)}" : "a reliable way";
        if (none + one == 0) return $"{(all == 1 ? "the only" : "every")} device{then} has {asked}{States(placement, "nobody")}";

        string onlyOne = OrStraight(coverage).Length == 0 ? "only one" : "only one over others";
        (int Count, string First, string Further)[] parts = [(all - none - one, asked, asked), (one, "only one way", onlyOne), (none, "no way", "none")];
        if (all == 1) return $"the only device{then} has {(none == 1 ? "no way" : "only one way")}{States(placement, none == 0 ? "nobody" : "nobody else")}";
        string[] told =
        [
            .. parts.Where(part => part.Count > 0).Select((part, index) =>
                index > 0 ? $"{Figures.Count(part.Count)} {part.Further}" : $"{Figures.Count(part.Count)}{then} {(part.Count == 1 ? "has" : "have")} {part.First}"),
        ];
        return $"of {Figures.Counted(all, "device")}, {NameList.Spoken(told)}{States(placement, none == 0 ? "nobody" : "nobody else")}";
    }

    /// <summary>A sentence for those without a way, one for those with one way where two are asked, one for each state that drops somebody.</summary>
    public static IEnumerable<string> Left(NetworkCoverage coverage, RepeaterPlacement placement)
    {
        HashSet<DeviceId> outOfReach = OutOfReach(placement);
        if (outOfReach.Count > 0)
            yield return $"No way, whatever is plugged in: {string.Join(", ", placement.Unserved.Where(u => u.Case == default).Select(Lacking))}.";
        if (OneWay(placement).Count > 0) yield return $"Only one way: {Hanging(placement, outOfReach)}. {Advice(placement.Unserved.Select(u => u.Case))}";
        foreach (string state in LeftInStates(coverage, placement)) yield return state;
    }

    /// <summary>A sentence for each state that leaves the coordinator without power, then for each that drops somebody who has a way everyday.</summary>
    public static IEnumerable<string> LeftInStates(NetworkCoverage coverage, RepeaterPlacement placement) =>
        placement.CoordinatorOff.Select(outage => CoordinatorWords.Of(coverage.Network.Coordinator.Value, outage))
            .Concat(InStates(placement).Where(u => !u.IsCoordinatorOff).GroupBy(u => u.Case.State)
                .Select(state => $"In {state.Key} no way, whatever is plugged in: {string.Join(", ", state.Select(Lacking))}."));

    /// <summary>What a person can do about devices that hang on one router or repeater. A repeater is not placed twice, though a twin hears what it hears.</summary>
    /// <param name="cases">Who fails when.</param>
    public static string Advice(IEnumerable<PlacementCase> cases) => "Keep what they hang on powered"
        + (cases.Any(when => when.IsRepeaterLost) ? "; a second repeater beside the first, in an outlet of its own, is a second way." : ".");

    private static string Lacking(UnservedDevice unserved) => $"{unserved.Device} ({RepeaterWords.Lack(unserved)})";

    /// <summary>Such as "workshop-plug (hangs on the repeater at workshop-bench), loft-climate and shower-leak (hang on landing-bulb)".</summary>
    private static string Hanging(RepeaterPlacement placement, HashSet<DeviceId> outOfReach)
    {
        var devices = Losses(placement).Where(u => !outOfReach.Contains(u.Device)).GroupBy(u => u.Device)
            .Select(losses => (Device: losses.Key.Value, On: NameList.Spoken([.. losses.Select(u => u.Case.Lost!)])));
        return string.Join(", ", devices.GroupBy(entry => entry.On).Select(same =>
            $"{NameList.SpokenShort([.. same.Select(entry => entry.Device)])} ({(same.Count() == 1 ? "hangs" : "hang")} on {same.Key})"));
    }

    /// <summary>What happens in the states that must hold, such as "; nobody drops in bedtime"; empty where none was asked for.</summary>
    public static string States(RepeaterPlacement placement, string nobody)
    {
        if (placement.StatesHeld.IsEmpty) return "";
        ILookup<string?, UnservedDevice> dropped = InStates(placement).ToLookup(u => u.Case.State);
        string[] whole = [.. placement.StatesHeld.Where(state => !dropped.Contains(state))];
        IEnumerable<string> told = dropped.Select(state => $"{Figures.Count(state.Count())} in {state.Key}");
        string clean = whole.Length == 0 ? "" : $"; {nobody} drops in {NameList.Spoken(whole)}";
        return dropped.Count == 0 ? clean : $"{clean}; without a way: {NameList.Spoken([.. told])}";
    }

    /// <summary>
    /// A device that hears the coordinator and nobody else has all that is asked, since no loss of a router takes its way; but it is one
    /// way, and <c>routes</c> counts it as one.
    /// </summary>
    private static string OrStraight(NetworkCoverage coverage) =>
        coverage.Devices.Any(reach => reach is { DisjointRoutes: 1, Route.Path.Length: 2 }) ? $" or one straight to {coverage.Network.Coordinator}" : "";

    private static HashSet<DeviceId> OutOfReach(RepeaterPlacement placement) => [.. placement.Unserved.Where(u => u.Case == default).Select(u => u.Device)];

    private static HashSet<DeviceId> OneWay(RepeaterPlacement placement)
    {
        HashSet<DeviceId> devices = [.. Losses(placement).Select(u => u.Device)];
        devices.ExceptWith(OutOfReach(placement));
        return devices;
    }

    private static IEnumerable<UnservedDevice> Losses(RepeaterPlacement placement) => placement.Unserved.Where(u => u.Case.Lost is not null);

    /// <summary>Who is out of reach everyday is not named again for a state.</summary>
    private static IEnumerable<UnservedDevice> InStates(RepeaterPlacement placement)
    {
        HashSet<DeviceId> outOfReach = OutOfReach(placement);
        return placement.Unserved.Where(u => u.Case is { State: not null, Lost: null } && !outOfReach.Contains(u.Device));
    }
}
