using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Homes;

/// <summary>What is said about a floor plan that cannot be built.</summary>
public sealed class StoreyReaderTests
{
    [Theory]
    [InlineData(
        "from: [0, 0], to: [2, 4]",
        "from: [0, 0], to: [2.5, 4]",
        "home.yaml(15,27): error: \"kitchen\" overlaps \"hall\" near (2, 0); outlines along the centre lines of walls, so that neighbours share an edge")]
    [InlineData(
        "[[2, 0], [6, 0], [6, 4], [2, 4]]",
        "[[2, 0], [6, 4], [6, 0], [2, 4]]",
        "home.yaml(15,27): error: the outline of \"kitchen\" meets itself: (2, 0) to (6, 4) and (6, 0) to (2, 4); the corners in the order in which one "
            + "walks around")]
    [InlineData("line: [[3, 1], [3, 2]]", "line: [[3, 1], [3, 1]]", "home.yaml(19,17): error: the wall at (3, 1) has no length; two different ends")]
    [InlineData(
        "at: 1, width: 0.8",
        "at: 3.5, width: 0.8",
        "home.yaml(21,61): error: \"kitchen door\", 3.5 to 4.3 m, does not lie within one piece of its wall; the wall \"hall | kitchen\" runs 0 to 4 m from "
            + "its left end, or the lower end of an upright wall")]
    [InlineData("sill: 1, height: 1", "sill: 2, height: 1", "home.yaml(22,96): error: the head of \"sink window\" lies 3 m above the floor, higher than the ceiling; at most 2.5 m")]
    [InlineData(
        "from: [0.2, 1], to: [1.2, 3]",
        "from: [5.2, 1], to: [7.2, 3]",
        "home.yaml(29,26): error: the stairwell of \"first\" reaches outside the rooms of that storey; corners within its rooms")]
    [InlineData("height: 1.8, is: metal", "height: 2.8, is: metal", "home.yaml(24,69): error: the top of \"fridge\" lies 2.8 m above the floor, higher than the ceiling; at most 2.5 m")]
    [InlineData(
        "    openings:\n",
        "    openings:\n      - { door: second door, between: [hall, kitchen], at: 1.5, width: 0.8, height: 2, is: door-timber }\n",
        "home.yaml(22,61): error: \"kitchen door\" overlaps \"second door\"; \"second door\" takes 1.5 to 2.3 m of the wall")]
    [InlineData(
        "    ceiling: 2.5\n",
        "    ceiling: 2.5\n    floor: joists-boards-lath\n",
        "home.yaml(11,12): error: the lowest storey has no \"floor\"; storeys are listed lowest first; nothing below the lowest one is planned")]
    [InlineData("[6, 4], [2, 4]]", "[6, 4], [2]]", "home.yaml(15,52): error: a place has 2 numbers, not 1; write [x, y], with points as decimal marks")]
    [InlineData(
        "    stairwells: [{ from: [0.2, 1], to: [1.2, 3] }]\n    outer: cavity-brick\n    rooms:\n      bedroom: { from: [0, 0], to: [6, 4] }\n",
        "",
        "home.yaml(25,13): error: the storey \"first\" has neither rooms nor walls; write its rooms, or its walls as lines; leave out a storey without either",
        "devices.csv(4,49): error: no room of storey \"first\" is called \"bedroom\"; there are no rooms")]
    public void What_does_not_fit_is_reported_at_the_value_that_says_so(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);
}
