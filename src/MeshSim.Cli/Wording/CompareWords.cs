using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Devices;
using MeshSim.Propagation;
using MeshSim.Studies;
using MeshSim.Studies.Changes;

namespace MeshSim.Cli.Wording;

/// <summary>Two homes compared, in sentences.</summary>
internal static class CompareWords
{
    /// <summary>The answer in one line: how much was changed, and whether anything got worse.</summary>
    public static string Answer(HomeComparison comparison)
    {
        HomeChanges changes = comparison.Changes;
        if (!changes.Any) return "The two homes are the same.";

        (int Count, string Words)[] counts =
        [
            (changes.Added.Length, "added"),
            (changes.Gone.Length, "gone"),
            (changes.Moved.Length, "moved"),
            (changes.Changed.Select(change => change.Subject).Distinct(StringComparer.Ordinal).Count(), "changed"),
        ];
        string[] said = [.. counts.Where(part => part.Count > 0).Select(part => $"{Figures.Count(part.Count)} {part.Words}")];
        string devices = said.Length == 0 ? "No device was changed" : $"Devices: {string.Join(", ", said)}";
        string verdict = comparison.IsWorse
            ? $"Something got WORSE in {NameList.Spoken([.. comparison.Networks.Where(network => network.IsWorse).Select(NameOf)])}"
            : "Nothing got worse";
        return $"{devices}. {verdict}.";
    }

    /// <summary>How the figures came about.</summary>
    public static string Basis(HomeComparison comparison) =>
        $"Model {ModelNames.Of(comparison.Options.Model)}, everything on and every door closed but in the states and outages; "
        + string.Join("; ", comparison.Networks.Select(network => $"{NameOf(network)}: {Margins(network.Before.Coverage, network.After.Coverage)}"));

    /// <summary>What cannot be compared, or compares with another building; one sentence each.</summary>
    public static ImmutableArray<string> Caveats(HomeComparison comparison)
    {
        (Home before, Home after) = (comparison.Before, comparison.After);
        string[] storeys = [.. comparison.Changes.Plan.Where(change => change.HidesTheMap).Select(change => change.Subject).Distinct(StringComparer.Ordinal)];
        string[] oneSided =
        [
            .. after.Networks.Where(network => before.Networks.All(other => other.Name != network.Name))
                .Concat(before.Networks.Where(network => after.Networks.All(other => other.Name != network.Name)))
                .Select(network => network.Name.Value),
        ];
        return
        [
            .. before.Name == after.Name ? [] : ImmutableArray.Create($"The homes have different names: \"{before.Name}\" before, \"{after.Name}\" after."),
            .. comparison.Changes.Plan.IsEmpty ? [] : ImmutableArray.Create("The building itself is different, so margins differ by more than what was moved in it."),
            .. storeys.Length == 0
                ? []
                : ImmutableArray.Create($"No map of the difference for {NameList.Spoken(storeys)}: there is no such storey on one side, or its points cannot be laid over each other."),
            .. oneSided.Length == 0 ? [] : ImmutableArray.Create($"Not compared, because only one of the homes has it: {NameList.Spoken(oneSided)}."),
        ];
    }

    /// <summary>What came of it in one network.</summary>
    public static string Network(NetworkChanges network)
    {
        string[] parts =
        [
            .. Part(network.Devices.Count(device => device.Way == WayChange.Lost), "device", "lost its reliable way", "lost their reliable way"),
            .. Part(network.Devices.Count(device => device.Way == WayChange.Won), "device", "won a reliable way", "won a reliable way"),
            .. Part(network.Devices.Count(device => device.Way == WayChange.LeftWithOneWay), "device", "is left with one way", "are left with one way"),
            .. Part(network.Devices.Count(device => device.Way == WayChange.GainedSecondWay), "device", "gained a second way", "gained a second way"),
            .. Part(network.Devices.Count(device => device.Way == WayChange.Added && device.IsWorse), "new device", "has no reliable way", "have no reliable way"),
            .. Part(network.Outages.Count(outage => outage.IsWorse), "outage", "drops somebody who stayed before", "drop somebody who stayed before"),
            .. Part(network.Outages.Count(outage => !outage.IsWorse), "outage", "drops fewer", "drop fewer"),
            .. Part(network.Rooms.Count(room => room.IsWorse), "room", "is darker", "are darker"),
            .. Part(network.Rooms.Count(room => room.IsBetter), "room", "is brighter", "are brighter"),
        ];
        string margins = network.Devices.Any(device => device.Way == WayChange.Changed) ? "only ways or margins that stay reliable changed" : "all as before";
        return $"{NameOf(network)}: {(parts.Length == 0 ? margins : NameList.Spoken(parts))}.";
    }

    private static string Margins(NetworkCoverage before, NetworkCoverage after)
    {
        string then = $"design margin {before.DesignMargin}{CoverageWords.Fitted(before.Network)}", now = $"design margin {after.DesignMargin}{CoverageWords.Fitted(after.Network)}";
        return then == now ? now : $"{then} before, {now} after";
    }

    private static IEnumerable<string> Part(int count, string noun, string one, string many) =>
        count == 0 ? [] : [$"{Figures.Counted(count, noun)} {(count == 1 ? one : many)}"];

    private static string NameOf(NetworkChanges network) => network.After.Coverage.Network.Name.Value;
}
