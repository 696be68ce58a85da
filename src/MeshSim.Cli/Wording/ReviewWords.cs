using System.Collections.Immutable;
using MeshSim.Mesh.Reliability;
using MeshSim.Placement;
using MeshSim.Placement.Robustness;
using MeshSim.Placement.Zones;
using MeshSim.Quantities;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Wording;

/// <summary>How firm a recommendation stands, in sentences.</summary>
internal static class ReviewWords
{
    /// <summary>The least likely devices that are named.</summary>
    private const int MostDoubtful = 3;

    /// <summary>All sentences: one paragraph for each repeater, then chance, then the pessimistic case.</summary>
    public static IEnumerable<string> Of(PlacementReview review)
    {
        for (int i = 0; i < review.Sites.Length; i++)
            yield return FormattableString.Invariant($"{i + 1}. {review.Sites[i].Outlet.Id}: {Spare(review.Sites[i])} {ZoneWords.Of(review.Zones[i])} {Next(review.Sites[i])}");
        if (review.Chances is { } chances) yield return Chance(chances);
        if (review.Pessimistic is { } pessimistic) yield return Pessimistic(pessimistic);
    }

    /// <summary>How likely a recommendation keeps its promise.</summary>
    public static string Chance(GoalChances chances)
    {
        string[] doubtful = [.. chances.Devices.Where(device => device.Connected < device.Draws).Take(MostDoubtful).Select(device => $"{device.Device} {Percent(device.Probability)}")];
        return $"All devices that can be served have all of this at once in {WithInterval(chances.Goal.Both)} of draws of shadowing and losses, in {WithInterval(chances.Goal.Shadowing)} with losses as computed; "
            + $"the plan itself, design margin included, stands in {WithInterval(chances.Goal.Losses)} of draws of losses alone."
            + (doubtful.Length == 0 ? "" : $" Least likely to have a way everyday: {NameList.Spoken(doubtful)}.")
            + FormattableString.Invariant($" ({chances.Options.Draws} draws, seed {chances.Options.Seed}; in brackets where the share lies with 95 % confidence.)");
    }

    private static string Pessimistic(PessimisticPlacement pessimistic)
    {
        const string Case = "If exponent, walls, floors and mountings all cost one standard deviation more";
        string proof = pessimistic.IsProven ? "" : " (cheaper is not ruled out)";
        string then = pessimistic.IsSame
            ? "the same is recommended"
            : pessimistic.Repeaters.IsEmpty && pessimistic.KeptOn.IsEmpty
                ? "no choice of outlets helps"
                : $"the recommendation is {What(pessimistic.Repeaters, pessimistic.KeptOn)}{proof}, {CostChange(pessimistic.CostChange)}";
        string lost = pessimistic.LostAsRecommended.IsEmpty
            ? "nobody is lost by what is recommended here"
            : $"what is recommended here loses {NameList.Spoken([.. pessimistic.LostAsRecommended.Select(id => id.Value)])} in some case";
        return $"{Case}, {then}; {lost}.{Fails(pessimistic.Fails, " Then not served: ")}";
    }

    private static string Spare(SiteStanding site) => site.Spare is { } spare ? $"{Figures.Decibels(spare)} dB to spare." : "nobody needs it alone.";

    /// <summary>What to do without an outlet.</summary>
    public static string Next(SiteStanding site)
    {
        NextBest next = site.Next;
        if (next.InItsPlace is { } other) return $"Second best: {RepeaterWords.Where(other)}, {Compared(site.Spare, next.Spare!.Value)}.";
        string proof = next.IsProven ? "" : " (cheaper is not ruled out)";
        string rest = next.Repeaters.IsEmpty && next.KeptOn.IsEmpty ? "nothing is left that helps" : $"it takes {What(next.Repeaters, next.KeptOn)}{proof}, {CostChange(next.CostChange)}";
        return next.Fails.IsEmpty ? $"Without this outlet {rest}." : $"No outlet takes its place: {rest}.{Fails(next.Fails, " Then not served: ")}";
    }

    private static string Compared(Decibels? spare, Decibels other)
    {
        double lessDb = (spare ?? other).Value - other.Value;
        return $"{Figures.Decibels(other)} dB to spare" + (lessDb > 0 ? $", {Figures.Decibels(new(lessDb))} dB less" : "");
    }

    private static string What(ImmutableArray<Devices.Outlet> repeaters, ImmutableArray<Devices.DeviceId> keptOn)
    {
        string add = repeaters.IsEmpty ? "no repeater" : $"{Figures.Counted(repeaters.Length, "repeater")} ({string.Join(", ", repeaters.Select(outlet => outlet.Id))})";
        return keptOn.IsEmpty ? add : $"{add} and {string.Join(", ", keptOn)} kept powered";
    }

    private static string CostChange(int change) => change switch
    {
        > 0 => FormattableString.Invariant($"cost {change} more"),
        < 0 => FormattableString.Invariant($"cost {-change} less"),
        _ => "at the same cost",
    };

    /// <summary>Who is out of reach everyday is not named again for other cases.</summary>
    private static string Fails(ImmutableArray<UnservedDevice> fails, string lead)
    {
        HashSet<Devices.DeviceId> everyday = [.. fails.Where(u => u.Case == default).Select(u => u.Device)];
        string[] named = [.. fails.Where(u => u.Case == default || !everyday.Contains(u.Device)).Select(u => $"{u.Device}{RepeaterWords.When(u.Case)} ({RepeaterWords.Lack(u)})")];
        return named.Length == 0 ? "" : $"{lead}{string.Join(", ", named)}.";
    }

    private static string WithInterval(DrawnShare share) =>
        FormattableString.Invariant($"{Percent(share.Probability)} [{100 * share.Interval.Low:0.0} to {100 * share.Interval.High:0.0}]");

    /// <summary>Only what always or never happened is called 100 or 0.</summary>
    private static string Percent(double share) => share switch
    {
        < 1 and >= 0.9995 => "over 99.9 %",
        > 0 and < 0.0005 => "under 0.1 %",
        _ => FormattableString.Invariant($"{100 * share:0.0} %"),
    };
}
