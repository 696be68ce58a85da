using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>How a device is hidden, and what that costs at either end of a link.</summary>
public sealed record Mounting
{
    /// <summary>Name in the catalogue, such as <c>metal-box</c>.</summary>
    public required string Name { get; init; }

    /// <summary>In words.</summary>
    public required string Description { get; init; }

    /// <summary>Loss by frequency, in order of frequency; straight lines over the logarithm of frequency between, level beyond.</summary>
    public required ImmutableArray<(Frequency Frequency, Decibels Loss)> Losses { get; init; }

    /// <summary>Where the losses come from, or "assumed".</summary>
    public required string Source { get; init; }

    /// <summary>The loss at a frequency: straight lines over the logarithm of frequency between the listed ones, level beyond.</summary>
    /// <param name="frequency">Above 0 MHz.</param>
    /// <exception cref="InvalidOperationException">No loss is listed.</exception>
    public Decibels LossAt(Frequency frequency)
    {
        if (Losses.IsDefaultOrEmpty) throw new InvalidOperationException($"mounting \"{Name}\" lists no loss");

        int above = 0;
        while (above < Losses.Length && Losses[above].Frequency < frequency)
            above++;
        if (above == 0) return Losses[0].Loss;
        if (above == Losses.Length) return Losses[^1].Loss;

        (Frequency low, Decibels lossLow) = Losses[above - 1];
        (Frequency high, Decibels lossHigh) = Losses[above];
        double share = Math.Log(frequency.Megahertz / low.Megahertz) / Math.Log(high.Megahertz / low.Megahertz);
        return lossLow + (share * (lossHigh - lossLow));
    }
}
