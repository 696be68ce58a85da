using MeshSim.Propagation.Recommendations;

namespace MeshSim.Tests.Propagation.Recommendations;

/// <summary>ITU-R P.525 against a table of 12 digits.</summary>
public class FreeSpaceTests
{
    public static readonly ReproducedTable Losses = new(
        "Propagation/P525_free-space.csv",
        40,
        ["f_MHz", "d_m"],
        row => [row.Printed("free_space_loss_dB", FreeSpace.LossDb(row.Number("d_m"), row.Number("f_MHz")))]);

    [Fact]
    public void Every_row_of_the_table_is_met() => Losses.ShouldBeMet();

    [Theory]
    [InlineData(433.92, 25.1959765789)]
    [InlineData(868.4, 31.2221795175)]
    [InlineData(908.4, 31.6133257328)]
    [InlineData(2440, 40.1955797487)]
    public void At_one_metre_it_has_the_value_every_budget_starts_from(double megahertz, double expectedDb) =>
        FreeSpace.LossDb(1, megahertz).ShouldBePrintedAs(expectedDb, "12 digits are printed");

    [Fact]
    public void Distance_and_frequency_are_refused_just_outside_their_range()
    {
        FreeSpace.LossDb(FreeSpace.DistanceMetres.Min, FreeSpace.FrequencyMegahertz.Max).Should().BePositive();
        ((Action)(() => FreeSpace.LossDb(FreeSpace.DistanceMetres.Min * 0.999, 2440))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => FreeSpace.LossDb(FreeSpace.DistanceMetres.Max * 1.001, 2440))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => FreeSpace.LossDb(1, FreeSpace.FrequencyMegahertz.Max * 1.001))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => FreeSpace.LossDb(1, FreeSpace.FrequencyMegahertz.Min * 0.999))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => FreeSpace.LossDb(double.NaN, 2440))).Should().Throw<ArgumentOutOfRangeException>();
    }
}
