using MeshSim.Cli.Progress;

namespace MeshSim.Cli.Tests.Progress;

public sealed class StepProgressTests
{
    [Fact]
    public void Until_a_step_is_done_only_the_time_so_far_is_known()
    {
        var progress = new StepProgress(4);
        progress.Begin("Links of plugs", TimeSpan.Zero);

        progress.InWords(TimeSpan.FromSeconds(2.2)).Should().Be("Links of plugs, 3 s so far");
    }

    [Fact]
    public void Steps_to_come_are_taken_to_last_as_long_as_those_done()
    {
        var progress = new StepProgress(4);
        progress.Begin("Links of plugs", TimeSpan.Zero);
        progress.Begin("Map of plugs", TimeSpan.FromSeconds(10));

        progress.InWords(TimeSpan.FromSeconds(10)).Should().Be("Map of plugs, about 30 s left");
        progress.InWords(TimeSpan.FromSeconds(14)).Should().Be("Map of plugs, about 26 s left");
    }

    [Fact]
    public void A_step_that_lasts_longer_than_expected_holds_the_figure()
    {
        var progress = new StepProgress(3);
        progress.Begin("a", TimeSpan.Zero);
        progress.Begin("b", TimeSpan.FromSeconds(10));

        progress.InWords(TimeSpan.FromSeconds(50)).Should().Be("b, about 10 s left");
    }

    [Fact]
    public void More_steps_than_expected_make_no_promise()
    {
        var progress = new StepProgress(1);
        progress.Begin("a", TimeSpan.Zero);
        progress.Begin("b", TimeSpan.FromSeconds(3));

        progress.InWords(TimeSpan.FromSeconds(4)).Should().Be("b, 4 s so far");
    }
}
