using System.Collections.Immutable;
using MeshSim.Mesh.Outages;
using MeshSim.Mesh.Routers;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>Who carries a network, in sentences.</summary>
internal static class RouterWords
{
    /// <summary>The answer in one line, such as "Replace by an always-on device, or bypass the switch: landing-bulb. Keep powered: kettle-plug. …".</summary>
    public static string Answer(NetworkRouters routers)
    {
        if (routers.Coverage.Network.Radio.Topology == Topology.Star)
            return $"Nobody carries anybody: every device of this network speaks to {routers.Coverage.Network.Coordinator} itself.";
        if (routers.Duties.IsEmpty) return $"Only {routers.Coverage.Network.Coordinator} carries the network: no other mains device is on.";

        string[] sentences =
        [
            .. Sentence("Replace by an always-on device, or bypass the switch", routers.Duties, RouterVerdict.Replace),
            .. Sentence("Keep powered", routers.Duties, RouterVerdict.Keep),
        ];
        int harmless = routers.Duties.Count(duty => duty.Verdict == RouterVerdict.Harmless);
        string rest = harmless == routers.Duties.Length
            ? "Any one mains device may be switched off: nobody loses the way."
            : $"Harmless to switch off, one at a time: {Figures.Count(harmless)} of {Figures.Counted(routers.Duties.Length, "mains device")}.";
        return string.Join(' ', sentences.Append(rest));
    }

    /// <summary>Which device would help most if it routed in the network.</summary>
    public static string Help(NetworkRouters routers)
    {
        if (routers.Considered == 0) return "No further mains device of the home could route here.";
        string asked = $"{Figures.Counted(routers.Considered, "further mains device")} of the home asked";
        if (routers.NewRouters.IsEmpty) return $"No device would gain if one of them routed here ({asked}).";

        NewRouter best = routers.NewRouters[0];
        return $"A router of this network at the place of {best.Device} would help most ({asked}).";
    }

    /// <summary>The verdict in one word.</summary>
    public static string Verdict(RouterVerdict verdict) => verdict switch
    {
        RouterVerdict.Keep => "keep",
        RouterVerdict.Replace => "replace",
        _ => "harmless",
    };

    /// <summary>Why, such as "roof-window-contact has no other way; missed when off in bedtime and by landing switch".</summary>
    public static string Why(RouterDuty duty)
    {
        string others = duty.NeededBy.IsEmpty
            ? WithoutDependants(duty)
            : $"{NameList.Short(duty.NeededBy)} {(duty.NeededBy.Length == 1 ? "has" : "have")} no other way";
        return duty.MissedIn.IsEmpty ? others : $"{others}; missed when off {NameList.Spoken([.. duty.MissedIn.Select(When)])}";
    }

    /// <summary>What takes its power, such as "landing switch (switch), bedtime (state)".</summary>
    public static string TakenBy(RouterDuty duty) => string.Join(", ", duty.TakenBy.Select(outage => $"{outage.Name} ({OutageWords.Kind(outage.Kind)})"));

    private static string WithoutDependants(RouterDuty duty)
    {
        if (!duty.Relays) return "relays nothing";
        if (!duty.IsReached) return $"{CoverageWords.NoReliableWay} itself";
        if (duty.MissedIn.Length > 0) return "one of several that stand in for each other";
        if (duty.LeavesOneWay.IsEmpty) return duty.Carries.IsEmpty ? "carries nobody" : "all that it carries have other ways";
        return $"nobody drops; one way is left to {NameList.Short(duty.LeavesOneWay)}";
    }

    private static string When(Outage outage) => outage.Kind == OutageKind.State ? $"in {outage.Name}" : $"by {outage.Name}";

    private static string[] Sentence(string advice, ImmutableArray<RouterDuty> duties, RouterVerdict verdict)
    {
        RouterDuty[] such = [.. duties.Where(duty => duty.Verdict == verdict)];
        return such.Length == 0 ? [] : [$"{advice}: {string.Join(", ", such.Select(duty => duty.Device))}."];
    }
}
