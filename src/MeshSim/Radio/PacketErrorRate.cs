using MathNet.Numerics.RootFinding;
using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>Share of frames that arrive wrong, when bit errors are independent and one wrong bit spoils a frame.</summary>
public static class PacketErrorRate
{
    /// <summary>Accepted frame lengths.</summary>
    public static readonly ValidRange Octets = new(1, 2047, "octets");

    /// <summary>Accepted bit error rates.</summary>
    public static readonly ValidRange BitErrors = new(0, 1, "(share of bits)");

    /// <summary>Error rates for which <see cref="RequiredRatio"/> can be asked.</summary>
    public static readonly ValidRange Target = new(1e-9, 0.9, "(share of frames)");

    private const int BitsPerOctet = 8;

    /// <summary>Every modulation loses almost every frame at the lower end and none at the upper.</summary>
    private static readonly ValidRange SearchedDb = new(-30, 30, "dB");

    /// <summary>PER = 1 − (1 − BER)^(8n), computed so that rates far below the spacing of numbers near 1 keep their digits.</summary>
    /// <param name="bitErrorRate">Within <see cref="BitErrors"/>.</param>
    /// <param name="octets">n, within <see cref="Octets"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double Of(double bitErrorRate, int octets) =>
        -SmallDifferences.ExponentialMinusOne(BitsPerOctet * Octets.Check(octets) * SmallDifferences.LogarithmOfOnePlus(-BitErrors.Check(bitErrorRate)));

    /// <summary>The bit error rate at which a share of frames is lost: the inverse of <see cref="Of"/>.</summary>
    /// <param name="packetErrorRate">Within <see cref="Target"/>.</param>
    /// <param name="octets">Frame length, within <see cref="Octets"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double BitErrorRateFor(double packetErrorRate, int octets) =>
        -SmallDifferences.ExponentialMinusOne(SmallDifferences.LogarithmOfOnePlus(-Target.Check(packetErrorRate)) / (BitsPerOctet * Octets.Check(octets)));

    /// <summary>The ratio at which a modulation loses a share of frames, found by Brent's method on the logarithm of the bit error rate.</summary>
    /// <param name="modulation">Which one.</param>
    /// <param name="octets">Frame length, within <see cref="Octets"/>.</param>
    /// <param name="packetErrorRate">Within <see cref="Target"/>.</param>
    /// <returns>SINR for O-QPSK, Eb/N0 for the others.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Decibels RequiredRatio(Modulation modulation, int octets, double packetErrorRate)
    {
        double wanted = Math.Log(BitErrorRateFor(packetErrorRate, octets));
        return new(Brent.FindRoot(Excess, SearchedDb.Min, SearchedDb.Max, accuracy: 1e-13, maxIterations: 200));

        // Logarithms turn a curve that falls by a hundred decades into one that Brent's method follows in a dozen steps.
        double Excess(double ratioDb) =>
            Math.Log(Math.Max(BitErrorRate.Of(modulation, new Decibels(ratioDb).PowerRatio), double.Epsilon)) - wanted;
    }
}
