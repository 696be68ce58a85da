using System.Collections.Immutable;
using System.Globalization;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Fitting;

namespace MeshSim.Cli.Tables;

/// <summary>What was fitted, and how well it fits.</summary>
internal static class FitTables
{
    /// <summary>How far predictions lie from readings.</summary>
    public static Table Quality(FitResult answer) => new(
        [new("Predicted with"), new("Pairs", true), new("RMSE dB", true), new("Bias dB", true)],
        [
            Row("the catalogue alone", answer.Before),
            Row("the fit", answer.After),
            Row("the fit to all devices but one of the two", answer.CrossValidated),
        ])
    {
        Notes = ["Over pairs that heard each other. Bias: above 0 more is promised than arrives. The last line leaves out devices named above."],
    };

    /// <summary>The parameters before and after.</summary>
    public static Table Parameters(FitResult answer) => new(
        [new("Parameter"), new("Catalogue", true), new("Fitted", true), new("±", true), new("Readings", true), new("Learnt %", true)],
        [.. answer.Parameters.Select(Row)])
    {
        Notes =
        [
            "Losses in dB straight through, offsets in dB. ±: one standard error. "
            + "Learnt: how much of the catalogue's uncertainty the readings took away; near 0 the value is still the catalogue's.",
        ],
    };

    private static ImmutableArray<string> Row(string what, Discrepancy discrepancy) =>
        [what, Figures.Count(discrepancy.Pairs), Figures.Decibels(discrepancy.Rmse), Figures.Decibels(discrepancy.Bias)];

    private static ImmutableArray<string> Row(ParameterChange change)
    {
        string format = change.Parameter.Kind == FittedKind.Exponent ? "0.00" : "0.0;-0.0;0.0";
        return
        [
            FitWords.Name(change.Parameter),
            Number(change.Catalogue),
            Number(change.Fitted),
            Number(change.Parameter.StandardError),
            Figures.Count(change.Parameter.Readings),
            (100 * change.Learnt).ToString("0", CultureInfo.InvariantCulture),
        ];

        string Number(double value) => Math.Round(value, 2).ToString(format, CultureInfo.InvariantCulture);
    }
}
