using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace MeshSim.Files.Yaml;

/// <summary>
/// Builds the tree of a YAML file from the parser's events. Aliases, tags and deep nesting are refused as they are met, so
/// that no input can grow in memory beyond its own length.
/// </summary>
internal sealed class YamlTree
{
    /// <summary>A home nests seven levels deep; the rest is room for what comes.</summary>
    public const int DeepestLevel = 32;

    private readonly SourceFile file;
    private readonly DiagnosticList problems;
    private readonly YamlEvents events;

    // Where the brackets that are open at the moment were opened: an unclosed one is the usual reason of a syntax error.
    private readonly Stack<SourcePlace> openBrackets = new();

    private YamlTree(SourceFile file, string text, DiagnosticList problems)
    {
        this.file = file;
        this.problems = problems;
        events = new(text);
    }

    /// <summary>The root of a file; null with at least one error when there is none.</summary>
    public static YamlNode? Parse(SourceFile file, DiagnosticList problems)
    {
        string text = file.Text;
        if (ReportTabs(file, text, problems)) return null;

        YamlTree tree = new(file, text, problems);
        try
        {
            return tree.ReadDocument();
        }
        catch (YamlException exception)
        {
            tree.ReportSyntax(exception);
            return null;
        }
    }

    private static bool ReportTabs(SourceFile file, string text, DiagnosticList problems)
    {
        bool found = false;
        int line = 0;
        foreach (ReadOnlySpan<char> content in text.AsSpan().EnumerateLines())
        {
            line++;
            int tab = content.IndexOf('\t');
            if (tab < 0 || !content[..tab].IsWhiteSpace()) continue;
            problems.Error(new(file.Name, line, tab + 1), "the line is indented with a tab", "indent with spaces");
            found = true;
        }

        return found;
    }

    private void ReportSyntax(YamlException exception)
    {
        SourcePlace place = PlaceOf(exception.Start);
        if (openBrackets.TryPeek(out SourcePlace bracket))
        {
            string where = FormattableString.Invariant($"line {bracket.Line}, column {bracket.Column}");
            problems.Error(
                place,
                "this is not valid YAML inside brackets",
                $"look at the bracket that opens at {where}: is it closed, and is there a comma between its parts?");
            return;
        }

        string reason = exception.Message.TrimEnd('.');
        problems.Error(place, $"this is not valid YAML ({reason})", "look at the indentation, colons and quotes here and just above");
    }

    private YamlNode? ReadDocument()
    {
        events.TakeIf<StreamStart>();
        if (events.TakeIf<DocumentStart>() is null)
        {
            problems.Error(SourcePlace.StartOf(file.Name), "the file is empty", "write a home, starting with \"home:\" and its name");
            return null;
        }

        YamlNode? root = ReadNode(1);
        if (root is null) return null;

        events.TakeIf<DocumentEnd>();
        if (events.TakeIf<DocumentStart>() is not { } second) return root;
        problems.Error(PlaceOf(second.Start), "a second document begins here", "keep one home in one file");
        return null;
    }

    /// <summary>The node that comes next; null with an error when reading must end.</summary>
    private YamlNode? ReadNode(int level)
    {
        ParsingEvent next = events.Take();
        SourcePlace place = PlaceOf(next.Start);
        if (level > DeepestLevel)
        {
            problems.Error(
                place,
                FormattableString.Invariant($"the file nests more than {DeepestLevel} levels deep"),
                "a home needs far fewer");
            return null;
        }

        if (next is AnchorAlias || (next is NodeEvent node && !(node.Anchor.IsEmpty && node.Tag.IsEmpty)))
        {
            problems.Error(
                place,
                "anchors, aliases and tags (&, *, !) are not accepted",
                "write the value out; put text that begins with such a sign in quotes");
            return null;
        }

        return next switch
        {
            Scalar scalar => new YamlText(place, scalar.Value, scalar.Style == ScalarStyle.Plain && scalar.Value is "" or "~" or "null"),
            SequenceStart start => ReadList(place, start.Style == SequenceStyle.Flow, level),
            MappingStart start => ReadMap(place, start.Style == MappingStyle.Flow, level),
            _ => throw new YamlException(next.Start, next.End, "unexpected content"),
        };
    }

    private YamlList? ReadList(SourcePlace place, bool hasBrackets, int level)
    {
        if (hasBrackets) openBrackets.Push(place);
        ImmutableArray<YamlNode>.Builder items = ImmutableArray.CreateBuilder<YamlNode>();
        while (events.TakeIf<SequenceEnd>() is null)
        {
            if (ReadNode(level + 1) is not { } item) return null;
            items.Add(item);
        }

        if (hasBrackets) openBrackets.Pop();
        return new(place, items.ToImmutable());
    }

    private YamlMap? ReadMap(SourcePlace place, bool hasBrackets, int level)
    {
        if (hasBrackets) openBrackets.Push(place);
        ImmutableArray<YamlEntry>.Builder entries = ImmutableArray.CreateBuilder<YamlEntry>();
        Dictionary<string, SourcePlace> seen = [];
        while (events.TakeIf<MappingEnd>() is null)
        {
            if (ReadNode(level + 1) is not { } key || ReadNode(level + 1) is not { } value) return null;
            if (key is not YamlText { IsEmpty: false } name)
                problems.Error(key.Place, $"{key.Describe} cannot be a key", "write a word and a colon");
            else if (!seen.TryAdd(name.Text, key.Place))
                problems.Error(
                    key.Place,
                    $"the key {KnownNames.Quote(name.Text)} is written twice",
                    FormattableString.Invariant($"it is already there in line {seen[name.Text].Line}; keep one"));
            else
                entries.Add(new(name.Text, key.Place, value));
        }

        if (hasBrackets) openBrackets.Pop();
        return new(place, entries.ToImmutable());
    }

    private SourcePlace PlaceOf(Mark mark) => new(file.Name, (int)Math.Max(1, mark.Line), (int)Math.Max(1, mark.Column));
}
