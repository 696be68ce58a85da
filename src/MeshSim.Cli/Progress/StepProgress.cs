using System.Globalization;

namespace MeshSim.Cli.Progress;

/// <summary>Which step a run is at, for how long, and how much longer it will take if the steps to come are like those done.</summary>
/// <param name="expected">Steps that the run will begin, as far as is known before it starts.</param>
internal sealed class StepProgress(int expected)
{
    private readonly Lock guard = new();
    private string name = "Working";
    private int begun;
    private TimeSpan doneAt;

    /// <summary>A step begins, and with that one of those before it is done; which one of several side by side, nobody needs to know.</summary>
    /// <param name="step">What it does.</param>
    /// <param name="elapsed">Since the run began.</param>
    public void Begin(string step, TimeSpan elapsed)
    {
        lock (guard) (name, begun, doneAt) = (step, begun + 1, elapsed);
    }

    /// <summary>The step, and how long is left; how long it has been while nothing is known of what is left.</summary>
    /// <param name="elapsed">Since the run began.</param>
    public string InWords(TimeSpan elapsed)
    {
        lock (guard)
            return name + (Left(elapsed) is { } left ? $", about {Seconds(left)} s left" : $", {Seconds(elapsed)} s so far");
    }

    private TimeSpan? Left(TimeSpan elapsed)
    {
        int done = begun - 1;
        if (done < 1 || begun > expected) return null;

        // What is spent on the present step counts against it, and no more than the whole of it: a slow step holds the figure still.
        TimeSpan each = doneAt / done, spent = elapsed - doneAt;
        return (each * (expected - done)) - (spent < each ? spent : each);
    }

    private static string Seconds(TimeSpan time) => Math.Ceiling(time.TotalSeconds).ToString("0", CultureInfo.InvariantCulture);
}
