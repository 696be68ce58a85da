using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>The site of the hub in sentences.</summary>
internal static class HubWords
{
    /// <summary>The answer in one line: where, what it takes, what is proven.</summary>
    public static string Answer(HubPlacement hub)
    {
        HubSite best = hub.Best, present = hub.Present;
        return best.Outlet is null
            ? $"Leave the hub where it is: {Needs(best)} ({Proof(hub)})."
            : $"Move the hub to {RepeaterWords.Where(best.Outlet)}: {Needs(best)} ({Proof(hub)}). Where it is now: {Needs(present)}.";
    }

    /// <summary>What standing apart would bring; null when nothing.</summary>
    public static string? Apart(HubPlacement hub)
    {
        if (!hub.IsApartBetter) return null;
        var parts = hub.Apart.Select(group => $"{NameList.Spoken([.. group.Networks.Select(name => name.Value)])} {PlaceOf(group.Site)} ({Needs(group.Site)})");
        return $"Sticks that stand apart do better: {string.Join("; ", parts)}.";
    }

    /// <summary>What to plug in with the hub at its best site, and where it is now; empty where that is nothing.</summary>
    public static IEnumerable<string> Repeaters(HubPlacement hub)
    {
        if (Placed(hub.Best) is { Length: > 0 } best) yield return $"Repeaters with the hub {PlaceOf(hub.Best)}: {best}.";
        if (hub.Best != hub.Present && Placed(hub.Present) is { Length: > 0 } present) yield return $"Repeaters with the hub {PlaceOf(hub.Present)}: {present}.";
    }

    /// <summary>Whom the best site leaves without what is asked, by name, and what tells why; empty where nobody.</summary>
    public static IEnumerable<string> Left(HubPlacement hub)
    {
        HubSite best = hub.Best;
        if (Named(best, network => network.OutOfReach) is { Length: > 0 } noWay) yield return $"No way with the hub {PlaceOf(best)}: {noWay}.";
        if (Named(best, network => network.Unserved.RemoveRange(network.OutOfReach)) is { Length: > 0 } notAll)
            yield return $"Not all that is asked with the hub {PlaceOf(best)}: {notAll}.";
        if (!hub.ServesAll) yield return $"repeaters tells why, and what giving in would help{(best.Outlet is null ? "" : ", when run on what --apply writes")}.";
    }

    /// <summary>How the figures came about.</summary>
    public static string Basis(Home home, StudyOptions options, HubPlacement hub)
    {
        string state = options.State is { } s ? $", state {s.Name}" : "";
        Network[] networks = [.. home.Networks.Where(network => hub.Networks.Contains(network.Name))];

        // In a star no device speaks over another, so there is one way to ask for.
        PlacementGoals goals = networks.All(network => network.Radio.Topology == Topology.Star) ? hub.Goals with { Ways = 1 } : hub.Goals;
        return $"{(hub.Networks.Length == 1 ? "Network" : "Networks")} {NameList.Spoken([.. hub.Networks.Select(name => name.Value)])}, model {ModelNames.Of(options.Model)}, "
            + $"{Margins(networks, home)}{state}. {GoalWords.Asked(goals, hub.StatesHeld)}. "
            + FormattableString.Invariant($"A repeater costs {home.Costs.Repeater}, moving the hub {home.Costs.HubMove}, a switch given up {home.Costs.SwitchGivenUp}");
    }

    /// <summary>A site in words.</summary>
    public static string PlaceOf(HubSite site) => site.Outlet is { } outlet ? $"at {RepeaterWords.Where(outlet)}" : "where it is";

    private static string Margins(Network[] networks, Home home) =>
        networks.All(network => network.Fit is null)
            ? $"design margin {home.Parameters.DesignMargin}"
            : string.Join(", ", networks.Select(network => $"design margin of {network.Name} {home.ParametersOf(network).DesignMargin}{CoverageWords.Fitted(network)}"));

    private static string Placed(HubSite site) => string.Join("; ", site.Networks.Where(network => !network.Repeaters.IsEmpty || !network.KeptOn.IsEmpty).Select(network =>
        $"{network.Network}: {string.Join(", ", network.Repeaters.Select(outlet => outlet.Id.Value).Concat(network.KeptOn.Select(device => $"{device} kept powered")))}"));

    private static string Named(HubSite site, Func<HubNetwork, ImmutableArray<DeviceId>> devices) => string.Join("; ", site.Networks.Where(network => !devices(network).IsEmpty)
        .Select(network => $"{network.Network}: {NameList.SpokenShort([.. devices(network).Select(id => id.Value)])}"));

    private static string Proof(HubPlacement hub)
    {
        string all = Figures.Counted(hub.SitesConsidered, "site");
        if (hub.SitesConsidered == 1) return "there is no other site to try";
        if (hub.Open is not { } open) return hub.SitesLeftOut == 0 ? $"no other of {all} is better" : $"none of {all} serves more devices, or as many for less";
        string least = open.OutOfReach < hub.Best.OutOfReach ? FormattableString.Invariant($"none leaves fewer than {Figures.Counted(open.OutOfReach, "device")} without a way")
            : open.Unserved < hub.Best.Unserved ? FormattableString.Invariant($"none leaves fewer than {Figures.Counted(open.Unserved, "device")} without all that is asked")
            : FormattableString.Invariant($"none costs less than {open.Cost}");
        return $"{Figures.Count(open.Count)} of {all} may be better, but {least}";
    }

    /// <summary>What a site takes and whom it leaves.</summary>
    public static string Needs(HubSite site)
    {
        int kept = site.Networks.Sum(network => network.KeptOn.Length);
        string repeaters = site.Repeaters == 0 ? "no repeater" : Figures.Counted(site.Repeaters, "repeater");
        string needs = repeaters + (kept == 0 ? "" : $" and {Figures.Counted(kept, "device")} kept powered")
            + FormattableString.Invariant($", cost {site.Cost}{(site.IsProven ? "" : " or less")}");
        string[] left =
        [
            .. site.OutOfReach == 0 ? Array.Empty<string>() : [$"{Figures.Counted(site.OutOfReach, "device")} without a way"],
            .. site.Unserved == site.OutOfReach ? Array.Empty<string>() : [$"{Figures.Counted(site.Unserved - site.OutOfReach, "device")} with a way but not all that is asked"],
        ];
        string dark = site.DarkIn.IsEmpty ? "" : $", with no power there in {NameList.Spoken(site.DarkIn)}";
        return string.Join(", ", left.Prepend(needs)) + dark;
    }
}
