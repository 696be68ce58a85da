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
        int lost = CoverageWords.Unreached(coverage).Length;
        if (lost == 0) return "No repeater is needed: every device has a reliable way already.";

        if (coverage.Network.Radio.Topology == Topology.Star)
            return $"No repeater helps: every device of this network speaks to {coverage.Network.Coordinator} itself. Move one or the other.";

        if (CoverageWords.IsCoordinatorOff(coverage))
            return $"No repeater helps while {coverage.Network.Coordinator} has no power.";

        string unserved = string.Join(", ", placement.Unserved.Select(u => $"{u.Device} ({Lack(u)})"));
        string considered = $"{Figures.Counted(placement.OutletsConsidered, "outlet")} considered";
        if (placement.Repeaters.IsEmpty) return $"No choice of outlets helps ({considered}): {unserved}.";

        string places = string.Join("; ", placement.Repeaters.Select(r => Where(r.Outlet)));
        string proof = placement.IsProven
            ? "fewer will not do"
            : FormattableString.Invariant($"at least {placement.LowerBound} are needed, and one fewer than here is not ruled out");
        string gain = placement.ServesAll ? "Every device then has a reliable way" : "Every device that can be served then has a reliable way";
        string left = placement.ServesAll ? "" : $" No outlet serves: {unserved}.";
        return $"Add {Figures.Counted(placement.Repeaters.Length, "repeater")}: {places}. {gain} ({proof}; {considered}).{left}";
    }

    /// <summary>An outlet and its place, such as "landing-2 (first, landing)".</summary>
    public static string Where(Outlet outlet) =>
        $"{outlet.Id} ({CoverageWords.Place(outlet.Storey, outlet.Room)}{(outlet.IsAssumed ? ", assumed outlet" : "")})";

    /// <summary>What a device that cannot be served lacks.</summary>
    public static string Lack(UnservedDevice unserved) =>
        unserved.Shortfall is { } shortfall
            ? $"lacks {Figures.Decibels(shortfall)} dB even from {unserved.BestRelay}"
            : $"hears {unserved.BestRelay} well, but the way would take too many hops";
}
