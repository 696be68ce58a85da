using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace MeshSim.Cli.Commands;

/// <summary>The help of a command, followed by how it is used.</summary>
internal sealed class HelpWithExamples : SynchronousCommandLineAction
{
    private readonly HelpAction help;
    private readonly (string Heading, string Text)[] rootSections;

    private HelpWithExamples(HelpAction help, (string Heading, string Text)[] rootSections) =>
        (this.help, this.rootSections) = (help, rootSections);

    /// <summary>Puts it in the place of a root's own help.</summary>
    /// <param name="root">The root.</param>
    /// <param name="rootSections">What follows the help of the root itself.</param>
    public static void Install(RootCommand root, (string Heading, string Text)[] rootSections)
    {
        HelpOption option = root.Options.OfType<HelpOption>().Single();
        foreach (string alias in option.Aliases.Where(alias => alias.StartsWith('/')).ToArray()) option.Aliases.Remove(alias); // A home may be called /h.
        var builtIn = (HelpAction)option.Action!;
        builtIn.MaxWidth = Terminal.PipedWidth;
        option.Action = new HelpWithExamples(builtIn, rootSections);
    }

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        int code = help.Invoke(parseResult);
        Command command = parseResult.CommandResult.Command;
        (string, string)[] sections = command is IHasExample has ? [("Example", has.Example)] : rootSections;
        foreach ((string heading, string text) in sections)
        {
            string indented = string.Concat(text.Split('\n').Select(line => $"  {line}\n"));
            parseResult.InvocationConfiguration.Output.Write($"{heading}:\n{indented}\n");
        }

        return code;
    }
}
