using System.Collections.Immutable;
using MeshSim.Propagation;

namespace MeshSim.OpenData.Tests.Accuracy.Forms;

/// <summary>A way to make of many walls what they cost together.</summary>
/// <param name="Formula">As the page prints it; S is the sum of the planning losses.</param>
/// <param name="Starts">Where the search for the second constant begins; empty when there is none.</param>
/// <param name="CostDb">What the walls of a link cost, from a factor and the second constant.</param>
/// <param name="IsChosen">Whether the second constant is one of <paramref name="Starts"/>: where the cost has corners in it, no slope leads anywhere.</param>
internal sealed record WallForm(string Formula, ImmutableArray<double> Starts, Func<CountedLink, double, double, double> CostDb, bool IsChosen = false)
{
    private static readonly ImmutableArray<double> Decibels = [12, 25], Counts = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6], Powers = [0.5];

    /// <summary>The forms that were compared.</summary>
    public static ImmutableArray<WallForm> All { get; } =
    [
        new("a S, the plain sum", [], (link, a, _) => a * link.SumDb),
        new("**g(a S), powers of two ways (`detour`)**", Decibels, (link, a, r) => Detour.LossDb(a * link.SumDb, r)),
        new("a R (1 − e^(−S/R))", Decibels, (link, a, r) => a * r * (1 - Math.Exp(-link.SumDb / r))),
        new("a S / (1 + S/R)", Decibels, (link, a, r) => a * link.SumDb / (1 + (link.SumDb / r))),
        new("a R ln(1 + S/R)", Decibels, (link, a, r) => a * r * Math.Log(1 + (link.SumDb / r))),
        new("a √S", [], (link, a, _) => a * Math.Sqrt(link.SumDb)),
        new("a Sᵖ", Powers, (link, a, p) => a * (link.SumDb > 0 ? Math.Pow(link.SumDb, p) : 0)),
        new("a S, no more than K walls of it", Counts, (link, a, k) => a * link.SumDb * (link.Walls > k ? k / link.Walls : 1), IsChosen: true),
    ];
}
