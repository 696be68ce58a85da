using MeshSim.Placement;

namespace MeshSim.Cli.Wording;

/// <summary>What is said of states that leave a coordinator without power.</summary>
internal static class CoordinatorWords
{
    /// <summary>That nobody is served in a state, why, and what helps.</summary>
    /// <param name="coordinator">The coordinator's id.</param>
    /// <param name="outage">The state.</param>
    public static string Of(string coordinator, CoordinatorOutage outage) =>
        $"In {outage.State} nobody can be served: coordinator {coordinator} has no power{Why(outage)}. {Help(outage)}";

    private static string Why(CoordinatorOutage outage) => outage.Cause switch
    {
        PowerLoss.Circuit => $" while circuit {outage.Source} is off",
        PowerLoss.Switch => $" while {outage.Source} is off",
        PowerLoss.ByName => "; the state turns it off by name",
        _ => throw new InvalidOperationException($"no such cause: {outage.Cause}"),
    };

    private static string Help(CoordinatorOutage outage) => outage switch
    {
        { Cause: PowerLoss.ByName } => "Only leaving it on helps.",
        { OutletsWithPower: 0 } => "No outlet has power then: only a backup supply for it helps.",
        { Cause: PowerLoss.Circuit } => $"What helps is moving it to another circuit ({Outlets(outage)}) or a backup supply for it.",
        _ => $"What helps is moving it to an outlet ({Outlets(outage)}), feeding it past the switch (work for an electrician), or a backup supply for it.",
    };

    private static string Outlets(CoordinatorOutage outage) =>
        $"{(outage.OutletsWithPower == 1 ? "1 outlet has" : $"{Figures.Counted(outage.OutletsWithPower, "outlet")} have")} power then; see hub";
}
