using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>Logarithms and powers of eight numbers at once, as exact as single precision needs them.</summary>
internal static class DecibelKernel
{
    // Powers of two per decibel: log₂(10) / 10.
    private const float BitsPerDecibel = 0.33219281f;

    // Where the difference of two ways is larger the weaker one adds nothing that a loss in single precision could show.
    private const float LeastBits = 30;

    /// <summary>
    /// The loss of two ways whose powers add, dB: min(a, b) − 10 lg(1 + 10^(−|a − b| / 10)), to 2e-5 dB. The power of two is a
    /// polynomial about the nearest whole number, the logarithm z · polynomial(z); both fitted with the least largest error.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<float> OfTwoWays(Vector256<float> wallsDb, Vector256<float> extraDb)
    {
        // Adding 1.5 · 2²³ rounds to a whole number and leaves it in the low bits.
        Vector256<float> rounder = Vector256.Create(12582912f);
        Vector256<float> apart = Vector256.Abs(wallsDb - extraDb) * Vector256.Create(-BitsPerDecibel);
        apart = Vector256.MaxNative(apart, Vector256.Create(-LeastBits));
        Vector256<float> rounded = apart + rounder, x = apart - (rounded - rounder), squared = x * x;
        Vector256<float> low = Pair(0.99999926f, 0.69312181f, x), high = Pair(0.24024745f, 0.05591786f, x);
        high = Vector256.MultiplyAddEstimate(squared, Vector256.Create(0.0095701020f), high);
        low = Vector256.MultiplyAddEstimate(squared, high, low);
        Vector256<float> z = (low.AsInt32() + Vector256.ShiftLeft(rounded.AsInt32(), 23)).AsSingle(), ofZ = z * z;
        Vector256<float> first = Pair(4.3425177f, -2.1622440f, z), second = Pair(1.3795326f, -0.84149361f, z), third = Pair(0.37162598f, -0.079644851f, z);
        second = Vector256.MultiplyAddEstimate(ofZ, third, second);
        first = Vector256.MultiplyAddEstimate(ofZ, second, first);
        return Vector256.MultiplyAddEstimate(-z, first, Vector256.MinNative(wallsDb, extraDb));
    }

    /// <summary>Binary logarithm of positive normal numbers to 7e-7: x · polynomial(x) about 1, fitted at Chebyshev points.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<float> Log2(Vector256<float> value)
    {
        // Exponent and mantissa are parted at the root of ½, so that x stays between −0.30 and 0.42.
        Vector256<int> rootOfHalf = Vector256.Create(BitConverter.SingleToInt32Bits(0.70710677f));
        Vector256<int> exponent = Vector256.ShiftRightArithmetic(value.AsInt32() - rootOfHalf, 23);
        Vector256<float> x = (value.AsInt32() - Vector256.ShiftLeft(exponent, 23)).AsSingle() - Vector256<float>.One;
        Vector256<float> squared = x * x;
        Vector256<float> low = Pair(1.44269652f, -0.721360179f, x), next = Pair(0.480613125f, -0.359524455f, x);
        Vector256<float> high = Pair(0.296119557f, -0.267963871f, x);
        high = Vector256.MultiplyAddEstimate(squared, Vector256.Create(0.168186591f), high);
        next = Vector256.MultiplyAddEstimate(squared, high, next);
        low = Vector256.MultiplyAddEstimate(squared, next, low);
        return Vector256.MultiplyAddEstimate(x, low, Vector256.ConvertToSingle(exponent));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<float> Pair(float constant, float factor, Vector256<float> x) =>
        Vector256.MultiplyAddEstimate(x, Vector256.Create(factor), Vector256.Create(constant));
}
