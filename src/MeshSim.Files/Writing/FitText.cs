using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using MeshSim.Devices;
using MeshSim.Propagation;

namespace MeshSim.Files.Writing;

/// <summary>The text of <c>fit.yaml</c>: what readings taught about the networks of a home.</summary>
public static class FitText
{
    /// <summary>Figures are kept to so many decimals: finer than any reading.</summary>
    private const int Decimals = 4;

    private const string Head = """
        # What the readings of this home taught, written by "meshsim fit --write". Corrections are decibels on top of the catalogue.
        # Delete this file to go back to the catalogue; fit again when the plan, the devices or the readings have changed.

        """;

    /// <summary>The text, with line feeds as line ends; empty when nothing was fitted.</summary>
    public static string Of(Home home)
    {
        ArgumentNullException.ThrowIfNull(home);

        Network[] fitted = [.. home.Networks.Where(network => network.Fit is not null)];
        if (fitted.Length == 0) return "";
        StringBuilder text = new(Head.ReplaceLineEndings("\n"));
        text.Append("fits:\n");
        foreach (Network network in fitted) Append(text, network, network.Fit!);
        return text.ToString();
    }

    private static void Append(StringBuilder text, Network network, NetworkFit fit)
    {
        text.Append(CultureInfo.InvariantCulture, $"  - network: {YamlWords.Text(network.Name.Value)}\n");
        text.Append(CultureInfo.InvariantCulture, $"    model: {ModelNames.Of(fit.Model)}\n");
        text.Append(CultureInfo.InvariantCulture, $"    readings: {fit.Readings}\n");
        text.Append(CultureInfo.InvariantCulture, $"    shadowing: {Number(fit.Shadowing.Value)}\n");
        text.Append(CultureInfo.InvariantCulture, $"    exponent: {YamlWords.Map(Figures("value", fit.Parameters[0]))}\n");
        foreach (FittedParameter detour in fit.Parameters.Where(parameter => parameter.Kind == FittedKind.Detour))
            text.Append(CultureInfo.InvariantCulture, $"    detour: {YamlWords.Map(Figures("value", detour))}\n");
        AppendList(text, "constructions", "construction", "correction", fit.Parameters.Where(parameter => parameter.Kind == FittedKind.Construction));
        AppendList(text, "mountings", "mounting", "correction", fit.Parameters.Where(parameter => parameter.Kind == FittedKind.Mounting));
        foreach (FittedParameter common in fit.Offsets.Where(parameter => parameter.Kind == FittedKind.CommonOffset))
            text.Append(CultureInfo.InvariantCulture, $"    common offset: {YamlWords.Map(Figures("offset", common))}\n");
        AppendList(text, "offsets", "device", "offset", fit.Offsets.Where(parameter => parameter.Kind == FittedKind.Offset));
        if (fit.Correlations.IsEmpty) return;
        text.Append("    correlations: # each parameter above, from the second on, with all before it\n");
        foreach (ImmutableArray<double> row in fit.Correlations)
            text.Append(CultureInfo.InvariantCulture, $"      - [{string.Join(", ", row.Select(Number))}]\n");
    }

    private static void AppendList(StringBuilder text, string key, string nameKey, string valueKey, IEnumerable<FittedParameter> parameters)
    {
        FittedParameter[] all = [.. parameters];
        if (all.Length == 0) return;
        text.Append(CultureInfo.InvariantCulture, $"    {key}:\n");
        foreach (FittedParameter parameter in all)
            text.Append(CultureInfo.InvariantCulture, $"      - {YamlWords.Map([(nameKey, YamlWords.Text(parameter.Name)), .. Figures(valueKey, parameter)])}\n");
    }

    private static (string Key, string Value)[] Figures(string valueKey, FittedParameter parameter) =>
    [
        (valueKey, Number(parameter.Value)),
        ("error", Number(parameter.StandardError)),
        ("readings", parameter.Readings.ToString(CultureInfo.InvariantCulture)),
    ];

    private static string Number(double value) => YamlWords.Number(Math.Round(value, Decimals));
}
