using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Propagation;
using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>Takes the difference of two budgets apart.</summary>
internal static class BandDifferences
{
    /// <summary>By how much the margin of the first budget exceeds that of the second, part by part; null when there is no budget to compare.</summary>
    public static BandDifference? Between(Network firstNetwork, Budget? first, Network secondNetwork, Budget? second)
    {
        if (first is null || second is null) return null;

        Decibels firstMetre = OneMetre(secondNetwork) - OneMetre(firstNetwork);
        return new BandDifference
        {
            FreeSpace = firstMetre,
            Distance = Sum(second, LossKind.Distance) - Sum(first, LossKind.Distance) - firstMetre,
            Walls = WallsOf(second) - WallsOf(first),
            Mounting = Sum(second, LossKind.Mounting) - Sum(first, LossKind.Mounting),
            Power = first.TransmitPower - second.TransmitPower + (2 * (first.AntennaGain - second.AntennaGain)),
            Sensitivity = second.UndisturbedRequired - first.UndisturbedRequired,
            Interference = second.Disturbance - first.Disturbance,
        };
    }

    private static Decibels OneMetre(Network network) => new(FreeSpace.LossDb(1, network.Carrier.Megahertz));

    private static Decibels Sum(Budget budget, LossKind kind) => new(budget.Losses.Where(loss => loss.Item.Kind == kind).Sum(loss => loss.Item.Loss.Value));

    private static Decibels WallsOf(Budget budget) => budget.Link.PathLoss.Total - Sum(budget, LossKind.Distance) - Sum(budget, LossKind.Mounting);
}
