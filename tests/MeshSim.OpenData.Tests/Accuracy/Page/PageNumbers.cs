using System.Globalization;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>Numbers as the page prints them, the same in every culture.</summary>
internal static class PageNumbers
{
    /// <summary>Two decimals; the sign of what rounds to nothing is dropped.</summary>
    public static string Hundredths(double value) => Signless(value, "0.00");

    /// <summary>One decimal.</summary>
    public static string Tenths(double value) => Signless(value, "0.0");

    /// <summary>A count.</summary>
    public static string Count(int value) => value.ToString("N0", CultureInfo.InvariantCulture);

    private static string Signless(double value, string format)
    {
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        return double.Parse(text, CultureInfo.InvariantCulture) == 0 ? text.TrimStart('-') : text.Replace('-', '−');
    }
}
