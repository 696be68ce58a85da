using MeshSim.Dropouts;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Cli.Wording;

/// <summary>A link budget in one sentence: what a table would say in a dozen lines.</summary>
internal static class BudgetWords
{
    /// <summary>Losses below this are summed up, not named.</summary>
    private static readonly Decibels WorthNaming = new(1);

    /// <summary>The losses on the way, such as "From a to b: distance 52.7 dB, the floor of loft 38.0 dB; 90.7 dB in all, and 10.7 dB too much.".</summary>
    public static string Losses(Budget budget)
    {
        BudgetLoss[] named = [.. budget.Losses.Where(loss => loss.Item.Loss >= WorthNaming)];
        double restDb = budget.Losses.Except(named).Sum(loss => loss.Item.Loss.Value);
        string[] items =
        [
            .. named.Select(loss => $"{Name(loss.Item)} {Figures.Decibels(loss.Item.Loss)} dB"),
            .. restDb > 0 ? [$"the rest {Figures.Tenths(restDb)} dB"] : Array.Empty<string>(),
        ];
        string disturbed = budget.Disturbance > Decibels.Zero ? $" What disturbs {budget.Receiver} adds {Figures.Decibels(budget.Disturbance)} dB to what it needs." : "";
        string verdict = budget.Missing > Decibels.Zero
            ? $"{Figures.Decibels(budget.Missing)} dB too much for the design margin"
            : $"{Figures.Decibels(new(-budget.Missing.Value))} dB to spare above the design margin";
        return $"From {budget.Sender} to {budget.Receiver}: {string.Join(", ", items)}; {Figures.Decibels(budget.Link.PathLoss.Total)} dB in all, {verdict}.{disturbed}";
    }

    private static string Name(LossItem item) => item.Kind == LossKind.Distance ? "distance" : ExplainWords.Loss(item);
}
