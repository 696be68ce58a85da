using MeshSim.Devices;
using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Homes;

/// <summary>What is said about the names of home.yaml.</summary>
public sealed class HomeFileReaderTests
{
    [Theory]
    [InlineData("region: EU", "region: UE", "home.yaml(2,9): error: unknown region \"UE\"; did you mean \"EU\"?")]
    [InlineData(
        "outer: cavity-brick\n    inner",
        "outer: cavity-brik\n    inner",
        "home.yaml(11,12): error: no construction is called \"cavity-brik\"; did you mean \"cavity-brick\"? (meshsim loss --list shows all)")]
    [InlineData(
        "{ between: [hall, kitchen], is: old-wall }",
        "{ between: [hall, kitchn], is: old-wall }",
        "home.yaml(17,27): error: no room of this storey is called \"kitchn\"; did you mean \"kitchen\"?")]
    [InlineData("facing: east", "facing: esat", "home.yaml(18,32): error: \"esat\" is no side of the compass; did you mean \"east\"?")]
    [InlineData("radio: short-range-868", "radio: shortrange-868", "home.yaml(35,31): error: no radio is called \"shortrange-868\"; did you mean \"short-range-868\"?")]
    [InlineData("channel: 20", "channel: 30", "home.yaml(34,56): error: the radio ieee802154-2450 has no channel 30; its channels are 11 to 26")]
    [InlineData("channel: 6", "channel: 15", "home.yaml(37,70): error: \"channel\" is 15; it must be 1 to 14")]
    [InlineData("coordinator: stick }", "coordinator: stik }", "home.yaml(34,73): error: the network \"plugs\" has no coordinator: no device is called \"stik\"; did you mean \"stick\"?")]
    [InlineData("coordinator: stick }", "coordinator: meter }", "home.yaml(34,73): error: \"meter\" is in network \"meters\"; name a device of network \"plugs\"")]
    [InlineData("storey: ground, at", "storey: groud, at", "home.yaml(37,36): error: no storey is called \"groud\"; did you mean \"ground\"?")]
    [InlineData("at: [1, 1, 2.2]", "at: [1, 1, 2.8]", "home.yaml(37,48): error: the height of the access point is 2.8; it must be 0 to 2.5 m above the floor of its storey")]
    [InlineData("off: [lamp]", "off: [lmap]", "home.yaml(39,29): error: no device is called \"lmap\"; did you mean \"lamp\"?")]
    [InlineData("circuits off: [kitchen]", "circuits off: [kitchens]", "home.yaml(39,51): error: no circuit is called \"kitchens\"; did you mean \"kitchen\"?")]
    [InlineData("switches off: [bed switch]", "switches off: [bedswitch]", "home.yaml(39,76): error: no switch is called \"bedswitch\"; did you mean \"bed switch\"?")]
    [InlineData("open: [kitchen door]", "open: [kitchen dor]", "home.yaml(39,96): error: no door or window is called \"kitchen dor\"; did you mean \"kitchen door\"?")]
    [InlineData("brick:220", "brik:220", "home.yaml(6,39): error: no material is called \"brik\"; did you mean \"brick\"?")]
    [InlineData("plaster:15", "plaster", "home.yaml(6,39): error: \"plaster\" has no material and thickness; write material:millimetres, such as plasterboard:12.5")]
    [InlineData(
        "construction: old-wall",
        "construction: brick-full",
        "home.yaml(6,21): error: there is already a construction called \"brick-full\"; give it a name that neither the catalogue nor this list has",
        "home.yaml(17,41): error: no construction is called \"old-wall\"; did you mean \"log-wall\"? (meshsim loss --list shows all)")]
    [InlineData("use: window", "use: windows", "home.yaml(7,37): error: unknown use \"windows\"; did you mean \"window\"?")]
    public void An_unknown_name_is_reported_with_the_nearest_known_one(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);

    [Theory]
    [InlineData("is: metal-cabinet", "is: metal-shet", "did you mean \"metal-sheet\"?")]
    [InlineData("is: old-wall }", "is: door-timbr }", "none of the 42 constructions that fit here has a similar name")]
    [InlineData("is: door-timber", "is: dor-timber", "did you mean \"door-timber\"?")]
    [InlineData("outer: cavity-brick\n    inner", "outer: roof-tile\n    inner", "did you mean \"roof-tiles\"?")]
    public void Only_constructions_of_the_fitting_use_are_suggested(string find, string replacement, string help) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Contain(said => said.EndsWith($"; {help} (meshsim loss --list shows all)"));

