using System.Diagnostics;
using Spectre.Console;

namespace MeshSim.Cli.Progress;

/// <summary>
/// Tells a person who watches the error stream what a long run is doing and how much longer it takes; silent when nobody does, and
/// while there has been no time to wonder. Between two steps is also where a run can be stopped.
/// </summary>
internal static class Steps
{
    private const int RefreshMilliseconds = 250;

    /// <summary>Runs work that names each of its steps as it begins it.</summary>
    /// <param name="terminal">Where the steps are shown.</param>
    /// <param name="expected">Steps that the work will begin, as far as is known.</param>
    /// <param name="work">The work; it is handed the function that shows a step.</param>
    /// <exception cref="OperationCanceledException">The person stopped the run.</exception>
    public static T Show<T>(Terminal terminal, int expected, Func<Action<string>, T> work)
    {
        if (!terminal.ShowsProgress) return work(_ => terminal.Stopping.ThrowIfCancellationRequested());

        var progress = new StepProgress(expected);
        var watch = Stopwatch.StartNew();
        var running = Task.Run(() => work(step =>
        {
            terminal.Stopping.ThrowIfCancellationRequested();
            progress.Begin(step, watch.Elapsed);
        }));
        if (!Ends(running, terminal.ProgressAfter)) Watch(terminal, running, () => progress.InWords(watch.Elapsed));
        return running.GetAwaiter().GetResult();
    }

    private static void Watch(Terminal terminal, Task running, Func<string> words)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(terminal.Error) });
        console.Status().Start(Markup.Escape(words()), status =>
        {
            while (!Ends(running, TimeSpan.FromMilliseconds(RefreshMilliseconds))) status.Status(Markup.Escape(words()));
        });
    }

    /// <summary>Whether work ends within a time, well or not.</summary>
    private static bool Ends(Task running, TimeSpan within) => Task.WaitAny([running], within) == 0;
}
