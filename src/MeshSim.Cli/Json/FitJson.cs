using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Fitting;
using MeshSim.Fitting.Findings;
using MeshSim.Propagation;

namespace MeshSim.Cli.Json;

/// <summary>What readings say about one network, as JSON.</summary>
internal sealed record FitJson(
    string Home,
    ModelName Model,
    string Network,
    int Readings,
    int PairsHeard,
    int PairsNotHeard,
    ImmutableArray<FindingJson> Findings,
    ImmutableArray<OddPathJson> OddPaths,
    DiscrepancyJson Before,
    DiscrepancyJson After,
    DiscrepancyJson CrossValidated,
    double ShadowingDb,
    ImmutableArray<ParameterJson> Parameters,
    ImmutableArray<ConfoundedJson> Confounded,
    ImmutableArray<string> KeptFromCatalogue)
{
    /// <summary>The record of an answer.</summary>
    public static FitJson Of(Home home, FitResult answer) => new(
        home.Name,
        answer.Fit.Model,
        answer.Network.Name.Value,
        answer.Fit.Readings,
        answer.PairsHeard,
        answer.PairsNotHeard,
        [.. answer.Findings.Select(FindingJson.Of)],
        [.. answer.OddPaths.Select(odd => new OddPathJson(odd.First.Value, odd.Second.Value, odd.Excess.Value, odd.Deviations))],
        DiscrepancyJson.Of(answer.Before),
        DiscrepancyJson.Of(answer.After),
        DiscrepancyJson.Of(answer.CrossValidated),
        answer.Fit.Shadowing.Value,
        [.. answer.Parameters.Select(ParameterJson.Of)],
        [.. answer.Confounded.Select(pair => new ConfoundedJson(FitWords.Name(pair.First), FitWords.Name(pair.Second), pair.Correlation))],
        [.. answer.Uncrossed.Select(name => name.Value)]);
}

/// <summary>Something that readings say and the plan does not. Of what kind it is decides which fields are there.</summary>
internal sealed record FindingJson(
    string Kind, string Words, string? Device, string? Element, double? LossDb, double? StandardErrorDb, double? XMetres, double? YMetres, int Pairs, double Support)
{
    /// <summary>The record of a finding.</summary>
    public static FindingJson Of(Finding finding)
    {
        string words = FitWords.InWords(finding);
        return finding switch
        {
            HiddenDevice hidden => new("metal-box", words, hidden.Device.Value, null, hidden.Loss.Value, hidden.StandardError.Value, null, null, hidden.Pairs, hidden.Support),
            MovedDevice moved => new("wrong-position", words, moved.Device.Value, null, null, null, moved.Likeliest.XMetres, moved.Likeliest.YMetres, moved.Pairs, moved.Support),
            OtherElement other => new("wrong-construction", words, null, other.Element, other.Loss.Value, other.StandardError.Value, null, null, other.Pairs, other.Support),
            _ => throw new ArgumentOutOfRangeException(nameof(finding), finding, "no such finding"),
        };
    }
}

/// <summary>One path alone that nothing explains.</summary>
internal sealed record OddPathJson(string From, string To, double ExcessDb, double Deviations);

/// <summary>How far predictions lie from readings.</summary>
internal sealed record DiscrepancyJson(int Pairs, double RmseDb, double BiasDb)
{
    /// <summary>The record of a discrepancy.</summary>
    public static DiscrepancyJson Of(Discrepancy discrepancy) => new(discrepancy.Pairs, discrepancy.Rmse.Value, discrepancy.Bias.Value);
}

/// <summary>One parameter: an exponent, or decibels.</summary>
internal sealed record ParameterJson(
    FittedKind Kind, string Name, double Catalogue, double CatalogueDeviation, double Fitted, double StandardError, int Readings, double Learnt)
{
    /// <summary>The record of a parameter.</summary>
    public static ParameterJson Of(ParameterChange change) => new(
        change.Parameter.Kind,
        change.Parameter.Name,
        change.Catalogue,
        change.CatalogueDeviation,
        change.Fitted,
        change.Parameter.StandardError,
        change.Parameter.Readings,
        change.Learnt);
}

/// <summary>Two parameters that readings hardly tell apart.</summary>
internal sealed record ConfoundedJson(string First, string Second, double Correlation);
