using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Dropouts;

/// <summary>Writes the budget of a link.</summary>
public static class Budgeting
{
    /// <summary>The budget of a link in its worse direction.</summary>
    /// <param name="network">The network.</param>
    /// <param name="link">A link of it.</param>
    /// <param name="designMargin">The margin that a link must have to count.</param>
    public static Budget Of(Network network, Link link, Decibels designMargin)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(link);

        Needs atTo = NeedsOf(network, link, link.To), atFrom = NeedsOf(network, link, link.From);
        bool isForward = link.Received - atTo.Level <= link.Reverse - atFrom.Level;
        Needs needs = isForward ? atTo : atFrom;
        PowerLevel received = isForward ? link.Received : link.Reverse;
        Decibels gain = network.Radio.AntennaGain, total = link.PathLoss.Total;
        return new Budget
        {
            Link = link,
            Sender = isForward ? link.From : link.To,
            Receiver = isForward ? link.To : link.From,
            TransmitPower = received - gain + total - gain,
            AntennaGain = gain,
            Losses = [.. link.PathLoss.Items.Select(item => new BudgetLoss(item, total.Value > 0 ? item.Loss.Value / total.Value : 0))],
            Received = received,
            UndisturbedRequired = needs.Undisturbed,
            Disturbance = needs.Level - needs.Undisturbed,
            Cause = needs.Cause,
            DesignMargin = designMargin,
        };
    }

    private static Needs NeedsOf(Network network, Link link, DeviceId receiver)
    {
        var own = new Receiver(network.Radio);
        Reception? reception = receiver == link.To ? link.AtTo : link.AtFrom;
        return new(own.RequiredLevel, reception?.PlanningLevel ?? own.RequiredLevel, CauseOf(own, reception, network.Radio));
    }

    private static RequirementCause CauseOf(Receiver own, Reception? reception, RadioProfile radio)
    {
        if (reception is not null)
        {
            PowerLevel amongNoise = own.RequiredLevelIn(own.NoiseFloor + reception.NoiseRise);
            if (reception.PlanningLevel > amongNoise) return RequirementCause.Interference;
            if (amongNoise > own.RequiredLevel) return RequirementCause.HubNoise;
        }

        return own.RequiredLevel > radio.Sensitivity ? RequirementCause.Noise : RequirementCause.Sensitivity;
    }

    private readonly record struct Needs(PowerLevel Undisturbed, PowerLevel Level, RequirementCause Cause);
}
