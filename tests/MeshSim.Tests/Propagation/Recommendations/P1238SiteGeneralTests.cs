using MeshSim.Propagation.Recommendations;

namespace MeshSim.Tests.Propagation.Recommendations;

/// <summary>The site-general form of ITU-R P.1238, editions -11 and -13, against tables of 12 digits.</summary>
public class P1238SiteGeneralTests
{
    public static readonly ReproducedTable Losses =
        new("Propagation/P1238_site-general.csv", 412, ["edition", "environment", "los", "f_MHz", "d_m"], CompareLoss);

    public static readonly ReproducedTable Coefficients =
        new("Propagation/P1238_site-general-coefficients.csv", 14, ["edition", "environment", "los"], CompareCoefficients);

    [Fact]
    public void Every_row_of_the_table_is_met() => Losses.ShouldBeMet();

    [Fact]
    public void The_coefficients_are_the_published_ones()
    {
        P1238SiteGeneral.Rows.Should().HaveCount(Coefficients.Rows.Count);
        Coefficients.ShouldBeMet();
    }

    [Fact]
    public void A_row_covers_its_own_ranges_only()
    {
        SiteGeneralCoefficients office = P1238SiteGeneral.Find("P.1238-13", IndoorEnvironment.Office, isLineOfSight: false)!;
        double metres = office.DistanceMetres.Max, gigahertz = office.FrequencyGigahertz.Min;
        office.Covers(metres, gigahertz).Should().BeTrue();
        office.Covers(metres * 1.001, gigahertz).Should().BeFalse();
        office.Covers(metres, gigahertz * 0.999).Should().BeFalse();
        P1238SiteGeneral.Find("P.1238-11", IndoorEnvironment.Conference, isLineOfSight: true).Should().BeNull();
    }

    [Fact]
    public void A_frequency_in_megahertz_given_as_gigahertz_is_refused()
    {
        Action mistaken = () => P1238SiteGeneral.MedianLossDb(P1238SiteGeneral.Rows[0], 10, 2440);
        mistaken.Should().Throw<ArgumentOutOfRangeException>();
    }

    private static IEnumerable<Comparison> CompareLoss(PublishedRow row)
    {
        SiteGeneralCoefficients coefficients = Find(row);
        double distance = row.Number("d_m"), gigahertz = row.Number("f_MHz") / 1e3;
        double lossDb = P1238SiteGeneral.MedianLossDb(coefficients, distance, gigahertz);
        yield return row.Printed("median_loss_dB", lossDb);

        // A difference of two losses: rounding is in proportion to them, not to it.
        yield return row.Printed("excess_over_free_space_dB", lossDb - FreeSpace.LossDb(distance, gigahertz * 1e3), scale: lossDb);
        yield return row.Exactly("sigma_dB", coefficients.SigmaDb);
        yield return row.Exactly("f_inside_range", coefficients.FrequencyGigahertz.Contains(gigahertz));
    }

    private static IEnumerable<Comparison> CompareCoefficients(PublishedRow row)
    {
        SiteGeneralCoefficients own = Find(row);
        yield return row.Exactly("alpha", own.Alpha);
        yield return row.Exactly("beta", own.BetaDb);
        yield return row.Exactly("gamma", own.Gamma);
        yield return row.Exactly("sigma_dB", own.SigmaDb);
        yield return row.Exactly("f_min_GHz", own.FrequencyGigahertz.Min);
        yield return row.Exactly("f_max_GHz", own.FrequencyGigahertz.Max);
        yield return row.Exactly("d_min_m", own.DistanceMetres.Min);
        yield return row.Exactly("d_max_m", own.DistanceMetres.Max);
    }

    private static SiteGeneralCoefficients Find(PublishedRow row) =>
        P1238SiteGeneral.Find(row["edition"], Enum.Parse<IndoorEnvironment>(row["environment"], ignoreCase: true), row["los"] == "LoS")
        ?? throw new InvalidDataException(row.Place);
}
