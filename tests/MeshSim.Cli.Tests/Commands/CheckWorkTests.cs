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
        run.OutputInOneLine.Should().Contain("1 storey, 0 rooms").And.Contain("none can be assumed where no rooms are drawn");
    }

    [Theory]
    [InlineData("plan.png", "89504E47")]
    [InlineData("plan.svg", "3C737667")]
    [InlineData("plan.pdf", "25504446")]
    public async Task The_plan_is_drawn_in_the_format_of_its_ending_the_same_each_time(string name, string beginning)
    {
        using var folder = new TemporaryFolder();

        foreach (string file in new[] { folder[name], folder["again-" + name] }) (await Run.Of("check", Run.TwoRooms, "--draw", file)).Code.Should().Be(0);

        Convert.ToHexString(File.ReadAllBytes(folder[name])).Should().StartWith(beginning);
        File.ReadAllBytes(folder["again-" + name]).Should().Equal(File.ReadAllBytes(folder[name]));
    }

    [Fact]
    public async Task A_home_with_problems_is_drawn_with_them_and_refused_all_the_same()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder["home"]);
        foreach (string file in Directory.GetFiles(Run.TwoRooms))
            File.WriteAllText(
                Path.Combine(folder["home"], Path.GetFileName(file)),
                File.ReadAllText(file).Replace("region: EU", "region: Atlantis", StringComparison.Ordinal));

        Run run = await Run.Of("check", folder["home"], "--draw", folder["plan.svg"]);

        run.Code.Should().Be(2);
        run.Output.Should().BeEmpty();
        File.ReadAllText(folder["plan.svg"]).Should().Contain("problem").And.Contain("home.yaml(");
    }

    [Theory]
    [InlineData("plan.bmp", "ends in none of .png, .svg, .pdf")]
    [InlineData("nowhere/plan.png", "there is no folder")]
    public async Task A_place_that_cannot_be_drawn_to_is_refused(string name, string message)
    {
        using var folder = new TemporaryFolder();

        Run run = await Run.Of("check", Run.TwoRooms, "--draw", folder[name]);

        run.Code.Should().Be(2);
        run.Error.Should().Contain(message);
        folder.Contents().Should().BeEmpty();
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
