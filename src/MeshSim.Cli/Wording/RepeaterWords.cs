using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>The recommendation of repeaters in sentences.</summary>
internal static class RepeaterWords
{
    /// <summary>The answer in one line: how many, whether that is enough, and whom no outlet serves.</summary>
    public static string Answer(NetworkCoverage coverage, RepeaterPlacement placement)
    {
        bool isMet = CoverageWords.Unreached(coverage).IsEmpty && placement.Repeaters.IsEmpty && placement.KeptOn.IsEmpty && placement.ServesAll;
        if (isMet) return $"No repeater is needed: every device has a reliable way already{Kept(placement)}.";

        if (coverage.Network.Radio.Topology == Topology.Star)
            return $"No repeater helps: every device of this network speaks to {coverage.Network.Coordinator} itself. Move one or the other.";

        if (CoverageWords.IsCoordinatorOff(coverage))
            return $"No repeater helps while {coverage.Network.Coordinator} has no power.";

        string unserved = string.Join(", ", Named(placement).Select(u => $"{u.Device}{When(u.Case)} ({Lack(u)})"));
        string considered = $"{Figures.Counted(placement.OutletsConsidered, "outlet")} considered";
        if (placement.Repeaters.IsEmpty && placement.KeptOn.IsEmpty) return $"No choice of outlets helps ({considered}): {unserved}.";

        string proof = placement.IsProven
            ? placement.KeptOn.IsEmpty ? "fewer will not do" : "nothing cheaper will do"
            : FormattableString.Invariant($"at least {placement.LowerBound} are needed, and one fewer than here is not ruled out");
        bool servesEveryday = placement.Unserved.All(u => u.Case != default);
        string gain = servesEveryday ? "Every device then has a reliable way" : "Every device that can be served then has a reliable way";
        string left = placement.ServesAll ? "" : $" No outlet serves: {unserved}.";
        return $"{Steps(placement)} {gain}{Kept(placement)} ({proof}; {considered}).{left}";
    }

    /// <summary>What to plug in and what to leave on.</summary>
    private static string Steps(RepeaterPlacement placement)
    {
        string add = $"Add {Figures.Counted(placement.Repeaters.Length, "repeater")}: {string.Join("; ", placement.Repeaters.Select(r => Where(r.Outlet)))}.";
        string keep = $"Keep powered: {string.Join("; ", placement.KeptOn.Select(kept => kept.Device.Value + (kept.Switch is { } manual ? $" (past {manual}: work for an electrician)" : "")))}.";
        return placement.KeptOn.IsEmpty ? add : placement.Repeaters.IsEmpty ? keep : $"{add} {keep}";
    }

    /// <summary>A case, such as " in bedtime" or " when kettle-plug is off"; empty for everyday.</summary>
    public static string When(PlacementCase when) =>
        (when.State is { } state ? $" in {state}" : "") + (when.Lost is { } lost ? $" when {lost} is off" : "");

    /// <summary>An outlet and its place, such as "landing-2 (first, landing)".</summary>
    public static string Where(Outlet outlet) =>
        $"{outlet.Id} ({CoverageWords.Place(outlet.Storey, outlet.Room)}{(outlet.IsAssumed ? ", assumed outlet" : "")})";

    /// <summary>What a device that cannot be served lacks.</summary>
    public static string Lack(UnservedDevice unserved) =>
        unserved.Shortfall is { } shortfall
            ? $"lacks {Figures.Decibels(shortfall)} dB even from {unserved.BestRelay}"
            : $"hears {unserved.BestRelay} well, but the way would take too many hops";

    /// <summary>Who is out of reach everyday is not named again for a state.</summary>
    private static IEnumerable<UnservedDevice> Named(RepeaterPlacement placement)
    {
        HashSet<DeviceId> everyday = [.. placement.Unserved.Where(u => u.Case == default).Select(u => u.Device)];
        return placement.Unserved.Where(u => u.Case == default || !everyday.Contains(u.Device));
    }

    /// <summary>What was asked beyond one way everyday, such as ", also in bedtime and with any one router or repeater off".</summary>
    private static string Kept(RepeaterPlacement placement)
    {
        List<string> kept = [];
        if (!placement.StatesHeld.IsEmpty) kept.Add($"in {NameList.Spoken(placement.StatesHeld)}");
        if (placement.Goals.Ways > 1) kept.Add("with any one router or repeater off");
        string none = placement.Goals.HoldStates && placement.StatesHeld.IsEmpty ? ", and no other state is marked that must hold" : "";
        string limits = Named(placement).Any(u => u.Case != default) ? " where that can be had" : "";
        return (kept.Count == 0 ? "" : $", also {string.Join(" and ", kept)}{limits}") + none;
    }
}
