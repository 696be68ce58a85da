using System.Diagnostics;

namespace MeshSim.Benchmarks.Masters;

/// <summary>Processor time, which other work on the machine does not lengthen as it does the time of day.</summary>
internal sealed class ProcessorClock
{
    // Solvers that know the time of day alone are asked again with more of it until they have had their share of a processor.
    private const int Attempts = 5;
    private const double Enough = 0.8, Most = 3;

    private readonly TimeSpan start = Now();

    /// <summary>Processor time of this process since the clock was started, s.</summary>
    public double Seconds => (Now() - start).TotalSeconds;

    /// <summary>
    /// Runs a solver whose limit is of another kind (time of day, its own count of work) until it has ended by itself or has had most of
    /// the processor time.
    /// </summary>
    /// <param name="limitSeconds">The processor time, s.</param>
    /// <param name="run">From a limit to what came out.</param>
    public static MasterTrial Within(double limitSeconds, Func<double, MasterTrial> run)
    {
        double limit = limitSeconds;
        for (int attempt = 1; ; attempt++)
        {
            MasterTrial trial = run(limit);
            if (trial.IsProven || trial.ProcessorSeconds >= Enough * limitSeconds || attempt == Attempts) return trial;
            limit *= Math.Min(Most, limitSeconds / Math.Max(trial.ProcessorSeconds, limitSeconds / Most));
        }
    }

    private static TimeSpan Now() => Process.GetCurrentProcess().TotalProcessorTime;
}
