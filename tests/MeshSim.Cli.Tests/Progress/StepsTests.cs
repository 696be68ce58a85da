using MeshSim.Cli.Progress;

namespace MeshSim.Cli.Tests.Progress;

public sealed class StepsTests
{
    [Fact]
    public void Nothing_is_shown_when_nobody_watches()
    {
        using var output = new StringWriter();
        using var error = new StringWriter();

        Steps.Show(new() { Output = output, Error = error }, step => Work(step)).Should().Be(42);

        error.ToString().Should().BeEmpty();
        output.ToString().Should().BeEmpty();
    }

    [Fact]
    public void What_is_shown_goes_to_the_error_stream_and_means_nothing_but_itself()
    {
        using var output = new StringWriter();
        using var error = new StringWriter();

        Steps.Show(new() { Output = output, Error = error, ShowsProgress = true }, step => Work(step)).Should().Be(42);

        error.ToString().Should().Contain("Map of [red] plugs");
        output.ToString().Should().BeEmpty();
    }

    [Fact]
    public void A_stopped_run_ends_at_its_next_step()
    {
        Terminal terminal = new() { Output = TextWriter.Null, Error = TextWriter.Null, Stopping = new(canceled: true) };

        Action run = () => Steps.Show(terminal, step => Work(step));

        run.Should().Throw<OperationCanceledException>();
    }

    private static int Work(Action<string> step)
    {
        step("Map of [red] plugs");
        return 42;
    }
}
