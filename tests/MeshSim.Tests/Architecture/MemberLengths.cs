using System.Text.RegularExpressions;

namespace MeshSim.Tests.Architecture;

/// <summary>
/// Counts the lines of methods and other members from their indentation, which the formatter guarantees: the members of a type
/// stand one step further in than the type, a body one step further in than its member.
/// </summary>
internal static partial class MemberLengths
{
    private const int IndentColumns = 4;

    /// <summary>Each member of a file with the number of lines of its body: what stands between its braces, or after its arrow.</summary>
    public static IEnumerable<(string Member, int Lines)> In(IReadOnlyList<string> lines)
    {
        int memberColumn = 0, bodyLines = 0;
        string? member = null;
        for (int i = 0; i < lines.Count; i++)
        {
            string text = lines[i].Trim();
            int column = lines[i].Length - lines[i].TrimStart().Length;
            if (text.Length == 0 || column > memberColumn)
            {
                bodyLines++;
                continue;
            }

            if (text == "{")
            {
                if (member is not null && TypeHeader().IsMatch(member)) (memberColumn, member) = (memberColumn + IndentColumns, null);
                bodyLines = 0;
                continue;
            }

            if (member is not null && !TypeHeader().IsMatch(member)) yield return (member, text[0] == '}' ? bodyLines : TrimmedLines(lines, i, bodyLines));
            bodyLines = 0;
            if (text[0] == '}' && column < memberColumn) memberColumn -= IndentColumns;
            member = text[0] is '}' or '/' or '[' or '#' ? null : text;
        }
    }

    // Blank lines between an expression body and the next member belong to neither.
    private static int TrimmedLines(IReadOnlyList<string> lines, int next, int count)
    {
        while (count > 0 && lines[--next].AsSpan().IsWhiteSpace()) count--;
        return count;
    }

    [GeneratedRegex(@"^[\w\s]*\b(class|struct|record|interface|enum)\s", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex TypeHeader();
}
