using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Propagation.Recommendations;

/// <summary>The environments of the site-general form of ITU-R P.1238. None is a home.</summary>
public enum IndoorEnvironment
{
    /// <summary>Office.</summary>
    Office,

    /// <summary>Corridor.</summary>
    Corridor,

    /// <summary>Industrial hall.</summary>
    Industrial,

    /// <summary>Conference or lecture room; from revision 13 on.</summary>
    Conference,
}

/// <summary>One row of the coefficients of the site-general form.</summary>
public sealed record SiteGeneralCoefficients
{
    /// <summary>Edition, such as "P.1238-13".</summary>
    public required string Edition { get; init; }

    /// <summary>Kind of surroundings.</summary>
    public required IndoorEnvironment Environment { get; init; }

    /// <summary>Whether the ends see each other.</summary>
    public required bool IsLineOfSight { get; init; }

    /// <summary>Frequencies at which the row was measured.</summary>
    public required ValidRange FrequencyGigahertz { get; init; }

    /// <summary>Distances at which the row was measured.</summary>
    public required ValidRange DistanceMetres { get; init; }

    /// <summary>α, growth with distance.</summary>
    public required double Alpha { get; init; }

    /// <summary>β, offset, dB.</summary>
    public required double BetaDb { get; init; }

    /// <summary>γ, growth with frequency.</summary>
    public required double Gamma { get; init; }

    /// <summary>σ, standard deviation about the median, dB.</summary>
    public required double SigmaDb { get; init; }

    /// <summary>Whether frequency and distance both lie where the row was measured; elsewhere a value is an extrapolation.</summary>
    public bool Covers(double distanceMetres, double frequencyGigahertz) =>
        DistanceMetres.Contains(distanceMetres) && FrequencyGigahertz.Contains(frequencyGigahertz);
}

/// <summary>
/// Indoor median loss within one storey, the site-general form of ITU-R P.1238 (revisions 11 and 13):
/// 10 α log d + β + 10 γ log f, with f in gigahertz.
/// </summary>
public static class P1238SiteGeneral
{
    /// <summary>Accepted frequencies: those of the recommendation (from memory).</summary>
    public static readonly ValidRange FrequencyGigahertz = new(0.3, 450, "GHz");

    /// <summary>Accepted distances; each row has its own, narrower range.</summary>
    public static readonly ValidRange DistanceMetres = new(1, 10_000, "m");

    /// <summary>The rows of both revisions. Transcribed from one published copy of each.</summary>
    public static readonly ImmutableArray<SiteGeneralCoefficients> Rows =
    [
        Row("P.1238-11", IndoorEnvironment.Office, true, 0.3, 83.5, 2, 27, 1.46, 34.62, 2.03, 3.76),
        Row("P.1238-11", IndoorEnvironment.Office, false, 0.3, 82, 4, 30, 2.46, 29.53, 2.38, 5.04),
        Row("P.1238-11", IndoorEnvironment.Corridor, true, 0.3, 83.5, 2, 160, 1.63, 28.12, 2.25, 4.07),
        Row("P.1238-11", IndoorEnvironment.Corridor, false, 0.625, 83.5, 4, 94, 2.77, 29.27, 2.48, 7.63),
        Row("P.1238-11", IndoorEnvironment.Industrial, true, 0.625, 70.28, 2, 101, 2.31, 24.52, 2.06, 2.69),
        Row("P.1238-11", IndoorEnvironment.Industrial, false, 0.625, 70.28, 5, 108, 3.79, 21.01, 1.34, 9.05),
        Row("P.1238-13", IndoorEnvironment.Office, true, 0.3, 294, 2, 27, 1.47, 34.17, 2.08, 3.68),
        Row("P.1238-13", IndoorEnvironment.Office, false, 0.3, 255, 4, 30, 2.39, 30.13, 2.40, 5.01),
        Row("P.1238-13", IndoorEnvironment.Corridor, true, 0.3, 300, 2, 160, 1.57, 29.46, 2.24, 3.77),
        Row("P.1238-13", IndoorEnvironment.Corridor, false, 0.625, 159, 3, 94, 2.78, 28.62, 2.54, 7.58),
        Row("P.1238-13", IndoorEnvironment.Industrial, true, 0.625, 294, 2, 102, 2.27, 24.79, 2.10, 2.62),
        Row("P.1238-13", IndoorEnvironment.Industrial, false, 0.625, 255, 3, 110, 2.80, 23.55, 2.16, 5.70),
        Row("P.1238-13", IndoorEnvironment.Conference, true, 0.45, 300, 2, 21, 1.56, 30.47, 2.23, 2.92),
        Row("P.1238-13", IndoorEnvironment.Conference, false, 0.45, 159, 4, 25, 1.40, 39.53, 2.37, 3.33),
    ];

    /// <summary>The row of an edition and an environment, or null when that edition has none.</summary>
    public static SiteGeneralCoefficients? Find(string edition, IndoorEnvironment environment, bool isLineOfSight) =>
        Rows.FirstOrDefault(row => row.Edition == edition && row.Environment == environment && row.IsLineOfSight == isLineOfSight);

    /// <summary>The median loss, dB. Outside the row's own ranges it is an extrapolation; ask <see cref="SiteGeneralCoefficients.Covers"/>.</summary>
    /// <param name="coefficients">One of <see cref="Rows"/>.</param>
    /// <param name="distanceMetres">Within <see cref="DistanceMetres"/>.</param>
    /// <param name="frequencyGigahertz">Within <see cref="FrequencyGigahertz"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Distance or frequency is out of range.</exception>
    public static double MedianLossDb(SiteGeneralCoefficients coefficients, double distanceMetres, double frequencyGigahertz)
    {
        DistanceMetres.Check(distanceMetres);
        FrequencyGigahertz.Check(frequencyGigahertz);

        return (10 * coefficients.Alpha * Math.Log10(distanceMetres))
            + coefficients.BetaDb
            + (10 * coefficients.Gamma * Math.Log10(frequencyGigahertz));  // Equation (1), without the random term
    }

    private static SiteGeneralCoefficients Row(
        string edition,
        IndoorEnvironment environment,
        bool isLineOfSight,
        double minGigahertz,
        double maxGigahertz,
        double minMetres,
        double maxMetres,
        double alpha,
        double betaDb,
        double gamma,
        double sigmaDb) => new()
        {
            Edition = edition,
            Environment = environment,
            IsLineOfSight = isLineOfSight,
            FrequencyGigahertz = new(minGigahertz, maxGigahertz, "GHz"),
            DistanceMetres = new(minMetres, maxMetres, "m"),
            Alpha = alpha,
            BetaDb = betaDb,
            Gamma = gamma,
            SigmaDb = sigmaDb,
        };
}
