using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;

namespace MeshSim.Tests.Propagation.Recommendations;

/// <summary>The site-general form of ITU-R P.1238, editions -11 and -13, against tables of 12 digits.</summary>
public class P1238SiteGeneralTests
{
    [Fact]
    public void Every_row_of_the_table_is_met()
    {
        List<PublishedRow> rows = PublishedTable.Read("Propagation/P1238_site-general.csv").Rows;
        rows.Should().HaveCount(412);
        foreach (PublishedRow row in rows)
        {
            SiteGeneralCoefficients coefficients = Find(row);
            double distance = row.Number("d_m"), gigahertz = row.Number("f_MHz") / 1e3;
            double lossDb = P1238SiteGeneral.MedianLossDb(coefficients, distance, gigahertz);
            lossDb.ShouldBePrintedAs(row.Number("median_loss_dB"), row.Place);

            // A difference of two losses: rounding is in proportion to them, not to it.
            (lossDb - FreeSpace.LossDb(distance, gigahertz * 1e3))
                .ShouldBePrintedAs(row.Number("excess_over_free_space_dB"), row.Place, scale: lossDb);
            coefficients.SigmaDb.Should().Be(row.Number("sigma_dB"), row.Place);
            coefficients.FrequencyGigahertz.Contains(gigahertz).Should().Be(row.Flag("f_inside_range"), row.Place);
        }
    }

    [Fact]
    public void The_coefficients_are_the_published_ones()
    {
        List<PublishedRow> rows = PublishedTable.Read("Propagation/P1238_site-general-coefficients.csv").Rows;
        rows.Should().HaveCount(14);
        P1238SiteGeneral.Rows.Should().HaveCount(14);
        foreach (PublishedRow row in rows)
        {
            SiteGeneralCoefficients own = Find(row);
            (own.Alpha, own.BetaDb, own.Gamma, own.SigmaDb)
                .Should().Be((row.Number("alpha"), row.Number("beta"), row.Number("gamma"), row.Number("sigma_dB")), row.Place);
            own.FrequencyGigahertz.Should().Be(new ValidRange(row.Number("f_min_GHz"), row.Number("f_max_GHz"), "GHz"), row.Place);
            own.DistanceMetres.Should().Be(new ValidRange(row.Number("d_min_m"), row.Number("d_max_m"), "m"), row.Place);
        }
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

    private static SiteGeneralCoefficients Find(PublishedRow row) =>
        P1238SiteGeneral.Find(row["edition"], Enum.Parse<IndoorEnvironment>(row["environment"], ignoreCase: true), row["los"] == "LoS")
        ?? throw new InvalidDataException(row.Place);
}
