using MeshSim.Cli.Progress;

namespace MeshSim.Cli.Tests.Progress;

public sealed class StepsTests
{
    /// <summary>The screen is written to four times a second; a busy machine may take its time.</summary>
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);

    [Fact]
    public void Nothing_is_shown_when_nobody_watches()
    {
        using var output = new StringWriter();
        using var error = new StringWriter();

        Steps.Show(new() { Output = output, Error = error }, 1, step => Work(step)).Should().Be(42);

        error.ToString().Should().BeEmpty();
        output.ToString().Should().BeEmpty();
    }

    [Fact]
    public void A_long_run_shows_its_steps_on_the_error_stream_and_text_means_nothing_but_itself()
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        using TextWriter shown = TextWriter.Synchronized(error);

        Steps.Show(new() { Output = output, Error = shown, ShowsProgress = true, ProgressAfter = TimeSpan.Zero }, 1, step =>
        {
            int answer = Work(step);
            SpinWait.SpinUntil(() => error.ToString().Contains("Map of [red] plugs", StringComparison.Ordinal), LongestWait).Should().BeTrue();
            return answer;
        }).Should().Be(42);

        output.ToString().Should().BeEmpty();
    }

    [Fact]
    public void A_run_that_is_over_before_anybody_wonders_shows_nothing()
    {
        using var error = new StringWriter();

        Steps.Show(new() { Output = TextWriter.Null, Error = error, ShowsProgress = true, ProgressAfter = LongestWait }, 1, Work).Should().Be(42);

        error.ToString().Should().BeEmpty();
    }

    [Fact]
    public void A_failure_arrives_as_it_was_thrown()
    {
        Action run = () => Steps.Show<int>(new() { Output = TextWriter.Null, Error = TextWriter.Null, ShowsProgress = true }, 1, _ => throw new InputException("error: so"));

        run.Should().Throw<InputException>();
    }

    [Fact]
    public void A_stopped_run_ends_at_its_next_step()
    {
        Terminal terminal = new() { Output = TextWriter.Null, Error = TextWriter.Null, Stopping = new(canceled: true) };

        Action run = () => Steps.Show(terminal, 1, step => Work(step));

        run.Should().Throw<OperationCanceledException>();
    }

    private static int Work(Action<string> step)
    {
        step("Map of [red] plugs");
        return 42;
    }
}
