using System.Globalization;
using System.Text;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Quantities;

namespace MeshSim.Files.Writing;

/// <summary>Single values as they are written in <c>home.yaml</c>.</summary>
internal static class YamlWords
{
    private const int Decimals = 9;

    /// <summary>A text: bare where YAML leaves no doubt about it, else in quotes.</summary>
    public static string Text(string text)
    {
        bool isPlain = text.All(c => char.IsAsciiLetterOrDigit(c) || c is ' ' or '-' or '_' or '.') && text.Trim() == text;
        return isPlain && text.Length > 0 && char.IsAsciiLetter(text[0]) && text != "null" ? text : Quoted(text);
    }

    /// <summary>A number, rounded where sums of decimal figures leave a tail of digits that nobody wrote.</summary>
    public static string Number(double number) => NumberText.Of(Math.Round(number, Decimals));

    /// <summary>A point: <c>[x, y]</c>.</summary>
    public static string Point(PlanPoint point) => $"[{Number(point.XMetres)}, {Number(point.YMetres)}]";

    /// <summary>Points: <c>[[x, y], [x, y]]</c>.</summary>
    public static string Points(IEnumerable<PlanPoint> points) => $"[{string.Join(", ", points.Select(Point))}]";

    /// <summary>Texts: <c>[a, b]</c>.</summary>
    public static string Texts(IEnumerable<string> texts) => $"[{string.Join(", ", texts.Select(Text))}]";

    /// <summary>Keys with values on one line: <c>{ a: 1, b: 2 }</c>.</summary>
    public static string Map(IEnumerable<(string Key, string Value)> entries) =>
        $"{{ {string.Join(", ", entries.Select(entry => $"{entry.Key}: {entry.Value}"))} }}";

    private static string Quoted(string text)
    {
        StringBuilder quoted = new("\"");
        foreach (char c in text)
        {
            if (c is '"' or '\\') quoted.Append('\\').Append(c);
            else if (IsUnprintable(c)) quoted.Append("\\u").Append(((int)c).ToString("X4", CultureInfo.InvariantCulture));
            else quoted.Append(c);
        }

        return quoted.Append('"').ToString();
    }

    private static bool IsUnprintable(char c) => char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF';
}
