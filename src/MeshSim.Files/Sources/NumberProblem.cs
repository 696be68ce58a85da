using MeshSim.Files.Diagnostics;
using MeshSim.Quantities;

namespace MeshSim.Files.Sources;

/// <summary>What is said of a text that is no number.</summary>
internal static class NumberProblem
{
    /// <summary>What is wrong with a text that <see cref="NumberText.Parse"/> refuses, and what would be right.</summary>
    public static (string Message, string Help) Explain(string text)
    {
        string quoted = KnownNames.Quote(text);
        if (IsNotFinite(text)) return ($"{quoted} is not a finite number", "write an ordinary number such as 2.45");

        string withPoint = text.Replace(',', '.');
        if (withPoint != text && NumberText.Parse(withPoint) is not null) return ($"{quoted} has a decimal comma", $"use a point: {withPoint}");

        string withoutUnit = text.TrimEnd([.. "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ%"]).TrimEnd();
        if (NumberText.Parse(withoutUnit) is not null) return ($"{quoted} is not a number", $"leave the unit out: {withoutUnit}");
        return ($"{quoted} is not a number", "write a number such as 2.45");
    }

    private static bool IsNotFinite(string text) =>
        NumberText.IsNotFinite(text) || text.TrimStart('+', '-', '.').ToUpperInvariant() is "NAN" or "INF" or "INFINITY" or "∞";
}
