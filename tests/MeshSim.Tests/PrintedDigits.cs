namespace MeshSim.Tests;

/// <summary>What may lie between a correct result and a number printed to a fixed number of significant digits.</summary>
public static class PrintedDigits
{
    /// <summary>The tables of check values print this many.</summary>
    public const int OfTables = 12;

    /// <summary>
    /// What double arithmetic may add to half a unit of the last digit, as a share of the value: some hundred roundings of 1e-16,
    /// or the phase of metal, some hundred radians, rounded a few times.
    /// </summary>
    public const double RoundingShare = 1e-13;

    /// <summary>
    /// For results that a search or a series finds: 12 printed digits are within half a unit of the last one, 5e-12 of the value
    /// at most, and the search may add as much again.
    /// </summary>
    public const double SearchShare = 1e-11;

    /// <summary>
    /// A loss in decibels is 4.34 dB times the logarithm of a power near one or below. A share lost of the power is that share
    /// of 4.34 dB lost of the loss, however small the loss.
    /// </summary>
    public const double DecibelsPerNeperOfPower = 10 / 2.302585092994046;

    /// <summary>How far a correct result may lie from a printed number: half a unit of its last digit and rounding.</summary>
    /// <param name="printed">The number.</param>
    /// <param name="scale">What rounding errors are in proportion to; the number itself, unless it is part of a larger whole.</param>
    public static double Tolerance(double printed, double? scale = null)
    {
        double halfUnit = printed == 0 ? 0 : 0.5 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(printed))) - (OfTables - 1));
        return halfUnit + (RoundingShare * Math.Abs(scale ?? printed));
    }

    /// <summary>What the rounding errors of a loss are in proportion to.</summary>
    public static double ScaleOfLoss(double lossDb) => Math.Max(lossDb, DecibelsPerNeperOfPower);

    /// <summary>Asserts that a result is the printed number.</summary>
    public static void ShouldBePrintedAs(this double result, double printed, string because) =>
        result.Should().BeApproximately(printed, Tolerance(printed), because);
}
