namespace MeshSim.Cli.Outputs;

/// <summary>Comma-separated text: quotes where a field needs them, line feeds as line ends.</summary>
internal static class CsvText
{
    /// <summary>One field.</summary>
    public static string Field(string text) =>
        text.AsSpan().IndexOfAny(",\"\n\r") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    /// <summary>One line with its end.</summary>
    public static string Line(IEnumerable<string> fields) => string.Join(',', fields.Select(Field)) + "\n";
}
