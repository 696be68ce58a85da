namespace MeshSim.Quantities;

/// <summary>
/// Exponential and logarithm near the value 1, to the last few bits (W. Kahan's forms): a rounding of the inner value is undone
/// by dividing by what the rounded value stands for. The numerics library's own are off by some 1e-9 of the result.
/// </summary>
internal static class SmallDifferences
{
    /// <summary>e^x − 1.</summary>
    public static double ExponentialMinusOne(double x)
    {
        double power = Math.Exp(x);
        if (power == 1) return x;
        return power - 1 == -1 ? -1 : (power - 1) * (x / Math.Log(power));
    }

    /// <summary>ln(1 + x).</summary>
    public static double LogarithmOfOnePlus(double x)
    {
        double sum = 1 + x;
        if (sum == 1) return x;
        return sum <= 0 ? Math.Log(sum) : Math.Log(sum) * (x / (sum - 1));
    }
}
