namespace MeshSim.OpenData.Tests.Accuracy.Regression;

/// <summary>
/// Least squares for <see cref="LevelLaw"/>. Offset and exponent follow in closed form for given walls; the factor of the walls
/// and the way round are searched on a grid that is made finer about the best place. All of it is free: no prior, no bounds but the grid's.
/// </summary>
internal static class LevelFit
{
    private const double LeastFactor = 0.05, MostFactor = 8, LeastDetourDb = 5, MostDetourDb = 60;

    // Sixteen places an axis and six times finer each round: four rounds settle the third digit.
    private const int Places = 16, Rounds = 4;

    /// <summary>The law with the least sum of squared errors.</summary>
    public static LevelLaw Of(WallForm form, IReadOnlyList<LevelPoint> points)
    {
        if (form == WallForm.None) return Line(LevelLaw.Catalogue(form), points).Law;

        (double Low, double High) factors = (Math.Log(LeastFactor), Math.Log(MostFactor)), detours = (Math.Log(LeastDetourDb), Math.Log(MostDetourDb));
        LevelLaw best = LevelLaw.Catalogue(form);
        for (int round = 0; round < Rounds; round++)
        {
            best = (from factor in Steps(factors)
                    from detour in form == WallForm.Detour ? Steps(detours) : [detours.Low]
                    select Line(best with { WallFactor = Math.Exp(factor), DetourDb = Math.Exp(detour) }, points)).MinBy(tried => tried.SquaredDb).Law;
            factors = About(Math.Log(best.WallFactor), factors);
            detours = About(Math.Log(best.DetourDb), detours);
        }

        return best;
    }

    private static IEnumerable<double> Steps((double Low, double High) range) =>
        Enumerable.Range(0, Places).Select(i => range.Low + (i * (range.High - range.Low) / (Places - 1)));

    private static (double Low, double High) About(double centre, (double Low, double High) range)
    {
        double step = (range.High - range.Low) / (Places - 1);
        return (Math.Max(range.Low, centre - (1.25 * step)), Math.Min(range.High, centre + (1.25 * step)));
    }

    // The straight line of level plus walls over the air's decibels.
    private static (LevelLaw Law, double SquaredDb) Line(LevelLaw walls, IReadOnlyList<LevelPoint> points)
    {
        double meanAir = 0, meanLevel = 0, squaredAir = 0, product = 0, squaredLevel = 0;
        for (int i = 0; i < points.Count; i++)
        {
            double air = points[i].AirDb, level = points[i].LevelDbm + walls.WallsDb(points[i].WallsDb);
            double toAir = air - meanAir, toLevel = level - meanLevel;
            meanAir += toAir / (i + 1);
            meanLevel += toLevel / (i + 1);
            squaredAir += toAir * (air - meanAir);
            product += toAir * (level - meanLevel);
            squaredLevel += toLevel * (level - meanLevel);
        }

        double slope = product / squaredAir;
        return (walls with { OffsetDbm = meanLevel - (slope * meanAir), Exponent = -slope }, squaredLevel - (slope * product));
    }
}
