namespace MeshSim.Mesh.Reliability;

/// <summary>How often something held when it was drawn again and again.</summary>
/// <param name="Held">Draws in which it held.</param>
/// <param name="Draws">Draws in all, 1 or more.</param>
public readonly record struct DrawnShare(int Held, int Draws)
{
    /// <summary>The normal quantile of the two-sided 95 % level, Q⁻¹(0.025).</summary>
    private const double Quantile = 1.959963984540054;

    /// <summary>The estimate, 0 to 1.</summary>
    public double Probability => (double)Held / Draws;

    /// <summary>
    /// Where the probability lies with 95 % confidence, by the score interval of E. B. Wilson (J. Am. Stat. Assoc. 22, 1927): also
    /// right where all draws or none hold.
    /// </summary>
    public (double Low, double High) Interval
    {
        get
        {
            double square = Quantile * Quantile;
            double middle = (Held + (square / 2)) / (Draws + square);
            double half = Quantile / (Draws + square) * Math.Sqrt(((double)Held * (Draws - Held) / Draws) + (square / 4));
            return (Held == 0 ? 0 : middle - half, Held == Draws ? 1 : middle + half);
        }
    }
}
