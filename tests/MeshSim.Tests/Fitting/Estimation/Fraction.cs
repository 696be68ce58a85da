using System.Globalization;
using System.Numerics;

namespace MeshSim.Tests.Fitting.Estimation;

/// <summary>An exact fraction, for regressions without rounding.</summary>
internal readonly record struct Fraction(BigInteger Top, BigInteger Bottom)
{
    public static Fraction Zero { get; } = new(0, 1);

    public static Fraction One { get; } = new(1, 1);

    /// <summary>A decimal number as it is written.</summary>
    public static Fraction Parse(string text)
    {
        int point = text.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : text.Length - point - 1;
        return Reduced(BigInteger.Parse(text.Replace(".", "", StringComparison.Ordinal), CultureInfo.InvariantCulture), BigInteger.Pow(10, decimals));
    }

    /// <summary>The nearest double but for the last bits: 25 digits of the quotient are kept.</summary>
    public double Value
    {
        get
        {
            if (Top.IsZero) return 0;
            int shift = 25 - (int)(BigInteger.Log10(BigInteger.Abs(Top)) - BigInteger.Log10(Bottom));
            BigInteger digits = shift >= 0 ? Top * BigInteger.Pow(10, shift) / Bottom : Top / (Bottom * BigInteger.Pow(10, -shift));
            return double.Parse(string.Create(CultureInfo.InvariantCulture, $"{digits}e{-shift}"), CultureInfo.InvariantCulture);
        }
    }

    public static Fraction operator +(Fraction a, Fraction b) => Reduced((a.Top * b.Bottom) + (b.Top * a.Bottom), a.Bottom * b.Bottom);

    public static Fraction operator -(Fraction a, Fraction b) => Reduced((a.Top * b.Bottom) - (b.Top * a.Bottom), a.Bottom * b.Bottom);

    public static Fraction operator *(Fraction a, Fraction b) => Reduced(a.Top * b.Top, a.Bottom * b.Bottom);

    public static Fraction operator /(Fraction a, Fraction b) => Reduced(a.Top * b.Bottom, a.Bottom * b.Top);

    private static Fraction Reduced(BigInteger top, BigInteger bottom)
    {
        BigInteger divisor = BigInteger.GreatestCommonDivisor(top, bottom) * bottom.Sign;
        return divisor.IsZero ? throw new DivideByZeroException() : new(top / divisor, bottom / divisor);
    }
}
