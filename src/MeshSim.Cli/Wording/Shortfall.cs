using MeshSim.Mesh;
using MeshSim.Quantities;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>What a device without a reliable way lacks.</summary>
internal static class Shortfall
{
    /// <summary>
    /// By how much its nearest link misses the design margin. Null for a reached device, for one without any possible
    /// neighbour, and for one whose nearest link is good enough: there the hop limit is what stops it.
    /// </summary>
    public static Decibels? Of(NetworkCoverage coverage, DeviceReach reach) =>
        reach.NearestLink is { } link && !reach.IsReached && link.Margin < coverage.DesignMargin ? coverage.DesignMargin - link.Margin : null;

    /// <summary>The same in words, such as "lacks 7.3 dB to shed-plug".</summary>
    public static string InWords(NetworkCoverage coverage, DeviceReach reach)
    {
        if (CoverageWords.IsCoordinatorOff(coverage)) return $"coordinator {coverage.Network.Coordinator} is off";
        if (reach.NearestLink is not { } link) return "has nobody to hear";
        string nearest = link.Other(reach.Device).Value;
        return Of(coverage, reach) is { } lack
            ? $"lacks {Figures.Decibels(lack)} dB to {nearest}"
            : FormattableString.Invariant($"hears {nearest}, but the way would take more than {coverage.Network.HopLimit} hops");
    }
}
