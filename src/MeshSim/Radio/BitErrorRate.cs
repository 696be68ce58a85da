using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>
/// Share of bits that arrive wrong in white Gaussian noise, by modulation. Ratios are of powers, on a linear scale: signal to
/// noise and interference in the channel for O-QPSK, energy per bit to noise density (Eb/N0) for the others.
/// </summary>
public static class BitErrorRate
{
    /// <summary>Accepted ratios. Above the upper end every formula has long returned 0.</summary>
    public static readonly ValidRange Ratio = new(0, 1e6, "(ratio of powers)");

    /// <summary>Eb/N0 above which on-off keying is lost less than once in 1e100 bits and counts as never lost.</summary>
    private const double OnOffCertain = 1000;

    /// <summary>C(16, k) for k = 0 to 16.</summary>
    private static readonly double[] ChooseFromSixteen =
        [1, 16, 120, 560, 1820, 4368, 8008, 11440, 12870, 11440, 8008, 4368, 1820, 560, 120, 16, 1];

    /// <summary>The rate of a modulation at its own ratio.</summary>
    /// <param name="modulation">Which one.</param>
    /// <param name="ratio">SINR for <see cref="Modulation.OQpsk"/>, Eb/N0 for the others, within <see cref="Ratio"/>.</param>
    /// <returns>0 to 0.5.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside <see cref="Ratio"/> or the modulation is unknown.</exception>
    public static double Of(Modulation modulation, double ratio) => modulation switch
    {
        Modulation.OQpsk => OQpsk(ratio),
        Modulation.Fsk => NoncoherentFsk(ratio),
        Modulation.Bpsk => DifferentialBpsk(ratio),
        Modulation.OnOff => OnOff(ratio),
        _ => throw new ArgumentOutOfRangeException(nameof(modulation), modulation, "is not a modulation"),
    };

    /// <summary>
    /// O-QPSK with 16-ary orthogonal spreading, IEEE 802.15.4 at 2450 MHz (the formula of IEEE 802.15.4-2006 annex E):
    /// (8/15)(1/16) Σ_{k=2..16} (−1)^k C(16,k) exp(20 SINR (1/k − 1)).
    /// </summary>
    /// <param name="sinr">Signal to noise and interference, a ratio of powers.</param>
    public static double OQpsk(double sinr)
    {
        Ratio.Check(sinr);

        // From the smallest term to the largest: at high ratios k = 2 stands alone, at low ones the sum tends to 15.
        double sum = 0;
        for (int k = 16; k >= 2; k--)
            sum += (k % 2 == 0 ? 1 : -1) * ChooseFromSixteen[k] * Math.Exp(20 * sinr * ((1.0 / k) - 1));
        return sum * 8 / 15 / 16;
    }

    /// <summary>Two orthogonal frequencies, received without a phase reference: exp(−Eb/N0 / 2) / 2 (textbook result).</summary>
    /// <param name="energyPerBitRatio">Eb/N0, a ratio.</param>
    public static double NoncoherentFsk(double energyPerBitRatio) => Math.Exp(-Ratio.Check(energyPerBitRatio) / 2) / 2;

    /// <summary>Differentially coded and detected binary phase-shift keying: exp(−Eb/N0) / 2 (textbook result).</summary>
    /// <param name="energyPerBitRatio">Eb/N0, a ratio.</param>
    public static double DifferentialBpsk(double energyPerBitRatio) => Math.Exp(-Ratio.Check(energyPerBitRatio)) / 2;

    /// <summary>
    /// On-off keying by envelope detection with a threshold that follows the signal: the mean of false alarm exp(−b²/2) and miss
    /// 1 − Q₁(a, b), with a = 2 √(Eb/N0), because the carrier is on for half of the bits, and b² = 2 + a²/4, the usual
    /// approximation of the best threshold (M. Schwartz, W. R. Bennett, S. Stein, 1966; from memory). It costs less than 0.1 dB.
    /// </summary>
    /// <param name="energyPerBitRatio">Mean Eb/N0, a ratio.</param>
    public static double OnOff(double energyPerBitRatio)
    {
        if (Ratio.Check(energyPerBitRatio) > OnOffCertain) return 0;

        double amplitude = 2 * Math.Sqrt(energyPerBitRatio);
        double threshold = Math.Sqrt(2 + (amplitude * amplitude / 4));
        double falseAlarm = Math.Exp(-threshold * threshold / 2), miss = MarcumQ.Complement(amplitude, threshold);
        return (falseAlarm + miss) / 2;
    }
}
