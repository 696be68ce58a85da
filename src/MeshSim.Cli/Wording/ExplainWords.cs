using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Mesh.Outages;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>Why a device drops out, in sentences.</summary>
internal static class ExplainWords
{
    /// <summary>More outages than this are counted, not listed.</summary>
    private const int MostListed = 2;

    /// <summary>Whether the device is the coordinator itself.</summary>
    public static bool IsCoordinator(DeviceExplanation answer) => answer.Device.Id == answer.Coverage.Network.Coordinator;

    /// <summary>What a person calls a device; the one that is carried around has no name in the home.</summary>
    public static string NameOf(DeviceId id) => id.Value;

    /// <summary>The verdict, the main reason and the best fix.</summary>
    public static string Answer(DeviceExplanation answer)
    {
        string id = answer.Device.Id.Value, coordinator = answer.Coverage.Network.Coordinator.Value;
        if (!answer.Now.IsOn) return $"{id} has no power in this state, so there is nothing to explain.";
        if (IsCoordinator(answer)) return $"{id} is the coordinator itself; meshsim routes tells whom it reaches.";

        string verdict = answer.Now.IsReached ? Reached(answer) : Unreached(answer);
        return $"{id} ({CoverageWords.Place(answer.Device.Storey, answer.Device.Room)}) {verdict}{Reason(answer)}{Advice(answer)}";

        string Reached(DeviceExplanation reached)
        {
            int ways = reached.Now.Ways;
            string spare = FormattableString.Invariant($"reaches {coordinator} with {Figures.Decibels(reached.Now.Margin)} dB on its weakest link, {ways} {(ways == 1 ? "way" : "ways")}");
            return reached.Now.Outages.Drops.IsEmpty ? $"is fine: it {spare}, and no outage but the hub's own drops it." : $"{spare}, but it drops in {Outages(reached.Now.Outages)}.";
        }
    }

    /// <summary>What is said of devices that people rely on for their lives.</summary>
    public const string NothingForAlarms = "Alarms must not depend on such a network: nothing is judged or proposed for them.";

    /// <summary>Further lines: what drops it, and how other networks would do.</summary>
    public static IEnumerable<string> Situations(DeviceExplanation answer)
    {
        if (answer.IsAlarm) yield return "It is an alarm, as its name says. " + NothingForAlarms;
        if (!answer.Now.IsOn || IsCoordinator(answer)) yield break;
        if (answer.Now.IsReached && answer.Now.Outages.Drops.Length > 0) yield return $"Drops in: {AllOutages(answer.Now.Outages)}.";
        if (answer.Elsewhere.Length > 0)
            yield return $"In the other networks of the home, at the same place: {string.Join("; ", answer.Elsewhere.Select(other => Elsewhere(answer, other)))}.";
        if (!answer.IsAlarm && answer.Tried > 0 && answer.Fixes.IsEmpty) yield return $"No single change helps ({Figures.Counted(answer.Tried, "change")} tried).";
        if (!answer.Now.IsReached && !answer.CanBeReached) yield return NoNetwork(answer);
    }

    /// <summary>Outages, the first few by name, such as "bedtime (state), landing switch (switch) and 3 more"; "none" for none.</summary>
    public static string Outages(DeviceOutages outages)
    {
        if (outages.Drops.IsEmpty) return "none";
        string names = string.Join(", ", outages.Drops.Take(MostListed).Select(Name));
        return outages.Drops.Length > MostListed ? FormattableString.Invariant($"{names} and {outages.Drops.Length - MostListed} more") : names;
    }

    /// <summary>A loss in words for a sentence, such as "the wall hall | kitchen".</summary>
    public static string Loss(LossItem item) => item.Kind switch
    {
        LossKind.Wall => $"the wall {item.Name}",
        LossKind.Mounting => $"the mounting of {item.Name}",
        _ => $"the {item.Name}",
    };

    /// <summary>What costs most on the way, such as " Besides distance, the floor of loft costs most: 38.0 dB of 90.7 dB."; or what disturbs the receiver where that costs more.</summary>
    public static string Dearest(Budget? budget)
    {
        if (budget is null) return "";
        if (budget.Disturbance > (budget.Dearest?.Item.Loss ?? Decibels.Zero))
        {
            string disturber = budget.Cause == RequirementCause.HubNoise ? "USB 3 noise" : "Wi-Fi in the channel";
            return $" Besides distance, {disturber} costs most: {budget.Receiver} needs {Figures.Decibels(budget.Disturbance)} dB more because of it.";
        }

        return budget.Dearest is { } dearest
            ? $" Besides distance, {Loss(dearest.Item)} costs most: {Figures.Decibels(dearest.Item.Loss)} dB of {Figures.Decibels(budget.Link.PathLoss.Total)} dB."
            : "";
    }

    private static string AllOutages(DeviceOutages outages) => string.Join(", ", outages.Drops.Select(Name));

    private static string Name(Outage outage) => $"{outage.Name} ({OutageWords.Kind(outage.Kind)})";

    private static string Unreached(DeviceExplanation answer)
    {
        string coordinator = answer.Coverage.Network.Coordinator.Value;
        if (answer.Now.Reach is { } reach && answer.Now.Link is not null) return $"cannot be reached: it {Shortfall.InWords(answer.Coverage, reach)}.";
        return $"cannot be reached: {coordinator} is off or missing, so the network has nobody to speak to.";
    }

    private static string Reason(DeviceExplanation answer) => answer.Now.IsReached ? "" : Dearest(answer.Budget);

    private static string Advice(DeviceExplanation answer)
    {
        if (answer.Fixes.IsEmpty) return "";
        DeviceFix best = answer.Fixes[0];
        return answer.Now.IsReached || best.After.IsReached
            ? $" What helps best: {best.Fix.Words}."
            : $" No single change serves it; what comes nearest: {best.Fix.Words}.";
    }

    private static string Elsewhere(DeviceExplanation answer, (Network Network, DeviceStanding Standing) other)
    {
        string name = $"{other.Network.Name} ({other.Network.Carrier})";
        if (other.Standing.IsReached) return $"{name} reaches it with {Figures.Decibels(other.Standing.Margin)} dB";
        Decibels lack = answer.Coverage.DesignMargin - other.Standing.Margin;
        return double.IsFinite(lack.Value) && lack > Decibels.Zero ? $"{name} lacks {Figures.Decibels(lack)} dB" : $"{name} does not reach it";
    }

    private static string NoNetwork(DeviceExplanation answer)
    {
        Decibels best = answer.Elsewhere.Select(other => other.Standing.Margin).Append(answer.Now.Margin).Max();
        Decibels lack = answer.Coverage.DesignMargin - best;
        return double.IsFinite(lack.Value)
            ? $"No network of the home reaches this place: {Figures.Decibels(lack)} dB are missing in the best of them."
            : "No network of the home reaches this place, and none has anybody near enough to say by how much.";
    }
}
