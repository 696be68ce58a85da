using System.CommandLine;
using System.CommandLine.Parsing;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Cli.Parsing;

/// <summary>Says what is wrong with a command line.</summary>
internal static class ParseProblem
{
    /// <summary>
    /// One line for each problem. A word that means nothing explains the other problems that it causes, so then it is named
    /// alone, with the nearest word that means something.
    /// </summary>
    public static IReadOnlyList<string> Lines(ParseResult parsed)
    {
        Command command = parsed.CommandResult.Command;
        string help = $"see meshsim {(command is RootCommand ? "" : command.Name + " ")}--help";
        string[] problems = parsed.UnmatchedTokens.Count > 0
            ? [Unmatched(parsed.UnmatchedTokens[0], command)]
            : [.. parsed.Errors.Select(error => Where(error) + OneLine(error.Message)).Distinct(StringComparer.Ordinal)];
        return [.. problems.Select(problem => $"error: {problem}; {help}")];
    }

    /// <summary>The option that a problem is about, unless the message says it.</summary>
    private static string Where(ParseError error) =>
        (error.SymbolResult as OptionResult ?? error.SymbolResult?.Parent as OptionResult) is { Option.Name: var name }
        && !error.Message.Contains(name, StringComparison.Ordinal) ? $"{name}: " : "";

    private static string OneLine(string message) =>
        string.Join(' ', message.TrimEnd('.').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static string Unmatched(string token, Command command)
    {
        bool isOption = token.StartsWith('-');
        string what = isOption ? "options" : "commands";
        IEnumerable<Symbol> symbols = isOption ? command.Options : command.Subcommands;
        string[] known = [.. symbols.Select(symbol => symbol.Name)];
        return known.Length == 0
            ? $"{KnownNames.Quote(token)} is one word too many"
            : $"{KnownNames.Quote(token)} is not known here: {KnownNames.Help(token, known, what)}";
    }
}
