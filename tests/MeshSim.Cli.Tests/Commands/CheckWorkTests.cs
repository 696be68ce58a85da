namespace MeshSim.Cli.Tests.Commands;

public sealed class CheckWorkTests
{
    [Fact]
    public async Task A_home_in_order_is_told_in_numbers()
    {
        Run run = await Run.Of("check", Run.TwoRooms);

        run.Code.Should().Be(0);
        run.Error.Should().BeEmpty();
        Approval.Verify(run.Output, "check-two-rooms.txt");
    }

    [Fact]
    public async Task Walls_without_rooms_are_in_order_and_leave_no_outlets_to_assume()
    {
        Run run = await Run.Of("check", Run.TracedDrawing);

        run.Code.Should().Be(0);
        run.Error.Should().BeEmpty();
        run.Output.Should().Contain("1 storey, 0 rooms").And.Contain("none can be assumed where no rooms are drawn");
    }

    [Fact]
    public async Task Json_counts_the_same()
    {
        Run run = await Run.Of("check", Run.LongHouse, "--json");

        run.Json.GetProperty("storeys")[0].GetProperty("rooms").GetInt32().Should().Be(4);
        run.Json.GetProperty("networks")[0].GetProperty("devices").GetInt32().Should().Be(3);
        run.Json.GetProperty("outletsGiven").GetInt32().Should().Be(3);
        run.Json.GetProperty("outletsAssumed").GetInt32().Should().Be(0);
    }
}
