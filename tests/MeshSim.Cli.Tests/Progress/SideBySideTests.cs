using System.Collections.Immutable;
using MeshSim.Cli.Progress;

namespace MeshSim.Cli.Tests.Progress;

public sealed class SideBySideTests
{
    [Fact]
    public void Results_come_in_the_order_of_the_things_whoever_is_done_first()
    {
        ImmutableArray<int> things = [.. Enumerable.Range(0, 40)];

        SideBySide.Of(things, Slow, CancellationToken.None).Should().Equal(things.Select(thing => thing * thing));
    }

    [Fact]
    public void A_run_stopped_within_a_step_ends_as_stopped()
    {
        using var stopping = new CancellationTokenSource();

        Action run = () => SideBySide.Of(
            [1, 2, 3],
            _ =>
            {
                stopping.Cancel();
                stopping.Token.ThrowIfCancellationRequested();
                return 0;
            },
            stopping.Token);

        run.Should().Throw<OperationCanceledException>();
    }

    private static int Slow(int thing)
    {
        Thread.SpinWait(1000 * (40 - thing));
        return thing * thing;
    }
}
