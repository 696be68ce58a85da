namespace MeshSim.Placement;

/// <summary>A device that is out of reach in some case even when every outlet is chosen.</summary>
/// <param name="Device">The device.</param>
/// <param name="Situation">The place of the situation among all; 0 is everyday.</param>
/// <param name="Lost">The router or outlet whose loss it does not survive; null when none is lost.</param>
public readonly record struct UnmetDemand(int Device, int Situation, int? Lost)
{
    /// <summary>The devices out of reach everyday as demands, then what else cannot be had.</summary>
    internal static IEnumerable<UnmetDemand> All(IEnumerable<int> unservable, IEnumerable<UnmetDemand> unmet) =>
        unservable.Select(device => new UnmetDemand(device, 0, null)).Concat(unmet);
}
