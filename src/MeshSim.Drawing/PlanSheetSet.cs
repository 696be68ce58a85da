using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.PlanSheets;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Drawing;

/// <summary>The sheets of one storey, in short.</summary>
/// <param name="Storey">The storey.</param>
/// <param name="Scale">What a length is divided by.</param>
/// <param name="Paper">The paper.</param>
/// <param name="IsLandscape">Whether its long side lies.</param>
/// <param name="First">The number of its first sheet in the set.</param>
/// <param name="PlanSheets">Sheets that show the plan; more than one when the storey is too large for one.</param>
/// <param name="KeySheets">Sheets that continue the key.</param>
public sealed record StoreySheets(StoreyName Storey, int Scale, PaperFormat Paper, bool IsLandscape, int First, int PlanSheets, int KeySheets);

/// <summary>
/// Plan sheets of a home, to scale, for the wall of whoever works on it: walls, openings, devices with their numbers and circuits,
/// routes, a key and a title block for each storey.
/// </summary>
public sealed class PlanSheetSet : IDisposable
{
    private readonly Ink ink = new();
    private readonly ImmutableArray<PlanSheet> sheets;

    /// <summary>Lays out the sheets. Storeys where nothing is and nothing hangs are left out.</summary>
    /// <param name="home">The home.</param>
    /// <param name="coverages">Links and routes of the networks to draw; at least one, all of this home.</param>
    /// <param name="options">Scale and paper.</param>
    /// <exception cref="ArgumentException">It cannot be drawn; <see cref="WhyNot"/> says why.</exception>
    public PlanSheetSet(Home home, ImmutableArray<NetworkCoverage> coverages, SheetOptions options)
    {
        if (WhyNot(home, coverages, options) is { } reason) throw new ArgumentException(reason, nameof(options));
        var subject = new SheetSubject(home, coverages);
        ImmutableArray<(Storey Storey, SheetChoice Choice)> choices = Choices(subject, options, ink);
        var counted = choices.Select(one => (one.Storey, one.Choice, Sheets: SheetSetting.Sheets(subject, one.Storey, one.Choice, ink))).ToList();
        int count = counted.Sum(one => one.Sheets.Length);
        sheets =
        [
            .. counted.SelectMany(one => one.Sheets).Select((sheet, index) =>
                sheet with { Title = sheet.Title with { Sheet = FormattableString.Invariant($"sheet {index + 1} of {count}") } }),
        ];
        Storeys = [.. counted.Select((one, index) => new StoreySheets(
            one.Storey.Name,
            one.Choice.Scale,
            one.Choice.Layout.Paper.Format,
            one.Choice.Layout.Paper.IsLandscape,
            counted.Take(index).Sum(before => before.Sheets.Length) + 1,
            one.Sheets.Count(sheet => sheet.Plan is not null),
            one.Sheets.Count(sheet => sheet.Plan is null)))];
    }

    /// <summary>Its storeys, the lowest first.</summary>
    public ImmutableArray<StoreySheets> Storeys { get; }

    /// <summary>The sheets, for tests to look at.</summary>
    internal ImmutableArray<PlanSheet> Sheets => sheets;

    /// <summary>Why a home cannot be drawn so, or null when it can.</summary>
    public static string? WhyNot(Home home, ImmutableArray<NetworkCoverage> coverages, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(home);
        ArgumentNullException.ThrowIfNull(options);
        if (coverages.IsDefaultOrEmpty) return "there is no network to draw";
        if (!home.FloorPlan.Storeys.Any(storey => HasSomething(home, storey))) return "no storey has anything to draw";

        using var ruler = new Ink();
        foreach ((Storey storey, SheetChoice choice) in Choices(new(home, coverages), options, ruler))
        {
            if (choice.Tiles <= SheetChoice.MostTiles) continue;
            return FormattableString.Invariant(
                $"storey \"{storey.Name}\" needs {choice.Tiles} sheets at 1:{choice.Scale} on {choice.Layout.Paper.Format}, more than {SheetChoice.MostTiles}; ")
                + "take a smaller scale or larger paper, or make a home folder of a part of the building";
        }

        return null;
    }

    /// <summary>All sheets as one PDF file. The same home makes the same bytes on one platform.</summary>
    public byte[] Pdf() => SheetPdf.Of(sheets, ink);

    /// <summary>The sheets of one storey as a PDF file.</summary>
    /// <param name="storey">One of <see cref="Storeys"/>.</param>
    /// <exception cref="ArgumentException">The set has no such storey.</exception>
    public byte[] Pdf(StoreyName storey)
    {
        ImmutableArray<PlanSheet> own = [.. sheets.Where(sheet => sheet.Storey.Name == storey)];
        return own.IsEmpty ? throw new ArgumentException($"no sheet shows storey \"{storey}\"", nameof(storey)) : SheetPdf.Of(own, ink);
    }

    /// <inheritdoc/>
    public void Dispose() => ink.Dispose();

    /// <summary>How each storey is drawn. The set has one size of paper: that of the storey that needs the largest.</summary>
    private static ImmutableArray<(Storey Storey, SheetChoice Choice)> Choices(SheetSubject subject, SheetOptions options, Ink ink)
    {
        Storey[] storeys = [.. subject.Home.FloorPlan.Storeys.Where(storey => HasSomething(subject.Home, storey))];
        PaperFormat paper = storeys.Max(storey => SheetSetting.ChoiceFor(subject, storey, options, ink).Layout.Paper.Format);
        return [.. storeys.Select(storey => (storey, SheetSetting.ChoiceFor(subject, storey, options with { Paper = paper }, ink)))];
    }

    private static bool HasSomething(Home home, Storey storey) =>
        !storey.Rooms.IsEmpty || !storey.Walls.IsEmpty || !storey.Objects.IsEmpty || home.Devices.Any(device => device.Storey == storey.Name);
}
