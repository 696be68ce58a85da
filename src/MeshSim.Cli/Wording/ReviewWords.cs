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

    /// <summary>A paragraph for each repeater: why it is there, what it has to spare, where else it could be.</summary>
    public static IEnumerable<string> Sites(RepeaterPlacement placement, PlacementReview review)
    {
        for (int i = 0; i < placement.Repeaters.Length; i++)
        {
            string firm = i < review.Sites.Length ? $" {Spare(review.Sites[i])} {ZoneWords.Of(review.Zones[i])} {Next(placement, review.Sites[i])}" : "";
            yield return FormattableString.Invariant($"{i + 1}. {placement.Repeaters[i].Outlet.Id} is {RepeaterWords.Purpose(placement.Repeaters[i])}.{firm}");
        }
    }

    /// <summary>What the whole is worth: chance, then the pessimistic case.</summary>
    public static IEnumerable<string> Whole(PlacementReview review)
    {
        if (review.Chances is { } chances) yield return Chance(chances);
        if (review.Pessimistic is { } pessimistic) yield return Pessimistic(pessimistic);
    }

    /// <summary>The least likely devices everyday, such as "workshop-plug 99.9 % and doorbell 97.2 %"; empty where none ever fails.</summary>
    public static string Doubtful(GoalChances chances) => NameList.Spoken(
        [.. chances.Devices.Where(device => device.Connected < device.Draws).Take(MostDoubtful).Select(device => $"{device.Device} {Percent(device.Probability)}")]);

    /// <summary>How the chances came about.</summary>
    public static string Draws(RobustnessOptions options) =>
        FormattableString.Invariant($"{options.Draws} draws of losses and shadowing, seed {options.Seed}; in brackets where the share lies with 95 % confidence");

    private static string Chance(GoalChances chances)
    {
        string doubtful = Doubtful(chances);
        return $"In {WithInterval(chances.Goal.Both)} of houses of this plan all that can be had works at once, in {Percent(chances.Goal.Shadowing.Probability)} if losses are as computed. "
            + $"In {Percent(chances.Goal.Losses.Probability)} it does so with the whole design margin left."
            + (doubtful.Length == 0 ? "" : $" Least likely to have a way everyday: {doubtful}.")
            + $" ({Draws(chances.Options)}.)";
    }

    /// <summary>What would be recommended if everything cost more.</summary>
    public static string Pessimistic(PessimisticPlacement pessimistic)
    {
        string fails = pessimistic.Fails.IsEmpty ? "" : $"{Names(pessimistic.Fails)} cannot have all that is asked, whatever is plugged in; for the others ";
        string proof = pessimistic.IsProven ? "" : " (cheaper is not ruled out)";
        string then = pessimistic.IsSame
            ? "the same is recommended"
            : pessimistic.Repeaters.IsEmpty && pessimistic.KeptOn.IsEmpty
                ? "no choice of outlets helps"
                : $"the recommendation is {What(pessimistic.Repeaters, pessimistic.KeptOn)}{proof}, {CostChange(pessimistic.CostChange)}";
        string lost = pessimistic.LostAsRecommended.IsEmpty
            ? "nobody is lost by what is recommended here"
            : $"what is recommended here loses {NameList.SpokenShort([.. pessimistic.LostAsRecommended.Select(id => id.Value)])} in some case";
        return $"If exponent, walls, floors and mountings all cost one standard deviation more, {fails}{then}; {lost}.";
    }

    private static string Spare(SiteStanding site) => site.Spare is { } spare ? $"{Figures.Decibels(spare)} dB to spare." : "nobody needs it alone.";

    /// <summary>What to do without an outlet.</summary>
    private static string Next(RepeaterPlacement placement, SiteStanding site)
    {
        NextBest next = site.Next;
        if (next.InItsPlace is { } other) return $"Second best: {RepeaterWords.Where(other)}, {Compared(site.Spare, next.Spare!.Value)}.";
        string proof = next.IsProven ? "" : " (cheaper is not ruled out)";
        string then = IsRest(placement, site) ? "the rest alone" : What(next.Repeaters, next.KeptOn);
        string rest = $"{then}{proof}, {CostChange(next.CostChange)}";
        return next.Fails.IsEmpty
            ? $"Without this outlet it takes {rest}."
            : $"No other outlet takes its place: the best without it is {rest}, and leaves {Left(next.Fails)}.";
    }

    /// <summary>Whether nothing but what else is recommended remains without an outlet, and that is something.</summary>
    private static bool IsRest(RepeaterPlacement placement, SiteStanding site) =>
        placement.Repeaters.Length + placement.KeptOn.Length > 1
        && site.Next.Repeaters.SequenceEqual(placement.Repeaters.Select(repeater => repeater.Outlet).Where(outlet => outlet != site.Outlet))
        && site.Next.KeptOn.SequenceEqual(placement.KeptOn.Select(kept => kept.Device));

    /// <summary>Who has no way at all, and who has one but not all that is asked, such as "shed-plug without a way and lamp without all that is asked".</summary>
    private static string Left(ImmutableArray<UnservedDevice> fails)
    {
        ImmutableArray<UnservedDevice> none = [.. fails.Where(fail => fail.Case == default)];
        HashSet<Devices.DeviceId> outOfReach = [.. none.Select(fail => fail.Device)];
        ImmutableArray<UnservedDevice> some = [.. fails.Where(fail => !outOfReach.Contains(fail.Device))];
        string[] told =
        [
            .. none.IsEmpty ? Array.Empty<string>() : [$"{Names(none)} without a way"],
            .. some.IsEmpty ? Array.Empty<string>() : [$"{Names(some)} without all that is asked"],
        ];
        return NameList.Spoken(told);
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

    private static string Names(ImmutableArray<UnservedDevice> fails) => NameList.SpokenShort([.. fails.Select(u => u.Device.Value).Distinct()]);

    /// <summary>A share and where it lies, such as "98.3 % [98.0 to 98.5]".</summary>
    public static string WithInterval(DrawnShare share) =>
        FormattableString.Invariant($"{Percent(share.Probability)} [{100 * share.Interval.Low:0.0} to {100 * share.Interval.High:0.0}]");

    /// <summary>Only what always or never happened is called 100 or 0.</summary>
    public static string Percent(double share) => share switch
    {
        < 1 and >= 0.9995 => "over 99.9 %",
        > 0 and < 0.0005 => "under 0.1 %",
        _ => FormattableString.Invariant($"{100 * share:0.0} %"),
    };
}
