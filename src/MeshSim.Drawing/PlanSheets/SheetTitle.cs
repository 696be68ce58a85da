using System.Collections.Immutable;
using System.Reflection;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.FloorPlans;
using MeshSim.Propagation;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>What a title block says.</summary>
/// <param name="Home">The home.</param>
/// <param name="Storey">The storey, and which part of it.</param>
/// <param name="Networks">The networks.</param>
/// <param name="Scale">Scale and paper; "" on a sheet without a plan.</param>
/// <param name="Sheet">Which sheet of how many.</param>
/// <param name="Provenance">What made it, without a date, so that the same home makes the same sheets.</param>
internal sealed record SheetTitle(string Home, string Storey, string Networks, string Scale, string Sheet, string Provenance)
{
    /// <summary>Text beside the frame of the block, pixels.</summary>
    public const float Pad = 10;

    private static readonly TextStyle HomeStyle = new(true, 19), LineStyle = new(false, 13.5f), StrongStyle = new(true, 13.5f), SmallStyle = new(false, 11.5f);

    private static readonly string[] Cautions =
    [
        "Routes are radio links, not cables. Symbols show about where a device is; one that is moved aside points to its place. Check measures on site.",
        "Work on the mains: licensed electricians only, under the wiring rules of the place. Isolate, lock off and prove dead first.",
        "Smoke, gas, medical and security alarms must not depend on this mesh.",
    ];

    /// <summary>The block of a storey's sheet; the numbers of the sheet are not known yet.</summary>
    public static SheetTitle Of(SheetSubject subject, Storey storey)
    {
        string state = subject.Coverages[0].State is { } named ? $"state {named.Name}" : "everything on, doors closed";
        Version version = Assembly.GetExecutingAssembly().GetName().Version ?? new Version();
        return new(
            subject.Home.Name,
            $"Storey {storey.Name}",
            string.Join(", ", subject.Coverages.Select(coverage => $"{coverage.Network.Name} ({coverage.Network.Carrier})")),
            "", "",
            $"MeshSim {version.ToString(3)}, region {subject.Home.Region}, {state}; routes by the margins of the plan, model {ModelNames.Of(subject.Coverages[0].Model)}");
    }

    /// <summary>The lines of the block.</summary>
    /// <param name="width">Width of the block, pixels.</param>
    /// <param name="ink">Measures text.</param>
    public ImmutableArray<(string Text, TextStyle Style)> Lines(float width, Ink ink) =>
    [
        .. Flow(Home, HomeStyle, width, ink),
        .. Flow(Storey + (Sheet.Length > 0 ? $", {Sheet}" : ""), StrongStyle, width, ink),
        .. Scale.Length > 0 ? Flow(Scale, StrongStyle, width, ink) : [],
        .. Flow("Networks: " + Networks, LineStyle, width, ink),
        .. Cautions.SelectMany(caution => Flow(caution, SmallStyle, width, ink)),
        .. Flow(Provenance, SmallStyle, width, ink),
    ];

    /// <summary>What the block needs, pixels. Room is kept for scale and numbers that are not known yet.</summary>
    public float HeightOf(float width, Ink ink) =>
        (this with { Scale = "1:100 on A3", Sheet = "sheet 100 of 100" }).Lines(width, ink).Sum(line => line.Style.LineHeight) + (2 * Pad);

    private static IEnumerable<(string Text, TextStyle Style)> Flow(string text, TextStyle style, float width, Ink ink) =>
        TextFlow.Lines(text, style, width - (2 * Pad), ink).Select(line => (line, style));
}
