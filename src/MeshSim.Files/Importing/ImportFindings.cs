using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;

namespace MeshSim.Files.Importing;

/// <summary>Collects what is to be said about one import.</summary>
/// <param name="problems">Takes errors and notices.</param>
internal sealed class ImportFindings(DiagnosticList problems)
{
    private readonly List<LeftOut> leftOut = [];
    private readonly List<TakenThings> taken = [];
    private readonly List<string> remarks = [];
    private readonly List<SourcePlace> sources = [];
    private readonly HashSet<string> names = [];

    /// <summary>Errors and notices.</summary>
    public DiagnosticList Problems { get; } = problems;

    /// <summary>What was taken.</summary>
    public ImmutableArray<TakenThings> Taken => [.. taken];

    /// <summary>Remarks, none twice.</summary>
    public ImmutableArray<string> Remarks => [.. remarks.Distinct()];

    /// <summary>What was left out, by place.</summary>
    public ImmutableArray<Diagnostic> LeftOut =>
    [
        .. leftOut.OrderBy(one => one.Place.Line).ThenBy(one => one.Place.Column)
            .Select(one => new Diagnostic(one.Place.File, one.Place.Line, one.Place.Column, Severity.Notice, $"{one.What} is left out", one.Why)),
    ];

    /// <summary>Says that something of the drawing is not in the home.</summary>
    public void Leave(SourcePlace place, string what, string why)
    {
        leftOut.Add(new(place, what, why));
        Problems.Notice(place, $"{what} is left out", why);
    }

    /// <summary>Says that a shape is not in the home.</summary>
    public void Leave(DrawnShape shape, string why) => Leave(shape.Place, shape.What, why);

    /// <summary>Says what was taken; nothing of a kind needs no mention.</summary>
    public void Take(StoreyName storey, string what, string of, int count, double lengthMetres = 0)
    {
        if (count > 0) taken.Add(new(storey, what, of, count, lengthMetres));
    }

    /// <summary>Says something about the whole.</summary>
    public void Remark(FormattableString text) => remarks.Add(FormattableString.Invariant(text));

    /// <summary>A key by which the builder of storeys finds a place again.</summary>
    public SourceKey KeyOf(SourcePlace place)
    {
        sources.Add(place);
        return new(sources.Count - 1);
    }

    /// <summary>The place of a key.</summary>
    public SourcePlace PlaceOf(SourceKey key) => sources[key.Value];

    /// <summary>A name that nothing else of its kind has: the wanted one, or with a number behind it.</summary>
    /// <param name="kind">What is named: names of different kinds may be the same.</param>
    /// <param name="wanted">The name that the drawing gives, or null.</param>
    /// <param name="fallback">What it is called with a number where the drawing gives none.</param>
    public string NameFor(string kind, string? wanted, string fallback)
    {
        string? usable = wanted is not null && Sources.NameText.IsUsable(wanted) ? wanted : null;
        if (usable is not null && names.Add($"{kind}\n{usable}")) return usable;
        for (int number = usable is null ? 1 : 2; ; number++)
        {
            string name = FormattableString.Invariant($"{usable ?? fallback} {number}");
            if (names.Add($"{kind}\n{name}")) return name;
        }
    }
}
