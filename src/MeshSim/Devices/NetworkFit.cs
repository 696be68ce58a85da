using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Devices;

/// <summary>What a fitted parameter belongs to.</summary>
public enum FittedKind
{
    /// <summary>The path-loss exponent.</summary>
    Exponent,

    /// <summary>What the way round the walls costs.</summary>
    Detour,

    /// <summary>The loss of a construction.</summary>
    Construction,

    /// <summary>The loss of a mounting.</summary>
    Mounting,

    /// <summary>How much more the receiver of a device reports than arrives.</summary>
    Offset,

    /// <summary>The same for all receivers of the network together.</summary>
    CommonOffset,
}

/// <summary>One parameter as readings gave it.</summary>
/// <param name="Kind">What it belongs to.</param>
/// <param name="Name">Which construction, mounting or device; empty for the others.</param>
/// <param name="Value">The exponent or the cost of the way round itself; else by how many decibels it differs from the catalogue.</param>
/// <param name="StandardError">One standard deviation, in the same unit.</param>
/// <param name="Readings">How many readings hang on it.</param>
public sealed record FittedParameter(FittedKind Kind, string Name, double Value, double StandardError, int Readings);

/// <summary>What readings taught about one network. Nothing in it extrapolates: what no reading crosses is not in it.</summary>
public sealed record NetworkFit
{
    /// <summary>The model that was fitted; the values mean nothing to another.</summary>
    public required ModelName Model { get; init; }

    /// <summary>How many readings went into it.</summary>
    public required int Readings { get; init; }

    /// <summary>Standard deviation of what remained: the shadowing.</summary>
    public required Decibels Shadowing { get; init; }

    /// <summary>The parameters that margins hang on, the exponent first.</summary>
    public required ImmutableArray<FittedParameter> Parameters { get; init; }

    /// <summary>Correlations of <see cref="Parameters"/>: for each but the first, those with all before it.</summary>
    public required ImmutableArray<ImmutableArray<double>> Correlations { get; init; }

    /// <summary>By how much receivers report more than arrives. A remark about readings; no margin hangs on it.</summary>
    public ImmutableArray<FittedParameter> Offsets { get; init; } = [];

    /// <summary>The path-loss exponent.</summary>
    public double Exponent => Parameters[0].Value;

    /// <summary>What the way round the walls costs; null where nothing was learnt about it.</summary>
    public Decibels? Detour => IndexOf(FittedKind.Detour, "") is { } index ? new(Parameters[index].Value) : null;

    /// <summary>By how much constructions cost more than computed.</summary>
    public ImmutableDictionary<ConstructionName, Decibels> Corrections => Parameters
        .Where(parameter => parameter.Kind == FittedKind.Construction)
        .ToImmutableDictionary(parameter => new ConstructionName(parameter.Name), parameter => new Decibels(parameter.Value));

    /// <summary>By how much a mounting costs more than the catalogue says.</summary>
    public Decibels CorrectionOf(Mounting mounting) => new(IndexOf(FittedKind.Mounting, mounting.Name) is { } index ? Parameters[index].Value : 0);

    /// <summary>The place of a parameter in <see cref="Parameters"/>; null when nothing was learnt about it.</summary>
    public int? IndexOf(FittedKind kind, string name)
    {
        for (int i = 0; i < Parameters.Length; i++)
            if (Parameters[i].Kind == kind && Parameters[i].Name == name) return i;
        return null;
    }

    /// <summary>The covariance of two parameters by their places.</summary>
    public double Covariance(int first, int second) =>
        Parameters[first].StandardError * Parameters[second].StandardError
        * (first == second ? 1 : Correlations[Math.Max(first, second) - 1][Math.Min(first, second)]);
}
