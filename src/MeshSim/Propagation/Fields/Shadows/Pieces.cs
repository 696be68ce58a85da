namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>A function of one number in sixteen pieces of equal length, each a polynomial through its values at Chebyshev points.</summary>
internal sealed class Pieces
{
    /// <summary>Number of pieces: what one instruction can choose from.</summary>
    public const int Count = 16;

    private Pieces(float[][] coefficients) => Coefficients = coefficients;

    /// <summary>Coefficients by power, then by piece.</summary>
    public float[][] Coefficients { get; }

    /// <summary>Fits a function between two numbers.</summary>
    /// <param name="function">The function, smooth between them.</param>
    /// <param name="from">The first number.</param>
    /// <param name="to">The last.</param>
    /// <param name="degree">Of the polynomials.</param>
    public static Pieces Of(Func<double, double> function, double from, double to, int degree)
    {
        float[][] coefficients = [.. Enumerable.Range(0, degree + 1).Select(_ => new float[Count])];
        double length = (to - from) / Count;
        for (int piece = 0; piece < Count; piece++)
        {
            double[] fitted = Fit(function, from + (piece * length), length, degree + 1);
            for (int power = 0; power <= degree; power++) coefficients[power][piece] = (float)fitted[power];
        }

        return new(coefficients);
    }

    // Divided differences, then from the form of nested products to powers.
    private static double[] Fit(Func<double, double> function, double from, double length, int count)
    {
        double[] points = [.. Enumerable.Range(0, count).Select(i => from + (length / 2 * (1 - Math.Cos(Math.PI * (i + 0.5) / count))))];
        double[] values = [.. points.Select(function)];
        for (int order = 1; order < count; order++)
            for (int i = count - 1; i >= order; i--) values[i] = (values[i] - values[i - 1]) / (points[i] - points[i - order]);

        var powers = new double[count];
        for (int i = count - 1; i >= 0; i--)
        {
            for (int power = count - 1; power > 0; power--) powers[power] = powers[power - 1] - (points[i] * powers[power]);
            powers[0] = values[i] - (points[i] * powers[0]);
        }

        return powers;
    }
}
