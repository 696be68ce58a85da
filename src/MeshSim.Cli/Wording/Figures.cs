using System.Globalization;
using MeshSim.Mesh;
using MeshSim.Quantities;

namespace MeshSim.Cli.Wording;

/// <summary>Figures as a table shows them: a decimal point, one digit after it.</summary>
internal static class Figures
{
    /// <summary>A ratio without its unit.</summary>
    public static string Decibels(Decibels value) => Tenths(value.Value);

    /// <summary>A margin with what it may be off by, one standard deviation, such as "12.3 ±6.8"; without that where nobody computed it.</summary>
    public static string Uncertain(Decibels margin, MarginUncertainty uncertainty) =>
        uncertainty == default ? Decibels(margin) : $"{Decibels(margin)} ±{Decibels(uncertainty.Total)}";

    /// <summary>A level without its unit.</summary>
    public static string Dbm(PowerLevel level) => Tenths(level.Dbm);

    /// <summary>A number with one decimal; infinity in words. Never minus zero.</summary>
    public static string Tenths(double value) =>
        double.IsFinite(value) ? Math.Round(value, 1).ToString("0.0;-0.0;0.0", CultureInfo.InvariantCulture) : "never";

    /// <summary>
    /// A share in per cent. Neither all nor nothing is claimed before it is true: 99.97 % stays below 100, 0.02 % above 0.
    /// </summary>
    public static string Percent(double share) => share switch
    {
        >= 1 => "100",
        > 0.999 => ">99.9",
        > 0 and < 0.001 => "<0.1",
        _ => (share * 100).ToString("0.0", CultureInfo.InvariantCulture),
    };

    /// <summary>A count.</summary>
    public static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>A count with its noun, such as "1 device" or "3 devices".</summary>
    public static string Counted(int count, string noun) => $"{Count(count)} {noun}{(count == 1 ? "" : "s")}";

    /// <summary>A number with as many digits as it needs, up to three decimals.</summary>
    public static string Plain(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
