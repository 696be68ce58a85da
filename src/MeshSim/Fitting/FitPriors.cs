using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Radio;

namespace MeshSim.Fitting;

/// <summary>What is known before anything is read: the catalogues with their spreads, and what radios are like.</summary>
internal static class FitPriors
{
    /// <summary>
    /// Standard deviation of what a receiver reports against what arrives, dB. IEEE 802.15.4 asks for ±6 dB of its energy detection
    /// (from memory), taken as two deviations.
    /// </summary>
    public const double OffsetDb = 3;

    /// <summary>Standard deviation of the difference of two directions of one path, dB; assumed: each reading scatters by 1.5 dB in time.</summary>
    public const double DirectionsDb = 2;

    /// <summary>Standard deviation of the level that one part of a kind of receiver needs, dB. Assumed.</summary>
    public const double SensitivityDb = 2;

    /// <summary>How many pairs the home's own figure of shadowing is worth. Assumed: few, for readings know better.</summary>
    public const double ShadowingWeight = 4;

    /// <summary>Standard deviation of what a hidden device or a mistaken wall may cost, dB; assumed: a metal box costs 10 to 25 dB.</summary>
    public const double SurpriseDb = 20;

    /// <summary>The exponent.</summary>
    public static PathUnknown Exponent(Home home) => new(
        UnknownKind.Exponent,
        "",
        new(home.Parameters.Exponent, MarginUncertainties.ExponentDeviation, LogDistance.Exponent.Min, LogDistance.Exponent.Max));

    /// <summary>What the way round the walls costs.</summary>
    public static PathUnknown Detour(Home home) => new(
        UnknownKind.Detour,
        "",
        new(home.Parameters.Detour.Value, MarginUncertainties.DetourDb, Propagation.Detour.ExtraDb.Min, Propagation.Detour.ExtraDb.Max));

    /// <summary>The correction of a construction; its loss head-on stays within 0 dB and the ceiling of planning losses.</summary>
    public static PathUnknown Construction(Home home, Network network, ConstructionName name)
    {
        Construction construction = home.Constructions[name];
        double lossDb = LossCurves.Of(construction, network.Carrier).At(1).Value;
        return new(UnknownKind.Construction, name.Value, new(0, construction.Spread.Value, -lossDb, PlanningLoss.Ceiling.Value - lossDb));
    }

    /// <summary>The correction of a mounting; its loss stays at 0 dB or more.</summary>
    public static PathUnknown Mounting(Network network, Mounting mounting) => new(
        UnknownKind.Mounting,
        mounting.Name,
        new(0, mounting.Spread.Value, -mounting.LossAt(network.Carrier).Value, PlanningLoss.Ceiling.Value));

    /// <summary>The offset of all receivers together.</summary>
    public static PathUnknown CommonOffset { get; } = new(UnknownKind.CommonOffset, "", new(0, OffsetDb));

    /// <summary>The offset of one receiver.</summary>
    public static PathUnknown Offset(DeviceId device) => new(UnknownKind.Offset, device.Value, new(0, OffsetDb));

    /// <summary>A surprise about a device: it can only lose.</summary>
    public static PathUnknown DeviceLoss(DeviceId device) =>
        new(UnknownKind.DeviceLoss, device.Value, new(0, SurpriseDb, 0, PlanningLoss.Ceiling.Value));

    /// <summary>A surprise about a wall, a door, a floor or an object, either way.</summary>
    public static PathUnknown ElementLoss(string element) =>
        new(UnknownKind.ElementLoss, element, new(0, SurpriseDb, -PlanningLoss.Ceiling.Value, PlanningLoss.Ceiling.Value));
}
