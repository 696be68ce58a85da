using Spectre.Console;

namespace MeshSim.Cli.Progress;

/// <summary>
/// Tells a person who watches the error stream what a long run is doing; silent when nobody does. Between two steps is also
/// where a run can be stopped.
/// </summary>
internal static class Steps
{
    /// <summary>Runs work that names each of its steps as it begins it.</summary>
    /// <param name="terminal">Where the steps are shown.</param>
    /// <param name="work">The work; it is handed the function that shows a step.</param>
    /// <exception cref="OperationCanceledException">The person stopped the run.</exception>
    public static T Show<T>(Terminal terminal, Func<Action<string>, T> work)
    {
        if (!terminal.ShowsProgress) return work(_ => terminal.Stopping.ThrowIfCancellationRequested());

        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(terminal.Error) });
        return console.Status().Start("Working", status => work(step =>
        {
            terminal.Stopping.ThrowIfCancellationRequested();
            status.Status(Markup.Escape(step));
        }));
    }
}
