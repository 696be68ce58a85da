using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>What a construction is used for.</summary>
public enum ConstructionUse
{
    /// <summary>A wall.</summary>
    Wall,

    /// <summary>A door.</summary>
    Door,

    /// <summary>A window.</summary>
    Window,

    /// <summary>A floor structure.</summary>
    Floor,

    /// <summary>An object.</summary>
    Object,
}

/// <summary>
/// A build-up that radio goes through. Its loss is either computed from its layers, or stated in decibels at some
/// frequencies (straight lines over the logarithm of frequency between them, level beyond). Never both.
/// </summary>
public sealed record Construction
{
    /// <summary>Name in the catalogue.</summary>
    public required ConstructionName Name { get; init; }

    /// <summary>In words.</summary>
    public required string Description { get; init; }

    /// <summary>What it is meant for; a wall may still use any of them.</summary>
    public required ConstructionUse Use { get; init; }

    /// <summary>From one face to the other; empty when the loss is stated.</summary>
    public ImmutableArray<Layer> Layers { get; init; } = [];

    /// <summary>The stated loss, in order of frequency; empty when it is computed.</summary>
    public ImmutableArray<StatedLoss> Stated { get; init; } = [];

    /// <summary>How far a real one may differ, one standard deviation.</summary>
    public required Decibels Spread { get; init; }

    /// <summary>Where <see cref="Spread"/> comes from, or "assumed".</summary>
    public string SpreadSource { get; init; } = "assumed";

    /// <summary>Where layers or losses come from, or "assumed".</summary>
    public required string Source { get; init; }
}

/// <summary>A loss stated at one frequency.</summary>
/// <param name="Frequency">Where it holds.</param>
/// <param name="Loss">How much, at any angle.</param>
public readonly record struct StatedLoss(Frequency Frequency, Decibels Loss)
{
    /// <summary>The loss at any frequency: straight lines over the logarithm of frequency between entries, level beyond.</summary>
    /// <param name="stated">At least one, in order of frequency.</param>
    /// <param name="frequency">Above zero.</param>
    /// <exception cref="ArgumentException">Nothing is stated.</exception>
    public static Decibels At(ImmutableArray<StatedLoss> stated, Frequency frequency)
    {
        if (stated.IsDefaultOrEmpty) throw new ArgumentException("no loss is stated", nameof(stated));
        if (frequency <= stated[0].Frequency) return stated[0].Loss;
        for (int i = 1; i < stated.Length; i++)
        {
            (StatedLoss low, StatedLoss high) = (stated[i - 1], stated[i]);
            if (frequency > high.Frequency) continue;
            double share = Math.Log(frequency.Megahertz / low.Frequency.Megahertz)
                / Math.Log(high.Frequency.Megahertz / low.Frequency.Megahertz);
            return low.Loss + (share * (high.Loss - low.Loss));
        }

        return stated[^1].Loss;
    }
}
