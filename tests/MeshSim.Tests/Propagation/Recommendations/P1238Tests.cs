using MeshSim.Propagation.Recommendations;

namespace MeshSim.Tests.Propagation.Recommendations;

/// <summary>The older form of ITU-R P.1238 against a table of 12 digits.</summary>
public class P1238Tests
{
    public static readonly ReproducedTable Losses =
        new("Propagation/P1238_older.csv", 432, ["environment", "f_MHz", "d_m", "floors"], Compare);

    [Fact]
    public void Every_row_of_the_table_is_met() => Losses.ShouldBeMet();

    [Theory]
    [InlineData(433.92, true, true)]
    [InlineData(868.4, true, true)]
    [InlineData(1900, false, false)]
    [InlineData(2440, false, true)]
    public void Homes_below_1800_megahertz_are_an_extrapolation(double megahertz, bool coefficientMarked, bool floorsMarked)
    {
        P1238.IsCoefficientExtrapolated(new(megahertz)).Should().Be(coefficientMarked);
        P1238.IsFloorLossExtrapolated(new(megahertz)).Should().Be(floorsMarked);
    }

    [Fact]
    public void Distance_frequency_and_floors_are_refused_just_outside_their_range()
    {
        P1238.LossDb(P1238.DistanceMetres.Min, P1238.FrequencyMegahertz.Min, 28, 0).Should().BePositive();
        ((Action)(() => P1238.LossDb(P1238.DistanceMetres.Min * 0.999, 2440, 28, 0))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => P1238.LossDb(1, P1238.FrequencyMegahertz.Min * 0.999, 28, 0))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => P1238.LossDb(1, P1238.FrequencyMegahertz.Max * 1.001, 28, 0))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => P1238.FloorLossDb(BuildingUse.Residential, -1))).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static IEnumerable<Comparison> Compare(PublishedRow row)
    {
        var use = Enum.Parse<BuildingUse>(row["environment"], ignoreCase: true);
        double coefficient = P1238.DistanceCoefficient(use), floorsDb = P1238.FloorLossDb(use, row.Whole("floors"));
        yield return row.Printed("loss_dB", P1238.LossDb(row.Number("d_m"), row.Number("f_MHz"), coefficient, floorsDb));
        yield return row.Exactly("N", coefficient);
        yield return row.Exactly("Lf_dB", floorsDb);
    }
}
