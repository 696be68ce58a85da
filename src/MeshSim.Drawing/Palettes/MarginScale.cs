using System.Collections.Immutable;
using MeshSim.Quantities;
using SkiaSharp;

namespace MeshSim.Drawing.Palettes;

/// <summary>One step of the legend: margins from <see cref="LowerDb"/> up to, but not including, <see cref="UpperDb"/>.</summary>
/// <param name="LowerDb">Lower edge, dB; minus infinity in the lowest class.</param>
/// <param name="UpperDb">Upper edge, dB; infinity in the highest class.</param>
/// <param name="Colour">How it is filled.</param>
/// <param name="IsBelowDesign">Whether it lies below the design margin, and so is hatched.</param>
internal readonly record struct MarginClass(double LowerDb, double UpperDb, SKColor Colour, bool IsBelowDesign)
{
    /// <summary>The range in words, without the unit.</summary>
    public string Range => (double.IsNegativeInfinity(LowerDb), double.IsPositiveInfinity(UpperDb)) switch
    {
        (true, _) => FormattableString.Invariant($"below {UpperDb:0.#}"),
        (_, true) => FormattableString.Invariant($"{LowerDb:0.#} and more"),
        _ => FormattableString.Invariant($"{LowerDb:0.#} to {UpperDb:0.#}"),
    };
}

/// <summary>
/// The steps in which margins are drawn: every ten decibels, with zero and the design margin as further edges. The darker, the
/// less margin: radio-dark is dark on paper. The step across the design margin is wider than the others.
/// </summary>
internal sealed class MarginScale : FieldScale
{
    private const double StepDb = 10;

    /// <summary>Above this no planner cares how much more it is.</summary>
    private const double HighestEdgeDb = 50;

    /// <summary>A multiple of ten nearer to the design margin than this gives way to it: two lines that close could not be told apart.</summary>
    private const double LeastStepDb = 2.5;

    // Sand, pale sea, steel, indigo: lightness falls evenly within each part; hue helps those who see it, and is never needed.
    private static readonly Lab Sand = new(95, -1, 13), Sea = new(82, -13, 1), Steel = new(67, -9, -19), Slate = new(54, 1, -29), Indigo = new(40, 16, -37);

    /// <summary>The steps for a design margin.</summary>
    public MarginScale(Decibels designMargin)
    {
        DesignMargin = designMargin;
        Edges = [.. EdgesDb(designMargin.Value)];
        int below = Edges.IndexOf(designMargin.Value) + 1, above = Edges.Length + 1 - below;
        Classes = [.. Enumerable.Range(0, Edges.Length + 1).Select(index => new MarginClass(
            index == 0 ? double.NegativeInfinity : Edges[index - 1],
            index == Edges.Length ? double.PositiveInfinity : Edges[index],
            index < below ? Dark(Share(index, below)) : Light(Share(index - below, above)),
            index < below))];
    }

    /// <summary>The margin below which a place counts as dark.</summary>
    public Decibels DesignMargin { get; }

    /// <inheritdoc/>
    public override ImmutableArray<MarginClass> Classes { get; }

    /// <inheritdoc/>
    public override ImmutableArray<double> Edges { get; }

    /// <inheritdoc/>
    public override double HeavyDb => DesignMargin.Value;

    private static SortedSet<double> EdgesDb(double designDb)
    {
        SortedSet<double> edges = [0, designDb];
        double highest = Math.Max(HighestEdgeDb, designDb + StepDb);
        for (double edge = StepDb; edge <= highest; edge += StepDb)
            if (Math.Abs(edge - designDb) >= LeastStepDb) edges.Add(edge);
        return edges;
    }

    private static double Share(int index, int count) => count > 1 ? index / (count - 1.0) : 0;

    private static SKColor Dark(double share) => Lab.Between(Indigo, Slate, share).ToColour();

    private static SKColor Light(double share) =>
        (share < 0.5 ? Lab.Between(Steel, Sea, share * 2) : Lab.Between(Sea, Sand, (share * 2) - 1)).ToColour();
}
