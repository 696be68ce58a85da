using MeshSim.Propagation.Recommendations;

namespace MeshSim.Tests.Propagation.Recommendations;

/// <summary>COST 231 multi-wall against tables of 12 digits.</summary>
public class Cost231Tests
{
    public static readonly ReproducedTable FloorTerm = new("Propagation/COST231_floor-term.csv", 7, ["floors_kf"], CompareFloorTerm);

    public static readonly ReproducedTable MultiWall = new(
        "Propagation/COST231_multi-wall.csv", 385, ["f_MHz", "d_m", "k_light", "k_heavy", "k_floor"], CompareMultiWall);

    [Fact]
    public void Every_row_of_the_floor_term_is_met() => FloorTerm.ShouldBeMet();

    [Fact]
    public void Every_row_of_the_multi_wall_table_is_met() => MultiWall.ShouldBeMet();

    [Theory]
    [InlineData(433.92, 1.9, true, 6.9, true, 14.8, true)]
    [InlineData(868.4, 1.9, false, 6.9, true, 14.8, false)]
    [InlineData(1800, 3.4, false, 6.9, false, 18.3, false)]
    [InlineData(2440, 3.4, true, 6.9, true, 18.3, true)]
    public void A_frequency_takes_the_nearest_published_losses_and_says_so(
        double megahertz, double lightDb, bool lightMarked, double heavyDb, bool heavyMarked, double floorDb, bool floorMarked) =>
        Cost231.LossesAt(new(megahertz)).Should().Be(
            new Cost231Losses(new(lightDb, lightMarked), new(heavyDb, heavyMarked), new(floorDb, floorMarked)));

    [Fact]
    public void Marks_change_at_the_ends_of_the_named_bands()
    {
        Cost231.LossesAt(new(Cost231.Around900Megahertz.Max)).Light.IsExtrapolated.Should().BeFalse();
        Cost231.LossesAt(new(Cost231.Around900Megahertz.Max + 1)).Light.IsExtrapolated.Should().BeTrue();
        Cost231.LossesAt(new(Cost231.Around1800Megahertz.Min)).Heavy.IsExtrapolated.Should().BeFalse();
        Cost231.LossesAt(new(Cost231.Around1800Megahertz.Min - 1)).Heavy.IsExtrapolated.Should().BeTrue();
    }

    [Fact]
    public void A_negative_number_of_floors_is_refused()
    {
        Action negative = () => Cost231.FloorTermDb(-1, 10);
        negative.Should().Throw<ArgumentOutOfRangeException>();
    }

    private static IEnumerable<Comparison> CompareFloorTerm(PublishedRow row)
    {
        int floors = row.Whole("floors_kf");
        yield return row.Printed("floor_loss_dB_Lf18p3_1800MHz", Cost231.FloorTermDb(floors, Cost231.Floor1800Db));
        yield return row.Printed("floor_loss_dB_Lf14p8_900MHz", Cost231.FloorTermDb(floors, Cost231.Floor900Db));
    }

    private static IEnumerable<Comparison> CompareMultiWall(PublishedRow row)
    {
        int floors = row.Whole("k_floor");
        double lightDb = row.Number("k_light") * Cost231.LightWall1800Db, heavyDb = row.Number("k_heavy") * Cost231.HeavyWall1800Db;
        double distance = row.Number("d_m"), frequency = row.Number("f_MHz");
        yield return row.Printed("total_dB", Cost231.MultiWallLossDb(distance, frequency, lightDb, heavyDb, floors, Cost231.Floor1800Db));
        yield return row.Printed("free_space_dB", FreeSpace.LossDb(distance, frequency));
        yield return row.Exactly("Lc_dB", 0);
        yield return row.Printed("walls_dB", lightDb + heavyDb);
        yield return row.Printed("floors_dB", Cost231.FloorTermDb(floors, Cost231.Floor1800Db));
    }
}
