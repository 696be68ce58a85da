using System.Collections.Immutable;
using MeshSim.Materials;
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

    /// <summary>How far a real one may differ, one standard deviation.</summary>
    public Decibels Spread { get; init; }

    /// <summary>Where <see cref="Spread"/> comes from, or "assumed".</summary>
    public string SpreadSource { get; init; } = "assumed";

    /// <summary>Where the losses come from, or "assumed".</summary>
    public required string Source { get; init; }

    /// <summary>The loss at a frequency, read from <see cref="Losses"/>.</summary>
    /// <param name="frequency">Above 0 MHz.</param>
    /// <exception cref="ArgumentException">No loss is listed.</exception>
    public Decibels LossAt(Frequency frequency) =>
        StatedLoss.At([.. Losses.Select(entry => new StatedLoss(entry.Frequency, entry.Loss))], frequency);
}
