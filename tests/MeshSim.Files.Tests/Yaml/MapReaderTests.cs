using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Yaml;

/// <summary>What is said about keys and values of home.yaml.</summary>
public sealed class MapReaderTests
{
    [Theory]
    [InlineData("region: EU", "regoin: EU", "home.yaml(2,1): error: a home has no key \"regoin\"; did you mean \"region\"?")]
    [InlineData("ceiling: 2.5", "celing: 2.5", "home.yaml(10,5): error: a storey has no key \"celing\"; did you mean \"ceiling\"?")]
    [InlineData("{ from: [0, 0], to: [2, 4] }", "{ form: [0, 0], to: [2, 4] }", "home.yaml(14,15): error: a room has no key \"form\"; did you mean \"from\"?")]
    [InlineData("is: brick-full }", "iss: brick-full }", "home.yaml(18,38): error: a wall has no key \"iss\"; did you mean \"is\"?")]
    [InlineData("must hold: true", "must_hold: true", "home.yaml(39,111): error: a state has no key \"must_hold\"; did you mean \"must hold\"?")]
    [InlineData("availability: 0.9", "avail: 0.9", "home.yaml(4,37): error: the model has no key \"avail\"; did you mean \"availability\"?")]
    [InlineData("at: 1, width: 0.8", "at: 1,5, width: 0.8", "home.yaml(21,63): error: an opening has no key \"5\"; if the comma before it is meant as a decimal comma, use a point")]
    public void An_unknown_key_is_reported_with_the_nearest_known_one(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);

    [Theory]
    [InlineData("home: Sample\n", "", "home.yaml(1,1): error: a home lacks the key \"home\"; add \"home:\" and its value")]
    [InlineData("ceiling: 2.5\n    ", "", "home.yaml(9,5): error: a storey lacks the key \"ceiling\"; add \"ceiling:\" and its value")]
    [InlineData("structure: 0.3\n    ", "", "home.yaml(25,5): error: a storey lacks the key \"structure\"; add \"structure:\" and its value")]
    [InlineData(", coordinator: receiver", "", "home.yaml(35,5): error: a network lacks the key \"coordinator\"; add \"coordinator:\" and its value")]
    [InlineData("at: 1, width: 0.8, ", "width: 0.8, ", "home.yaml(21,9): error: an opening lacks the key \"at\"; add \"at:\" and its value")]
    [InlineData(
        "between: [hall, kitchen], at: 1",
        "at: 1",
        "home.yaml(21,9): error: it does not say which wall is meant; use one of \"between: [room, room]\", \"of: room\" with \"facing: south\", \"wall: "
            + "name\", \"line: [[x, y], [x, y]]\"")]
    [InlineData(
        "between: [hall, kitchen], at: 1",
        "between: [hall, kitchen], of: hall, facing: east, at: 1",
        "home.yaml(21,9): error: it says in more than one way which wall is meant; use one of \"between: [room, room]\", \"of: room\" with \"facing: "
            + "south\", \"wall: name\", \"line: [[x, y], [x, y]]\"")]
    public void A_missing_key_is_reported_at_what_lacks_it(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);

    [Theory]
    [InlineData("ceiling: 2.5", "ceiling: 2,5", "home.yaml(10,14): error: \"ceiling\": \"2,5\" has a decimal comma; use a point: 2.5")]
    [InlineData("ceiling: 2.5", "ceiling: .nan", "home.yaml(10,14): error: \"ceiling\": \".nan\" is not a finite number; write an ordinary number such as 2.45")]
    [InlineData("ceiling: 2.5", "ceiling: .inf", "home.yaml(10,14): error: \"ceiling\": \".inf\" is not a finite number; write an ordinary number such as 2.45")]
    [InlineData("ceiling: 2.5", "ceiling: 1e999", "home.yaml(10,14): error: \"ceiling\": \"1e999\" is not a finite number; write an ordinary number such as 2.45")]
    [InlineData("ceiling: 2.5", "ceiling: 2.5 m", "home.yaml(10,14): error: \"ceiling\": \"2.5 m\" is not a number; leave the unit out: 2.5")]
    [InlineData("ceiling: 2.5", "ceiling: high", "home.yaml(10,14): error: \"ceiling\": \"high\" is not a number; write a number such as 2.45")]
    [InlineData("ceiling: 2.5", "ceiling: -2.5", "home.yaml(10,14): error: \"ceiling\" is -2.5; it must be 0.5 to 20 m")]
    [InlineData("ceiling: 2.5", "ceiling:", "home.yaml(10,13): error: \"ceiling\" must be a number, not nothing; write a number, 0.5 to 20 m")]
    [InlineData("ceiling: 2.5", "ceiling: [2.5]", "home.yaml(10,14): error: \"ceiling\" must be a number, not a list; write a number, 0.5 to 20 m")]
    [InlineData("from: [0, 0], to: [2, 4]", "from: [0,5, 0], to: [2, 4]", "home.yaml(14,21): error: a place has 2 numbers, not 3; write [x, y], with points as decimal marks")]
    [InlineData("from: [0, 0], to: [2, 4]", "from: [0, nan], to: [2, 4]", "home.yaml(14,25): error: a coordinate: \"nan\" is not a finite number; write an ordinary number such as 2.45")]
    [InlineData("from: [0, 0], to: [2, 4]", "from: [0, 5000], to: [2, 4]", "home.yaml(14,25): error: a coordinate is 5000; it must be -1000 to 1000 m")]
    [InlineData("channel: 20,", "channel: 20.5,", "home.yaml(34,56): error: \"channel\" must be a whole number; write 20 or 21")]
    public void A_number_must_be_finite_in_range_and_have_a_point(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);
}
