using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh;

/// <summary>How wrong a computed margin may be: standard deviations of two causes that have nothing to do with each other.</summary>
/// <param name="Shadowing">What is not on the plan: furniture, people, reflections.</param>
/// <param name="Losses">What is not known of the things that are: exponent, constructions, mountings.</param>
public readonly record struct MarginUncertainty(Decibels Shadowing, Decibels Losses)
{
    /// <summary>Both together.</summary>
    public Decibels Total => new(Math.Sqrt((Shadowing.Value * Shadowing.Value) + (Losses.Value * Losses.Value)));

    /// <summary>The probability that the true margin is at least so much.</summary>
    /// <param name="least">The margin asked for.</param>
    /// <param name="computed">The margin that this is the uncertainty of.</param>
    /// <returns>0 to 1.</returns>
    public double ProbabilityAbove(Decibels least, Decibels computed)
    {
        double spareDb = (computed - least).Value, deviationDb = Total.Value;
        return deviationDb > 0 ? NormalDistribution.Tail(-spareDb / deviationDb) : spareDb >= 0 ? 1 : 0;
    }
}
