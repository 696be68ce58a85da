namespace MeshSim.Cli.Wording;

/// <summary>Lists of names as a sentence or a table cell shows them.</summary>
internal static class NameList
{
    /// <summary>The first few names are written out, the rest are counted: JSON has them all.</summary>
    private const int Shown = 4;

    private const int SpokenInFull = 12;

    /// <summary>Names separated by commas, such as "a, b, c, d and 3 more"; empty for none.</summary>
    public static string Short<TName>(IReadOnlyCollection<TName> names)
    {
        string first = string.Join(", ", names.Take(Shown));
        return names.Count > Shown ? FormattableString.Invariant($"{first} and {names.Count - Shown} more") : first;
    }

    /// <summary>Names joined as in speech, of more than a dozen the first few and a count.</summary>
    public static string SpokenShort(IReadOnlyList<string> names) => names.Count > SpokenInFull ? Short(names) : Spoken(names);

    /// <summary>Words joined as in speech, such as "a, b and c".</summary>
    public static string Spoken(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}";
}
