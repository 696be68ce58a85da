using System.Collections.Immutable;
using SkiaSharp;

namespace MeshSim.Drawing.Palettes;

/// <summary>
/// The steps in which the difference of two margins is drawn: blue where the first is better, orange where the second is, pale
/// where they are alike, the darker the further apart; and a hatched grey class of its own where neither covers. Blue and orange
/// stay apart for every kind of colour blindness; in grey the signs of the legend and of the room labels tell the sides apart.
/// </summary>
internal sealed class DifferenceScale : FieldScale
{
    /// <summary>What a field holds where neither covers, dB: below any difference that there is.</summary>
    public const double NeitherDb = -1000;

    /// <summary>Differences below this look like <see cref="NeitherDb"/>; no two links of one house are so far apart.</summary>
    private const double LowestDb = -500;

    /// <summary>Lightness, then green to red, then blue to yellow: equal lightness on both sides.</summary>
    private static readonly ImmutableArray<Lab> Colours =
    [
        new(72, 0, 0),
        new(50, 28, 46), new(66, 22, 44), new(82, 10, 26),
        new(95, 0, 3),
        new(82, -6, -16), new(66, -4, -29), new(50, 2, -40),
    ];

    /// <inheritdoc/>
    public override ImmutableArray<double> Edges { get; } = [LowestDb, -20, -10, -3, 3, 10, 20];

    /// <inheritdoc/>
    public override ImmutableArray<MarginClass> Classes => [.. Colours.Select((colour, index) => new MarginClass(
        index == 0 ? double.NegativeInfinity : Edges[index - 1],
        index == Edges.Length ? double.PositiveInfinity : Edges[index],
        Colour(colour),
        IsBelowDesign: index == 0))];

    /// <inheritdoc/>
    public override double HeavyDb => 0;

    /// <summary>The range of a class with its signs, without the unit.</summary>
    public static string RangeOf(MarginClass step) => (step.LowerDb, step.UpperDb) switch
    {
        ( <= LowestDb, <= LowestDb) => "neither covers",
        ( <= LowestDb, _) => FormattableString.Invariant($"below {step.UpperDb:+0;-0}"),
        (_, double.PositiveInfinity) => FormattableString.Invariant($"{step.LowerDb:+0;-0} and more"),
        _ => FormattableString.Invariant($"{step.LowerDb:+0;-0} to {step.UpperDb:+0;-0}"),
    };

    private static SKColor Colour(Lab lab) => lab.ToColour();
}