    [Theory]
    [InlineData("region: EU", "region: EU\nregion: EU", "home.yaml(3,1): error: the key \"region\" is written twice; it is already there in line 2; keep one")]
    [InlineData(
        "storey: first",
        "storey: ground",
        "home.yaml(25,13): error: two storeys are called \"ground\"; the first one is in line 9; give this one another name",
        "devices.csv(4,35): error: no storey is called \"first\"; known storeys: \"ground\"")]
    [InlineData(
        "bedroom: {",
        "hall: {",
        "home.yaml(32,7): error: two rooms are called \"hall\"; the first one is in line 14; give this one another name",
        "devices.csv(4,49): error: no room of storey \"first\" is called \"bedroom\"; known rooms: \"hall\"")]
    [InlineData("window: sink window", "window: kitchen door", "home.yaml(22,19): error: two openings are called \"kitchen door\"; the first one is in line 21; give this one another name")]
    [InlineData(
        "network: meters",
        "network: plugs",
        "home.yaml(35,16): error: two networks are called \"plugs\"; the first one is in line 34; give this one another name",
        "devices.csv(6,11): error: no network is called \"meters\"; known networks: \"plugs\"",
        "devices.csv(7,8): error: no network is called \"meters\"; known networks: \"plugs\"")]
    [InlineData(
        "hall: { from: [0, 0], to: [2, 4] }",
        "hall: { from: [0, 0], to: [2, 4] }\n      hall: { from: [0, 0], to: [2, 4] }",
        "home.yaml(15,7): error: the key \"hall\" is written twice; it is already there in line 14; keep one")]
    public void A_name_given_twice_is_reported_with_the_first_place(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);

    [Theory]
    [InlineData("fading: raleigh", "home.yaml(4,64): error: unknown fading \"raleigh\"; did you mean \"rayleigh\"?")]
    [InlineData("fading: rayleigh, k: 6", "home.yaml(4,77): error: \"k\" belongs to Rician fading; write \"fading: rician\" or leave \"k\" out")]
    [InlineData("fading: rician, k: 60", "home.yaml(4,75): error: \"k\" is 60; it must be -40 to 25 dB")]
    public void Fading_that_cannot_be_is_an_error(string fading, params string[] said) =>
        ChangedSample.Says("home.yaml", "availability: 0.9 }", $"availability: 0.9, {fading} }}").Should().Equal(said);

    [Theory]
    [InlineData("fading: none", Fading.None, 6)]
    [InlineData("fading: rayleigh", Fading.Rayleigh, 6)]
    [InlineData("fading: rician", Fading.Rician, 6)]
    [InlineData("fading: rician, k: 3", Fading.Rician, 3)]
    public void Fading_arrives_and_is_written(string fading, Fading kind, double steadyDb)
    {
        using TemporaryFolder folder = ChangedSample.Folder("home.yaml", "availability: 0.9 }", $"availability: 0.9, {fading} }}");
        PlanningParameters parameters = folder.Read().Home!.Parameters;
        (parameters.Fading, parameters.SteadyToScattered.Value).Should().Be((kind, steadyDb));

        HomeWriter.Write(folder.Read().Home!, folder.File("copy"));
        HomeFolder.Read(folder.File("copy")).Home!.Parameters.Should().Be(parameters);
    }

    [Fact]
    public void A_way_round_arrives_and_is_written()
    {
        using TemporaryFolder folder = ChangedSample.Folder("home.yaml", "exponent: 2,", "exponent: 2, detour: 17.5,");
        PlanningParameters parameters = folder.Read().Home!.Parameters;
        parameters.Detour.Value.Should().Be(17.5);

        HomeWriter.Write(folder.Read().Home!, folder.File("copy"));
        HomeFolder.Read(folder.File("copy")).Home!.Parameters.Should().Be(parameters);
    }

    [Fact]
    public void A_way_round_that_cannot_be_is_an_error() =>
        ChangedSample.Says("home.yaml", "exponent: 2,", "exponent: 2, detour: 2,").Should()
            .Equal("home.yaml(4,31): error: \"detour\" is 2; it must be 5 to 60 dB on the way round");
}
