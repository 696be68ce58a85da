using MeshSim.Mesh.Outages;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>What outages do, in sentences.</summary>
internal static class OutageWords
{
    /// <summary>The answer in one line: states that must hold first, then what else drops a device.</summary>
    public static string Answer(NetworkRehearsal rehearsal)
    {
        NetworkCoverage coverage = rehearsal.Coverage;
        if (coverage.Devices.IsEmpty) return CoverageWords.Answer(coverage);

        Rehearsal[] mustHold = [.. rehearsal.Rehearsals.Where(r => r.Outage.MustHold)];
        string[] broken = [.. rehearsal.Broken.Select(r => $"{r.Outage.Name} must hold and drops {NameList.Short(r.Dropped)}.")];
        string states = broken.Length > 0 ? string.Join(' ', broken)
            : mustHold.Length > 0 ? $"{NameList.Spoken([.. mustHold.Select(r => r.Outage.Name)])} must hold and {(mustHold.Length == 1 ? "does" : "do")}."
            : "No state is marked that must hold.";
        string[] others =
        [
            .. from summary in OutageSummary.Of(rehearsal.Rehearsals)
               where summary.Kind != OutageKind.Hub
               where summary.Dropping > 0
               orderby summary.Kind
               select $"{Figures.Count(summary.Dropping)} of {Figures.Count(summary.Rehearsed)} {Plural(summary.Kind)}",
        ];
        return states + (others.Length == 0
            ? " Nothing but the loss of the coordinator drops a device."
            : $" What drops a device: {NameList.Spoken(others)}.");
    }

    /// <summary>A kind in one word or two.</summary>
    public static string Kind(OutageKind kind) => kind switch
    {
        OutageKind.State => "state",
        OutageKind.Switch => "switch",
        OutageKind.Circuit => "circuit",
        OutageKind.Router => "router",
        OutageKind.Hub => "hub",
        _ => "pair of routers",
    };

    /// <summary>Who drops, such as "nobody", "a, b" or "all 20 with a reliable way".</summary>
    public static string Dropped(NetworkCoverage coverage, Rehearsal rehearsal)
    {
        int reached = coverage.Devices.Count(reach => reach.IsReached);
        if (rehearsal.Dropped.IsEmpty) return "nobody";
        return rehearsal.Dropped.Length > 1 && rehearsal.Dropped.Length == reached
            ? FormattableString.Invariant($"all {reached} with a reliable way")
            : NameList.Short(rehearsal.Dropped);
    }

    private static string Plural(OutageKind kind) => kind switch
    {
        OutageKind.Switch => "switches",
        OutageKind.Pair => "pairs of routers",
        _ => Kind(kind) + "s",
    };
}
