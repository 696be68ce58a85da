using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>The recommendation of repeaters in sentences.</summary>
internal static class RepeaterWords
{
    /// <summary>The answer in one line: how many and where, who has what then, what is proven. Whom no outlet serves is only counted.</summary>
    public static string Answer(NetworkCoverage coverage, RepeaterPlacement placement)
    {
        bool isStar = coverage.Network.Radio.Topology == Topology.Star;
        bool isNothing = placement.Repeaters.IsEmpty && placement.KeptOn.IsEmpty;
        if (CoverageWords.Unreached(coverage).IsEmpty && isNothing && placement.ServesAll)
        {
            return isStar
                ? $"No repeater is needed: every device reaches {coverage.Network.Coordinator} itself{ServedWords.States(placement, "nobody")}."
                : $"No repeater is needed: {ServedWords.Counts(coverage, placement, "")}.";
        }

        if (CoverageWords.IsCoordinatorOff(coverage)) return "No repeater helps.";

        if (isStar) return $"No repeater helps: every device of this network speaks to {coverage.Network.Coordinator} itself. Move one or the other.";

        string considered = $"{Figures.Counted(placement.OutletsConsidered, "outlet")} considered";
        if (isNothing) return $"No choice of outlets helps ({considered}): {ServedWords.Counts(coverage, placement, "")}.";

        string counts = ServedWords.Counts(coverage, placement, " then");
        return $"{Steps(placement)} {char.ToUpperInvariant(counts[0])}{counts[1..]} ({Proof(placement)}; {considered}).";
    }

    /// <summary>The answer, then whom no outlet serves and why.</summary>
    public static string Whole(NetworkCoverage coverage, RepeaterPlacement placement)
    {
        // Why a star or a coordinator without power leaves somebody out is another matter than outlets, and told before.
        bool isOwnMatter = coverage.Network.Radio.Topology == Topology.Star || CoverageWords.IsCoordinatorOff(coverage);
        IEnumerable<string> left = isOwnMatter ? ServedWords.LeftInStates(coverage, placement) : ServedWords.Left(coverage, placement);
        return string.Join(' ', left.Prepend(Answer(coverage, placement)));
    }

    /// <summary>Why there is no ladder of repeaters.</summary>
    public static string NoLadder(NetworkCoverage coverage) => coverage.Network.Radio.Topology == Topology.Star
        ? "There is no ladder: in a network of one hop no device passes frames on, so it has no repeaters."
        : $"There is no ladder: {coverage.Network.Coordinator} is off in state {coverage.State!.Name}.";

    /// <summary>Why a repeater is there, such as "for loft-climate; for roof-window-contact in bedtime or when landing-bulb is off".</summary>
    public static string Purpose(PlacedRepeater repeater)
    {
        string[] everyday = repeater.Serves.IsEmpty ? [] : [Names(repeater.Serves)];
        return string.Join("; ", everyday.Concat(Served(repeater.ServesWhen)).Select(served => $"for {served}"));
    }

    /// <summary>Who would be cut off in which cases, the same devices together.</summary>
    public static IEnumerable<string> Served(ImmutableArray<ServedCase> cases) =>
        cases.GroupBy(when => Names(when.Devices)).Select(same => $"{same.Key}{When(same.Select(when => when.Case))}");

    private static string Names(ImmutableArray<DeviceId> devices) => NameList.SpokenShort([.. devices.Select(id => id.Value)]);

    /// <summary>What is proven. Where devices are kept powered beside repeaters it is their cost that has a bound.</summary>
    private static string Proof(RepeaterPlacement placement)
    {
        if (placement.IsProven) return placement.KeptOn.IsEmpty ? "fewer will not do" : "nothing cheaper will do";
        return placement.KeptOn.IsEmpty
            ? FormattableString.Invariant($"at least {placement.LowerBound} are needed, and one fewer than here is not ruled out")
            : FormattableString.Invariant($"cost {placement.Cost}; less is not ruled out, but less than {placement.CostBound} is");
    }

    /// <summary>What to plug in and what to leave on.</summary>
    private static string Steps(RepeaterPlacement placement)
    {
        string add = $"Add {Figures.Counted(placement.Repeaters.Length, "repeater")}: {string.Join("; ", placement.Repeaters.Select(r => Where(r.Outlet)))}.";
        string keep = $"Keep powered: {string.Join("; ", placement.KeptOn.Select(Where))}.";
        return placement.KeptOn.IsEmpty ? add : placement.Repeaters.IsEmpty ? keep : $"{add} {keep}";
    }

    /// <summary>A case, such as " in bedtime" or " when kettle-plug is off"; empty for everyday.</summary>
    public static string When(PlacementCase when) =>
        (when.State is { } state ? $" in {state}" : "") + (when.Lost is { } lost ? $" when {lost} is off" : "");

    /// <summary>Cases together, such as " in bedtime or when kettle-plug or lamp is off".</summary>
    private static string When(IEnumerable<PlacementCase> cases)
    {
        ILookup<bool, PlacementCase> parts = cases.ToLookup(when => when.Lost is null);
        List<string> told = [.. parts[true].Select(when => When(when))];
        if (parts[false].Any()) told.Add(When(new PlacementCase(null, string.Join(" or ", parts[false].Select(when => when.Lost)))));
        return string.Join(" or", told);
    }

    /// <summary>An outlet and its place, such as "landing-2 (first, landing)".</summary>
    public static string Where(Outlet outlet) =>
        $"{outlet.Id} ({CoverageWords.Place(outlet.Storey, outlet.Room)}{(outlet.IsAssumed ? ", assumed outlet" : "")})";

    /// <summary>A device that stays powered, such as "landing-bulb (past landing switch: work for an electrician)".</summary>
    public static string Where(KeptDevice kept) => kept.Device.Value + (kept.Switch is { } manual ? $" (past {manual}: work for an electrician)" : "");

    /// <summary>What a device that cannot be served lacks.</summary>
    public static string Lack(UnservedDevice unserved) =>
        unserved.Shortfall is { } shortfall
            ? $"lacks {Figures.Decibels(shortfall)} dB even from {unserved.BestRelay}"
            : $"hears {unserved.BestRelay} well, but the way would take too many hops";
}
