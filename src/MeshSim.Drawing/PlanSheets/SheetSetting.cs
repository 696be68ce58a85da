using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Routes;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>Lays out the sheets of one storey.</summary>
internal static class SheetSetting
{
    /// <summary>The choice for a storey.</summary>
    public static SheetChoice ChoiceFor(SheetSubject subject, Storey storey, SheetOptions options, Ink ink)
    {
        SheetTitle title = SheetTitle.Of(subject, storey);
        float keyHeight = KeyTable.Of(subject, storey, ink).Sum(row => row.HeightPixels);
        return SheetChoice.For(options, PlanBounds.Of(subject.Home, storey), keyHeight, width => title.HeightOf(width, ink));
    }

    /// <summary>The sheets of a storey, those with the plan first, then those with what is left of the key.</summary>
    public static ImmutableArray<PlanSheet> Sheets(SheetSubject subject, Storey storey, SheetChoice choice, Ink ink)
    {
        var sheets = ImmutableArray.CreateBuilder<PlanSheet>();
        var key = new Queue<ColumnRow>(KeyTable.Of(subject, storey, ink));
        SheetTitle title = SheetTitle.Of(subject, storey) with { Scale = FormattableString.Invariant($"Scale 1:{choice.Scale} on {choice.Layout.Paper.Format}") };
        int parts = choice.Columns * choice.Rows;
        for (int part = 0; part < parts; part++)
        {
            string words = parts == 1 ? title.Storey : FormattableString.Invariant($"{title.Storey}, part {part + 1} of {parts} ({choice.Columns} across, {choice.Rows} down)");
            sheets.Add(new()
            {
                Subject = subject,
                Storey = storey,
                Layout = choice.Layout,
                Title = title with { Storey = words },
                Plan = PlanOf(subject, storey, choice, choice.ProjectionOf(PlanBounds.Of(subject.Home, storey), part % choice.Columns, part / choice.Columns), ink),
                Key = KeyFlow.Fill(key, choice.Layout.Key),
            });
        }

        while (key.Count > 0)
        {
            PlanSheetLayout layout = PlanSheetLayout.OfKeySheet(choice.Layout.Paper, width => title.HeightOf(width, ink));
            sheets.Add(new()
            {
                Subject = subject,
                Storey = storey,
                Layout = layout,
                Title = title with { Storey = title.Storey + ", key", Scale = "" },
                Key = KeyFlow.Fill(key, layout.Key),
            });
        }

        return sheets.ToImmutable();
    }

    private static PlanDrawing PlanOf(SheetSubject subject, Storey storey, SheetChoice choice, Projection projection, Ink ink)
    {
        PixelBox frame = choice.Layout.Map with { Bottom = choice.Layout.Strip.Top };
        ImmutableArray<DeviceMark> devices = Marks.OnPlan(storey.Name, subject.Coverages, projection, frame);
        var plan = new PlanDrawing
        {
            Projection = projection,
            Scale = choice.Scale,
            Frame = frame,
            Devices = devices,
            Outlets =
            [
                .. from outlet in subject.Home.Outlets
                   where outlet.Storey == storey.Name && !outlet.IsAssumed
                   let place = projection.ToPixel(outlet.Point)
                   where frame.Holds(PlanPainter.OutletBox(place)) && !devices.Any(mark => mark.Box.Overlaps(PlanPainter.OutletBox(place)))
                   select (outlet, place),
            ],
            Routes =
            [
                .. from coverage in subject.Coverages
                   from line in RouteLines.On(storey.Name, coverage).Lines
                   select (subject.Device(line.From), subject.Device(line.To), subject.DashOf(coverage.Network.Name)),
            ],
        };
        return plan with { Labels = PlanLabels.Of(subject, storey, plan, ink) };
    }
}
