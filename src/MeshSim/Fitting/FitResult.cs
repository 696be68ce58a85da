using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Fitting.Findings;
using MeshSim.FloorPlans;
using MeshSim.Quantities;

namespace MeshSim.Fitting;

/// <summary>How far predictions lie from what was read, over the pairs that heard each other.</summary>
/// <param name="Pairs">How many.</param>
/// <param name="Rmse">Root of the mean square of the differences.</param>
/// <param name="Bias">Mean of predicted less read: positive where more was promised than arrives.</param>
public readonly record struct Discrepancy(int Pairs, Decibels Rmse, Decibels Bias);

/// <summary>One parameter before and after.</summary>
/// <param name="Parameter">What was fitted.</param>
/// <param name="Catalogue">What the catalogue or the home says: an exponent, a loss head-on, or 0 of an offset.</param>
/// <param name="CatalogueDeviation">How far that may be off, one standard deviation.</param>
public sealed record ParameterChange(FittedParameter Parameter, double Catalogue, double CatalogueDeviation)
{
    /// <summary>The value after the fit.</summary>
    public double Fitted => Parameter.Kind is FittedKind.Exponent or FittedKind.Detour ? Parameter.Value : Catalogue + Parameter.Value;

    /// <summary>Share of what was unknown that the readings took away, 0 to 1: near 0 the value is still the catalogue's.</summary>
    public double Learnt => Math.Max(0, 1 - (Parameter.StandardError * Parameter.StandardError / (CatalogueDeviation * CatalogueDeviation)));
}

/// <summary>Two parameters that the readings hardly tell apart: what one gains the other loses.</summary>
/// <param name="First">One.</param>
/// <param name="Second">The other.</param>
/// <param name="Correlation">−1 to 1.</param>
public sealed record Confounded(FittedParameter First, FittedParameter Second, double Correlation);

/// <summary>What readings say about one network.</summary>
public sealed record FitResult
{
    /// <summary>The network.</summary>
    public required Network Network { get; init; }

    /// <summary>What there is to be stored.</summary>
    public required NetworkFit Fit { get; init; }

    /// <summary>Pairs of devices that heard each other.</summary>
    public required int PairsHeard { get; init; }

    /// <summary>Pairs that were read and heard nothing.</summary>
    public required int PairsNotHeard { get; init; }

    /// <summary>The parameters before and after, exponent first, then the way round, losses, then offsets.</summary>
    public required ImmutableArray<ParameterChange> Parameters { get; init; }

    /// <summary>Constructions of the plan that no reading crosses: they keep their catalogue values.</summary>
    public required ImmutableArray<ConstructionName> Uncrossed { get; init; }

    /// <summary>Parameters that the readings hardly tell apart.</summary>
    public required ImmutableArray<Confounded> Confounded { get; init; }

    /// <summary>With the catalogue alone.</summary>
    public required Discrepancy Before { get; init; }

    /// <summary>With the fit.</summary>
    public required Discrepancy After { get; init; }

    /// <summary>Each device predicted from the readings of all others, pairs of devices with a finding left out.</summary>
    public required Discrepancy CrossValidated { get; init; }

    /// <summary>What the readings say and the plan does not, best supported first.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Single paths that nothing explains, farthest off first.</summary>
    public required ImmutableArray<OddPath> OddPaths { get; init; }
}
