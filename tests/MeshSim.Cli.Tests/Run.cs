using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace MeshSim.Cli.Tests;

/// <summary>One run of the program inside the test process.</summary>
internal sealed partial record Run(int Code, string Output, string Error)
{
    /// <summary>The home folders that the tests read.</summary>
    public static string Data { get; } = Path.Combine(AppContext.BaseDirectory, "Data");

    /// <summary>The home where everything is reached.</summary>
    public static string TwoRooms { get; } = Path.Combine(Data, "two-rooms");

    /// <summary>The home where a repeater helps.</summary>
    public static string LongHouse { get; } = Path.Combine(Data, "long-house");

    /// <summary>The home where none does.</summary>
    public static string TinShed { get; } = Path.Combine(Data, "tin-shed");

    /// <summary>The home where a lamp behind a switch carries a sensor.</summary>
    public static string SwitchedLamp { get; } = Path.Combine(Data, "switched-lamp");

    /// <summary>The home drawn as walls alone.</summary>
    public static string TracedDrawing { get; } = Path.Combine(Data, "traced-drawing");

    /// <summary>The root of the project.</summary>
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", ".."));

    /// <summary>The output as JSON.</summary>
    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    /// <summary>The output wherever its lines are broken.</summary>
    public string OutputInOneLine => InOneLine(Output);

    /// <summary>Lines of the error stream.</summary>
    public string[] ErrorLines => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>A text wherever its lines are broken.</summary>
    public static string InOneLine(string text) => WhiteSpace().Replace(text, " ").Trim();

    public static async Task<Run> Of(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        int code = await Application.RunAsync(args, new Terminal { Output = output, Error = error });
        return new(code, output.ToString(), error.ToString());
    }

    /// <summary>A culture that writes numbers as in Germany; the process itself knows no culture but the invariant one.</summary>
    public static CultureInfo DecimalComma()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "−";
        return culture;
    }

    [GeneratedRegex(@"\s+", RegexOptions.NonBacktracking)]
    private static partial Regex WhiteSpace();

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
