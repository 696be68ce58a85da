using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;
using MeshSim.Quantities;

namespace MeshSim.Files.Tables;

/// <summary>Reads the values of one row. What cannot be read is reported and null.</summary>
/// <param name="row">The row.</param>
/// <param name="problems">Takes the errors.</param>
internal sealed class RowReader(CsvRow row, DiagnosticList problems)
{
    /// <summary>From where to where the row goes.</summary>
    public (SourcePlace From, SourcePlace To) Range => (row.Place, row.End);

    /// <summary>Where the field of a column begins.</summary>
    public SourcePlace PlaceOf(string column) => row.PlaceOf(column);

    /// <summary>The text of a column; null when it is blank, and with an error when it is not fit for a name.</summary>
    public string? Text(string column)
    {
        string text = row[column];
        if (text.Length == 0) return null;
        if (NameText.IsUsable(text)) return text;
        problems.Error(PlaceOf(column), $"{column}: {KnownNames.Quote(text)} cannot be used", NameText.Rule);
        return null;
    }

    /// <summary>The text of a column; null with an error when there is none.</summary>
    public string? RequiredText(string column)
    {
        if (row[column].Length > 0) return Text(column);
        ReportBlank(column);
        return null;
    }

    /// <summary>The number of a column; null when it is blank, and with an error when it is not a number in the range.</summary>
    public double? Number(string column, ValidRange range)
    {
        string text = row[column];
        if (text.Length == 0) return null;
        if ((NumberText.Parse(text) ?? WithDecimalComma(column, text)) is not { } number)
        {
            (string message, string help) = NumberProblem.Explain(text);
            problems.Error(PlaceOf(column), $"{column}: {message}", help);
            return null;
        }

        if (range.Contains(number)) return number;
        problems.Error(PlaceOf(column), FormattableString.Invariant($"{column} is {number}"), $"it must be {range}".TrimEnd());
        return null;
    }

    /// <summary>The number of a column; null with an error when there is none in the range.</summary>
    public double? RequiredNumber(string column, ValidRange range)
    {
        if (row[column].Length > 0) return Number(column, range);
        ReportBlank(column);
        return null;
    }

    /// <summary>What the word in a column stands for; null when it is blank, and with an error when the word is unknown.</summary>
    /// <param name="column">The column.</param>
    /// <param name="words">The words and what they stand for; capitals make no difference.</param>
    public T? Choice<T>(string column, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        string text = row[column];
        if (text.Length == 0) return null;
        foreach ((string word, T value) in words)
            if (word.Equals(text, StringComparison.OrdinalIgnoreCase)) return value;
        problems.Error(
            PlaceOf(column),
            $"{column}: unknown word {KnownNames.Quote(text)}",
            () => KnownNames.Help(text, [.. words.Keys], "words"));
        return null;
    }

    /// <summary>What the word in a column stands for; null with an error when there is none.</summary>
    public T? RequiredChoice<T>(string column, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (row[column].Length > 0) return Choice(column, words);
        ReportBlank(column);
        return null;
    }

    // Between commas a comma in a number cannot be told from one between numbers; between semicolons or tabs it can.
    private double? WithDecimalComma(string column, string text)
    {
        if (row.Table.Separator == ',' || text.Count(',') != 1 || text.Contains('.', StringComparison.Ordinal)) return null;
        if (NumberText.Parse(text.Replace(',', '.')) is not { } number) return null;
        if (!row.Table.HasDecimalCommas)
        {
            problems.Notice(
                PlaceOf(column),
                FormattableString.Invariant($"{KnownNames.Quote(text)} has a decimal comma and is read as {number}"),
                "so is every such number of this file, whose fields are not separated by commas");
        }

        row.Table.HasDecimalCommas = true;
        return number;
    }

    /// <summary>The note in a column; "" when it is blank. Any text will do, line breaks included.</summary>
    public string Note(string column) => row[column];

    /// <summary>The note in a column; "" with an error when it is blank.</summary>
    public string RequiredNote(string column)
    {
        if (row[column].Length == 0) ReportBlank(column);
        return row[column];
    }

    private void ReportBlank(string column) => problems.Error(PlaceOf(column), $"{column} is blank", "fill it in");
}
