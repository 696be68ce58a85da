using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace MeshSim.Cli.Json;

/// <summary>Turns result records into JSON: camelCase names, two blanks of indent, line feeds, the same bytes everywhere.</summary>
internal static class JsonText
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, // The text never goes into a web page; names stay readable.
        Converters = { new FigureConverter(), new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower) },
    };

    /// <summary>One result as an object, several as an array of the same objects; ended by a line feed.</summary>
    public static string OfEach<T>(IEnumerable<T> results)
    {
        T[] all = [.. results];
        return all.Length == 1 ? Of(all[0]) : Of(all);
    }

    /// <summary>One result as an object, ended by a line feed.</summary>
    public static string Of<T>(T result) => JsonSerializer.Serialize(result, Options) + "\n";

    /// <summary>
    /// Writes twelve significant digits: far more than a figure here means, and fewer than the last bits that one
    /// processor's logarithm does not share with another's. What is infinite or unknown is null.
    /// </summary>
    private sealed class FigureConverter : JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
        {
            string figure = value.ToString("G12", CultureInfo.InvariantCulture);
            if (double.IsFinite(value)) writer.WriteNumberValue(double.Parse(figure, CultureInfo.InvariantCulture));
            else writer.WriteNullValue();
        }
    }
}
