using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace MeshSim.Files.Yaml;

/// <summary>The events of a YAML text, one after the other. Whatever the text holds, the only exception is <see cref="YamlException"/>.</summary>
internal sealed class YamlEvents
{
    private readonly Parser parser;
    private ParsingEvent? next;
    private Mark end = Mark.Empty;

    /// <summary>Starts at the beginning of a text.</summary>
    public YamlEvents(string text) => parser = new(new StringReader(text));

    /// <summary>Takes the next event.</summary>
    public ParsingEvent Take()
    {
        ParsingEvent taken = Peek();
        next = null;
        return taken;
    }

    /// <summary>Takes the next event if it is of a kind; null when it is of another.</summary>
    public T? TakeIf<T>()
        where T : ParsingEvent
    {
        T? found = Peek() as T;
        if (found is not null) next = null;
        return found;
    }

    private ParsingEvent Peek()
    {
        if (next is not null) return next;
        try
        {
            if (parser.MoveNext() && parser.Current is { } current) next = current;
        }
        catch (Exception exception) when (exception is InvalidOperationException or ArgumentException or FormatException or OverflowException)
        {
            // The scanner meets some malformed texts (an unclosed key at the end of a line is one) in a state that it did not foresee.
            throw new YamlException(end, end, "the text makes no sense here", exception);
        }

        if (next is null) throw new YamlException(end, end, "the text ends too early");
        end = next.End;
        return next;
    }
}
