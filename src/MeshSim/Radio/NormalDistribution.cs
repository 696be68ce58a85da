using MathNet.Numerics;
using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>The normal distribution of mean 0 and standard deviation 1, as link planning uses it.</summary>
public static class NormalDistribution
{
    /// <summary>Probabilities that <see cref="TailQuantile"/> accepts.</summary>
    public static readonly ValidRange Probability = new(1e-300, 1 - 1e-15, "(probability)");

    /// <summary>The Q function: the probability of a value above <paramref name="x"/>, Q(x) = erfc(x/√2)/2.</summary>
    public static double Tail(double x) => SpecialFunctions.Erfc(x / Constants.Sqrt2) / 2;

    /// <summary>The value that is exceeded with a probability, Q⁻¹(p) = √2 · erfc⁻¹(2p).</summary>
    /// <param name="probability">Within <see cref="Probability"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not above 0 and below 1.</exception>
    public static double TailQuantile(double probability) =>
        Constants.Sqrt2 * SpecialFunctions.ErfcInv(2 * Probability.Check(probability));
}
