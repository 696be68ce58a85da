using MeshSim.Devices;
using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Homes;

/// <summary>What is said about the circuits of home.yaml.</summary>
public sealed class CircuitReaderTests
{
    private const string Good = "circuits:\n  - { circuit: kitchen, isolated at: \"hall, way 3\" }\n  - { circuit: lights, isolated at: loft }\nstates:";

    [Theory]
    [InlineData(
        "- { circuit: kitchen, isolated at: hall }",
        "- { circuit: kitchen, isolated at: loft }",
        "home.yaml(40,16): error: two circuits are called \"kitchen\"; the first one is in line 39; give this one another name")]
    [InlineData("- { circuit: kitchen }", "", "home.yaml(39,5): error: a circuit lacks the key \"isolated at\"; add \"isolated at:\" and its value")]
    [InlineData("- { isolated at: hall }", "", "home.yaml(39,5): error: a circuit lacks the key \"circuit\"; add \"circuit:\" and its value")]
    [InlineData("- { circuit: kitchen, isolated: hall }", "", "home.yaml(39,25): error: a circuit has no key \"isolated\"; did you mean \"isolated at\"?")]
    [InlineData(
        "- { circuit: kitchen, isolated at: \"\" }",
        "",
        "home.yaml(39,38): error: \"isolated at\" must be a text, not \"\"; a text has 1 to 200 characters on one line, with neither control characters nor "
            + "spaces at its ends")]
    [InlineData("- kitchen", "", "home.yaml(39,5): error: a circuit is written as keys with values, not as \"kitchen\"; known keys: circuit, isolated at")]
    [InlineData("- { circuit: kichten, isolated at: hall }", "", "home.yaml(39,16): notice: no device and no outlet is on circuit \"kichten\"; did you mean \"kitchen\"?")]
    [InlineData("- { circuit: cooker, isolated at: hall }", "", "home.yaml(39,16): notice: no device and no outlet is on circuit \"cooker\"; it is kept all the same")]
    public void What_cannot_be_meant_has_its_place(string first, string second, params string[] said)
    {
        string list = $"circuits:\n  {first}\n{(second.Length > 0 ? $"  {second}\n" : "")}states:";

        ChangedSample.Says("home.yaml", "states:", list).Should().Equal(said);
    }

    [Fact]
    public void A_circuit_that_only_the_list_knows_can_be_turned_off()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample(home: text => text
            .Replace("states:", "circuits: [{ circuit: cooker, isolated at: hall }]\nstates:", StringComparison.Ordinal)
            .Replace("circuits off: [kitchen]", "circuits off: [cooker]", StringComparison.Ordinal));

        folder.Says().Should().ContainSingle().Which.Should().Contain("notice");
    }

    [Fact]
    public void Circuits_arrive_in_order_and_are_written()
    {
        using TemporaryFolder folder = ChangedSample.Folder("home.yaml", "states:", Good);
        Home home = folder.Read().Home!;
        home.Circuits.Should().Equal(new Circuit("kitchen", "hall, way 3"), new Circuit("lights", "loft"));

        HomeWriter.Write(home, folder.File("copy"));

        HomeFolder.Read(folder.File("copy")).Home!.Circuits.Should().Equal(home.Circuits);
    }

    [Fact]
    public void What_was_there_before_and_since_is_kept_over_several_lines()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample(devices: text => text
            .Replace("tx_dbm,note", "tx_dbm,note,before,after", StringComparison.Ordinal)
            .Replace("kitchen,,,", "kitchen,,,,\"a plain lamp\ndrawing E3\",\"bulb, drawing E3a\"", StringComparison.Ordinal)
            .Replace("in-cupboard,,,,", "in-cupboard,,,,,,", StringComparison.Ordinal)
            .Replace("\"goes off, often\"", "\"goes off, often\",,", StringComparison.Ordinal)
            .Replace("surface,,,0,", "surface,,,0,,,", StringComparison.Ordinal)
            .Replace("0.6,0.6,1,,,,,,", "0.6,0.6,1,,,,,,,,", StringComparison.Ordinal)
            .Replace("in-metal-cabinet,,,,", "in-metal-cabinet,,,,,,", StringComparison.Ordinal));
        folder.Says().Should().BeEmpty();
        Device lamp = folder.Read().Home!.Devices[1];
        (lamp.Before, lamp.After).Should().Be(("a plain lamp\ndrawing E3", "bulb, drawing E3a"));

        HomeWriter.Write(folder.Read().Home!, folder.File("copy"));

        HomeFolder.Read(folder.File("copy")).Home!.Devices.Should().Equal(folder.Read().Home!.Devices, (one, other) => one.Before == other.Before && one.After == other.After);
    }
}
