using System.CommandLine;
using System.CommandLine.Invocation;
using System.Runtime.ExceptionServices;
using MeshSim.Cli.Commands;
using MeshSim.Cli.Parsing;

namespace MeshSim.Cli;

/// <summary>One run of the program: parse, then act, never both; and the one place where a failure becomes an exit code.</summary>
internal static class Application
{
    /// <summary>The environment variable that makes an internal error show where it happened.</summary>
    public const string TraceVariable = "MESHSIM_TRACE";

    /// <summary>Runs a command line.</summary>
    /// <param name="args">As the program got it.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stopping">Set to stop the run from outside; an interrupt from the keyboard does the same.</param>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    public static async Task<int> RunAsync(string[] args, Terminal terminal, CancellationToken stopping = default)
    {
        try
        {
            // Response files are off: a home may be called @home.
            ParseResult parsed = MeshSimCommand.Make(terminal).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            if (parsed.Action is ParseErrorAction) throw new InputException(ParseProblem.Lines(parsed));

            InvocationConfiguration configuration = new() { Output = terminal.Output, Error = terminal.Error, EnableDefaultExceptionHandler = false };
            return await WithItsOwnFault(() => parsed.InvokeAsync(configuration, stopping));
        }
        catch (InputException problem)
        {
            foreach (string line in problem.Lines) terminal.Error.Write(line + "\n");
            return (int)ExitCode.BadInput;
        }
        catch (OperationCanceledException)
        {
            terminal.Error.Write("stopped; nothing was written\n");
            return (int)ExitCode.Stopped;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            terminal.Error.Write($"error: the output cannot be written: {refused.Message}\n");
            return (int)ExitCode.BadInput;
        }
        catch (Exception fault)
        {
            terminal.Error.Write($"internal error: {fault.Message.ReplaceLineEndings(" ")}\n");
            terminal.Error.Write(terminal.Trace ? $"{fault}\n" : $"Set {TraceVariable}=1 and run again to see where; nothing was written.\n");
            return (int)ExitCode.InternalError;
        }
    }

    /// <summary>Does some work. What fails in one of several threads fails here as itself, not as one of several faults.</summary>
    internal static async Task<int> WithItsOwnFault(Func<Task<int>> work)
    {
        try
        {
            return await work();
        }
        catch (AggregateException faults)
        {
            ExceptionDispatchInfo.Throw(faults.Flatten().InnerExceptions[0]);
            throw;
        }
    }
}
