using MathNet.Numerics;
using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>
/// The Marcum Q function of first order, by which the envelope of a steady wave in noise exceeds a level (J. I. Marcum, 1950).
/// Given as its complement, because the rare case is a weak envelope.
/// </summary>
public static class MarcumQ
{
    /// <summary>Accepted amplitudes and levels, in units of the noise's standard deviation per component.</summary>
    public static readonly ValidRange Amplitude = new(0, 100, "standard deviations");

    /// <summary>A term this much smaller than the sum no longer changes it.</summary>
    private const double NegligibleShare = 1e-17;

    /// <summary>
    /// 1 − Q₁(a, b): the probability that the envelope of a wave of amplitude a in noise of unit variance per component stays
    /// below b. Summed as a Poisson mixture of gamma distributions, Σ e^(−a²/2) (a²/2)^k / k! · P(k+1, b²/2): every term is
    /// positive, so a small probability keeps its digits.
    /// </summary>
    /// <param name="amplitude">a, within <see cref="Amplitude"/>.</param>
    /// <param name="level">b, within <see cref="Amplitude"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double Complement(double amplitude, double level)
    {
        double steady = Amplitude.Check(amplitude) * amplitude / 2, threshold = Amplitude.Check(level) * level / 2;
        if (threshold == 0) return 0;
        if (steady == 0) return -SmallDifferences.ExponentialMinusOne(-threshold);

        double sum = 0;
        for (int k = 0; ; k++)
        {
            double weight = Math.Exp((k * Math.Log(steady)) - steady - SpecialFunctions.GammaLn(k + 1));
            double term = weight * SpecialFunctions.GammaLowerRegularized(k + 1, threshold);
            sum += term;

            // Beyond the larger of the two means both factors fall from term to term.
            if (k > steady && k > threshold && term <= NegligibleShare * sum) return Math.Min(sum, 1);
        }
    }
}
