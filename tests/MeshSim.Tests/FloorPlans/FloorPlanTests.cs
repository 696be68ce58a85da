using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Tests.FloorPlans;

public sealed class FloorPlanTests
{
    private static readonly FloorPlan Plan = new(
    [
        new Storey
        {
            Name = new("ground"),
            ElevationMetres = 0,
            CeilingMetres = 2.5,
            Walls = [new Wall { Name = "wall", Start = default, End = PlanPoint.FromMetres(5, 0), Construction = new("brick"), Openings = [Door("first", 0.5), Door("second", 2)] }],
        },
    ]);

    [Fact]
    public void The_named_doors_stand_open_and_the_others_stay_as_they_are()
    {
        FloorPlan opened = Plan.WithOpen(["second"]);
        opened.Storeys[0].Walls[0].Openings.Select(opening => (opening.Name, opening.IsOpen)).Should().Equal(("first", false), ("second", true));
        opened.WithOpen(["first"]).Storeys[0].Walls[0].Openings.Should().OnlyContain(opening => opening.IsOpen);
        Plan.Storeys[0].Walls[0].Openings.Should().OnlyContain(opening => !opening.IsOpen);
    }

    [Fact]
    public void Opening_nothing_changes_nothing() => Plan.WithOpen([]).Should().BeSameAs(Plan);

    [Fact]
    public void An_unknown_door_is_refused_by_name() =>
        FluentActions.Invoking(() => Plan.WithOpen(["first", "third"])).Should().Throw<ArgumentException>().WithMessage("*third*");

    private static Opening Door(string name, double offsetMetres) => new()
    {
        Name = name,
        Kind = OpeningKind.Door,
        OffsetMetres = offsetMetres,
        WidthMetres = 0.8,
        HeightMetres = 2,
        Construction = new("door"),
    };
}
