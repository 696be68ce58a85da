using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;
using MeshSim.Quantities;

namespace MeshSim.Files.Yaml;

/// <summary>Reads the values of one map whose keys are all known beforehand.</summary>
internal sealed class MapReader
{
    private readonly YamlMap map;
    private readonly string what;
    private readonly DiagnosticList problems;

    // Keys that an unknown one was probably meant for: that one has its error, so that the missing one needs none.
    private readonly HashSet<string> misspelt = [];

    private MapReader(YamlMap map, string what, DiagnosticList problems)
    {
        this.map = map;
        this.what = what;
        this.problems = problems;
    }

    /// <summary>Where the map begins.</summary>
    public SourcePlace Place => map.Place;

    /// <summary>Where the last value in the map begins.</summary>
    public SourcePlace End => LastOf(map);

    /// <summary>Opens a node as a map and reports every key that does not belong there; null with an error when it is no map.</summary>
    /// <param name="node">The node.</param>
    /// <param name="what">What it describes, with article: "a storey".</param>
    /// <param name="problems">Takes the errors.</param>
    /// <param name="keys">The keys that belong there.</param>
    public static MapReader? Open(YamlNode node, string what, DiagnosticList problems, params string[] keys)
    {
        if (node is not YamlMap map)
        {
            problems.Error(
                node.Place,
                $"{what} is written as keys with values, not as {node.Describe}",
                $"known keys: {string.Join(", ", keys)}");
            return null;
        }

        MapReader reader = new(map, what, problems);
        foreach (YamlEntry entry in map.Entries.Where(entry => !keys.Contains(entry.Key)))
        {
            problems.Error(entry.Place, $"{what} has no key {KnownNames.Quote(entry.Key)}", HelpForKey(entry, keys));
            if (KnownNames.Nearest(entry.Key, keys) is { } meant) reader.misspelt.Add(meant);
        }

        return reader;
    }

    /// <summary>Whether the key of an entry is fit for a name; an error when not.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="what">What it names, with article.</param>
    /// <param name="problems">Takes the error.</param>
    public static bool CheckName(YamlEntry entry, string what, DiagnosticList problems)
    {
        if (NameText.IsUsable(entry.Key)) return true;
        problems.Error(entry.Place, $"{KnownNames.Quote(entry.Key)} cannot be the name of {what}", NameText.Rule);
        return false;
    }

    /// <summary>Whether a key is there.</summary>
    public bool Has(string key) => map.Find(key) is not null;

    /// <summary>The value of a key, or null when the key is not there.</summary>
    public YamlNode? Find(string key) => map.Find(key)?.Value;

    /// <summary>Where the value of a key begins, or the map when the key is not there.</summary>
    public SourcePlace PlaceOf(string key) => Find(key)?.Place ?? Place;

    /// <summary>The value of a key; null with an error, this or that of a misspelt key, when it is not there.</summary>
    public YamlNode? Require(string key)
    {
        YamlNode? value = Find(key);
        if (value is null && !misspelt.Contains(key))
            problems.Error(
                Place,
                $"{what} lacks the key \"{key}\"",
                $"add \"{key}:\" and its value");
        return value;
    }

    /// <summary>The text of a key; null when the key is not there, and with an error when it holds something else.</summary>
    public string? Text(string key) => Find(key) is { } value ? TextOf(value, key) : null;

    /// <summary>The text of a key; null with an error when there is none.</summary>
    public string? RequiredText(string key) => Require(key) is { } value ? TextOf(value, key) : null;

    /// <summary>The number of a key; null when the key is not there, and with an error when it is not a number in the range.</summary>
    public double? Number(string key, ValidRange range) => Find(key) is { } value ? NumberOf(value, $"\"{key}\"", range) : null;

    /// <summary>The number of a key; null with an error when there is none in the range.</summary>
    public double? RequiredNumber(string key, ValidRange range) => Require(key) is { } value ? NumberOf(value, $"\"{key}\"", range) : null;

