namespace MeshSim.Files.Sources;

/// <summary>What may serve as a name or a note.</summary>
internal static class NameText
{
    private const int Longest = 200;

    /// <summary>The rule, for messages.</summary>
    public static readonly string Rule =
        FormattableString.Invariant($"a text has 1 to {Longest} characters on one line, with neither control characters nor spaces at its ends");

    /// <summary>Whether a text may serve.</summary>
    public static bool IsUsable(string text) =>
        text.Length is > 0 and <= Longest && !char.IsWhiteSpace(text[0]) && !char.IsWhiteSpace(text[^1]) && !text.Any(IsUnfit);

    // Line and paragraph separators break a line of output as a line feed does.
    private static bool IsUnfit(char c) => char.IsControl(c) || c is '\u2028' or '\u2029';
}
