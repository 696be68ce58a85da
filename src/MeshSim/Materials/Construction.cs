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

    /// <summary>Where layers or losses come from, or "assumed".</summary>
    public required string Source { get; init; }
}

/// <summary>A loss stated at one frequency.</summary>
/// <param name="Frequency">Where it holds.</param>
/// <param name="Loss">How much, at any angle.</param>
public readonly record struct StatedLoss(Frequency Frequency, Decibels Loss);