    /// <summary>The whole number of a key; null when the key is not there, and with an error when it is not one in the range.</summary>
    public int? WholeNumber(string key, ValidRange range)
    {
        if (Number(key, range) is not { } number) return null;
        if (number == Math.Floor(number)) return (int)number;
        problems.Error(
            PlaceOf(key),
            $"\"{key}\" must be a whole number",
            FormattableString.Invariant($"write {Math.Floor(number)} or {Math.Ceiling(number)}"));
        return null;
    }

    /// <summary>Whether a key says yes; false when it is not there.</summary>
    public bool Flag(string key)
    {
        if (Find(key) is not { } value) return false;
        if (value is YamlText { Text: "true" or "yes" }) return true;
        if (value is YamlText { Text: "false" or "no" }) return false;
        problems.Error(value.Place, $"\"{key}\" is neither yes nor no: {value.Describe}", "write true or false");
        return false;
    }

    /// <summary>The items of a list; none when the key is not there, and with an error when it holds something else.</summary>
    public ImmutableArray<YamlNode> List(string key)
    {
        switch (Find(key))
        {
            case null or YamlText { IsEmpty: true }: return [];
            case YamlList list: return list.Items;
            case { } other:
                problems.Error(
                    other.Place,
                    $"\"{key}\" is written as a list, not as {other.Describe}",
                    "write [a, b] or one item a line, each after a hyphen");
                return [];
        }
    }

    /// <summary>The texts of a list, each with its place.</summary>
    public ImmutableArray<PlacedName> Names(string key) =>
    [
        .. from node in List(key)
           let text = TextOf(node, key)
           where text is not null
           select new PlacedName(text, node.Place),
    ];

    /// <summary>The number of a node; null with an error when it is not one in the range.</summary>
    /// <param name="node">The node.</param>
    /// <param name="what">What the number is, for the message.</param>
    /// <param name="range">Accepted values.</param>
    public double? NumberOf(YamlNode node, string what, ValidRange range)
    {
        if (node is not YamlText { IsEmpty: false } scalar)
        {
            problems.Error(node.Place, $"{what} must be a number, not {node.Describe}", $"write a number, {range}");
            return null;
        }

        if (NumberText.Parse(scalar.Text) is not { } number)
        {
            (string message, string help) = NumberProblem.Explain(scalar.Text);
            problems.Error(node.Place, $"{what}: {message}", help);
            return null;
        }

        if (range.Contains(number)) return number;
        problems.Error(node.Place, FormattableString.Invariant($"{what} is {number}"), $"it must be {range}".TrimEnd());
        return null;
    }

    private string? TextOf(YamlNode node, string key)
    {
        if (node is YamlText { IsEmpty: false } scalar && NameText.IsUsable(scalar.Text)) return scalar.Text;
        string help = node is YamlText { IsEmpty: false } ? NameText.Rule : "write a text";
        problems.Error(node.Place, $"\"{key}\" must be a text, not {node.Describe}", help);
        return null;
    }

    private static SourcePlace LastOf(YamlNode node) => node switch
    {
        YamlMap { Entries.IsEmpty: false } map => LastOf(map.Entries[^1].Value),
        YamlList { Items.IsEmpty: false } list => LastOf(list.Items[^1]),
        _ => node.Place,
    };

    private static string HelpForKey(YamlEntry entry, string[] keys)
    {
        // In brackets, "at: 1,2" reads as at = 1 and a key 2 without a value.
        bool isDecimalComma = entry.Value is YamlText { IsEmpty: true } && NumberText.Parse(entry.Key) is not null;
        return isDecimalComma
            ? "if the comma before it is meant as a decimal comma, use a point"
            : KnownNames.Help(entry.Key, keys, "keys");
    }
}

/// <summary>A name as it stands in a file.</summary>
/// <param name="Name">The name.</param>
/// <param name="Place">Where it stands.</param>
internal readonly record struct PlacedName(string Name, SourcePlace Place);
