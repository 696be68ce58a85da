namespace MeshSim.Cli.Tests.Commands;

public sealed class HelpTests
{
    [Theory]
    [InlineData("meshsim")]
    [InlineData("new")]
    [InlineData("import")]
    [InlineData("check")]
    [InlineData("report")]
    [InlineData("routes")]
    [InlineData("routers")]
    [InlineData("rehearse")]
    [InlineData("explain")]
    [InlineData("bands")]
    [InlineData("links")]
    [InlineData("map")]
    [InlineData("hub")]
    [InlineData("repeaters")]
    [InlineData("sheets")]
    [InlineData("compare")]
    [InlineData("record")]
    [InlineData("fit")]
    [InlineData("loss")]
    public async Task Help_says_what_was_approved(string command)
    {
        Run run = command == "meshsim" ? await Run.Of("--help") : await Run.Of(command, "--help");

        run.Code.Should().Be(0);
        run.Error.Should().BeEmpty();
        Approval.Verify(run.Output, $"help-{command}.txt");
    }
}
