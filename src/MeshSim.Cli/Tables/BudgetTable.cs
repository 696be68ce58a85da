using System.Collections.Immutable;
using System.Globalization;
using MeshSim.Cli.Wording;
using MeshSim.Dropouts;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Cli.Tables;

/// <summary>A link from the transmitter to the level that the receiver needs, a line for each thing that counts.</summary>
internal static class BudgetTable
{
    /// <summary>The table: what each thing adds or takes, the level after it, and its share of all that is lost.</summary>
    public static Table Of(Budget budget)
    {
        PowerLevel level = budget.TransmitPower;
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        rows.Add([$"{ExplainWords.NameOf(budget.Sender)} sends", "", Figures.Dbm(level), ""]);
        Step($"antenna of {ExplainWords.NameOf(budget.Sender)}", budget.AntennaGain, "");
        foreach (BudgetLoss loss in budget.Losses.Where(IsShown)) Step(Words(budget, loss.Item), -loss.Item.Loss, Figures.Percent(loss.Share));
        Step($"antenna of {ExplainWords.NameOf(budget.Receiver)}: this arrives", budget.AntennaGain, "");
        rows.Add([$"{ExplainWords.NameOf(budget.Receiver)} needs, {Cause(budget)}", "", Figures.Dbm(budget.UndisturbedRequired), ""]);
        if (budget.Disturbance > Decibels.Zero)
            rows.Add([Disturbance(budget.Cause), Signed(budget.Disturbance), Figures.Dbm(budget.Required), ""]);
        rows.Add(["MARGIN: what arrives above what is needed", Signed(budget.Margin), "", ""]);
        if (budget.Link.Uncertainty is { } uncertainty && uncertainty != default)
            rows.Add([$"may be off by (above 0 in {Figures.Percent(budget.Link.Holds)} of 100 houses)", $"±{Figures.Decibels(uncertainty.Total)}", "", ""]);
        rows.Add(["wanted, to be relied on (design margin)", Signed(budget.DesignMargin), "", ""]);
        rows.Add([budget.Missing > Decibels.Zero ? "MISSING" : "TO SPARE", Figures.Tenths(Math.Abs(budget.Missing.Value)), "", ""]);
        return new([new("From transmitter to receiver"), new("dB", true), new("Level dBm", true), new("Share of loss %", true)], rows.ToImmutable());

        void Step(string words, Decibels gain, string share)
        {
            level += gain;
            rows.Add([words, Signed(gain), Figures.Dbm(level), share]);
        }
    }

    // A way round that saves nothing is no news.
    private static bool IsShown(BudgetLoss loss) => loss.Item.Kind != LossKind.Detour || Signed(loss.Item.Loss) != Signed(Decibels.Zero);

    /// <summary>A loss in words, such as "wall hall | kitchen (brick-half, 23 degrees)".</summary>
    private static string Words(Budget budget, LossItem item)
    {
        string kind = item.Kind switch
        {
            LossKind.Distance => string.Create(CultureInfo.InvariantCulture, $"distance, {budget.Link.PathLoss.DistanceMetres:0.0} m of air"),
            LossKind.Wall => $"wall {item.Name}",
            LossKind.Detour => $"{item.Name}, through doors and corridors",
            LossKind.Mounting => $"mounting of {item.Name}",
            _ => item.Name,
        };
        string[] details =
        [
            .. item.Construction is { } construction ? [construction.Value] : Array.Empty<string>(),
            .. item.AngleDegrees is { } angle ? [string.Create(CultureInfo.InvariantCulture, $"{angle:0} degrees")] : Array.Empty<string>(),
        ];
        return details.Length == 0 ? kind : $"{kind} ({string.Join(", ", details)})";
    }

    private static string Cause(Budget budget) => budget.Cause == RequirementCause.Noise ? "set by noise" : "its stated sensitivity";

    private static string Disturbance(RequirementCause cause) => cause switch
    {
        RequirementCause.HubNoise => "more, because of USB 3 noise beside it",
        _ => "more, because of Wi-Fi in its channel",
    };

    private static string Signed(Decibels value) =>
        Math.Round(value.Value, 1).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture);
}
