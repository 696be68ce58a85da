using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Tables;

/// <summary>What is said about readings.csv.</summary>
public sealed class ReadingTableTests
{
    [Theory]
    [InlineData("stick,lamp,-61", "stick,lmap,-61", "readings.csv(2,7): error: no device is called \"lmap\"; did you mean \"lamp\"?")]
    [InlineData("stick,lamp,-61", "stick,stick,-61", "readings.csv(2,7): error: a device does not hear itself; name another device")]
    [InlineData("stick,lamp,-61", "stick,meter,-61", "readings.csv(2,7): error: \"meter\" is in network \"meters\", \"stick\" in \"plugs\"; a reading is between two devices of one network")]
    [InlineData("stick,lamp,-61", "stick,lamp,\"-61,5\"", "readings.csv(2,12): error: rssi_dbm: \"-61,5\" has a decimal comma; use a point: -61.5")]
    [InlineData("stick,lamp,-61", "stick,lamp,-261", "readings.csv(2,12): error: rssi_dbm is -261; it must be -150 to 20 dBm")]
    public void A_bad_field_is_reported_at_its_first_character(string find, string replacement, params string[] said) =>
        ChangedSample.Says("readings.csv", find, replacement).Should().Equal(said);

    [Fact]
    public void Of_a_hundred_thousand_bad_lines_the_first_are_shown_and_the_rest_counted()
    {
        string[] said = ChangedSample.Says("readings.csv", "stick,lamp,-61,", string.Concat(Enumerable.Repeat("stick,lmap,-61,\n", 100_000)) + "stick,lamp,-61,");

        said.Should().HaveCount(51);
        said[0].Should().StartWith("readings.csv(2,7): error: no device is called \"lmap\"");
        said[50].Should().EndWith("error: and 99950 more; put the ones above right first");
    }
}
