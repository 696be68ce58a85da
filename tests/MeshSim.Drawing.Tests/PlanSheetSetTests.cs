using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.PlanSheets;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Tests.PlanSheets;
using MeshSim.Drawing.Walls;

namespace MeshSim.Drawing.Tests;

public sealed partial class PlanSheetSetTests
{
    private const string NoPrinter = "skipped: pdftoppm is not installed";

    /// <summary>A pixel of the print on either side, and what the printer's smoothing makes of edges.</summary>
    private const double PrintedMillimetres = 0.3;

    /// <summary>The page of a file is a whole number of points; what is drawn on it is not rounded.</summary>
    private const double HalfPointMillimetres = 25.4 / 72 / 2;

    [Theory]
    [InlineData(100, PaperFormat.A3, 10, 6)]
    [InlineData(100, PaperFormat.A4, 10, 6)]
    [InlineData(50, PaperFormat.A3, 10, 8)]
    [InlineData(50, PaperFormat.A4, 4, 5)]
    public void Walls_are_as_far_apart_on_paper_as_the_scale_says(int scale, PaperFormat paper, double widthMetres, double heightMetres)
    {
        Assert.SkipUnless(PrintedPage.CanPrint, NoPrinter);
        (Home home, var coverages) = PlainHouse.Of(widthMetres, heightMetres);
        using PlanSheetSet set = new(home, coverages, new() { Scale = scale, Paper = paper });
        PlanSheet sheet = set.Sheets[0];
        PrintedPage page = PrintedPage.Of(set.Pdf());

        // A quarter up the room: clear of its name and of the coordinator.
        Pixel place = sheet.Plan!.Projection.ToPixel(FloorPlans.Geometry.PlanPoint.FromMetres(widthMetres / 4, heightMetres * 0.75));
        int y = (int)(place.Y * Paper.MillimetresPerPixel * PrintedPage.PerMillimetre), x = (int)(place.X * Paper.MillimetresPerPixel * PrintedPage.PerMillimetre);
        int right = (int)(sheet.Plan.Frame.Right * Paper.MillimetresPerPixel * PrintedPage.PerMillimetre);
        int low = (int)(sheet.Plan.Frame.Bottom * Paper.MillimetresPerPixel * PrintedPage.PerMillimetre);
        double[] upright = PrintedPage.Stretches(right, 1, at => page.IsDark(at, y)), lying = PrintedPage.Stretches(low, 1, at => page.IsDark(x, at));

        upright.Should().HaveCount(2);
        lying.Should().HaveCount(2);
        (upright[1] - upright[0]).Should().BeApproximately(widthMetres * 1000 / scale, PrintedMillimetres);
        (lying[1] - lying[0]).Should().BeApproximately(heightMetres * 1000 / scale, PrintedMillimetres);
    }

    [Theory]
    [InlineData(PaperFormat.A3, 420, 297)]
    [InlineData(PaperFormat.A4, 297, 210)]
    public void The_page_is_the_paper(PaperFormat paper, double longMillimetres, double shortMillimetres)
    {
        using PlanSheetSet set = Shipped.Sheets("quay-terrace", new() { Paper = paper });
        Match[] boxes = [.. MediaBox().Matches(Encoding.Latin1.GetString(set.Pdf())).Cast<Match>()];

        boxes.Should().HaveCount(set.Sheets.Length);
        foreach ((Match box, PlanSheet sheet) in boxes.Zip(set.Sheets))
        {
            (double width, double height) = (Millimetres(box, "width"), Millimetres(box, "height"));
            bool isLandscape = sheet.Layout.Paper.IsLandscape;
            width.Should().BeApproximately(isLandscape ? longMillimetres : shortMillimetres, HalfPointMillimetres);
            height.Should().BeApproximately(isLandscape ? shortMillimetres : longMillimetres, HalfPointMillimetres);
        }
    }

    [Fact]
    public void The_printed_page_has_the_size_of_the_paper()
    {
        Assert.SkipUnless(PrintedPage.CanPrint, NoPrinter);
        using PlanSheetSet set = Shipped.Sheets("harbour-flat", new() { Paper = PaperFormat.A3, Scale = 50 });
        PrintedPage page = PrintedPage.Of(set.Pdf());

        (page.Width / PrintedPage.PerMillimetre).Should().BeApproximately(420, PrintedMillimetres);
        (page.Height / PrintedPage.PerMillimetre).Should().BeApproximately(297, PrintedMillimetres);
    }

    [Fact]
    public void The_same_home_makes_the_same_bytes_without_a_date()
    {
        using PlanSheetSet one = Shipped.Sheets("harbour-flat", new()), other = Shipped.Sheets("harbour-flat", new());
        byte[] pdf = one.Pdf();

        other.Pdf().Should().Equal(pdf);
        one.Pdf().Should().Equal(pdf, "drawing leaves nothing behind");
        Encoding.Latin1.GetString(pdf).Should().StartWith("%PDF-").And.NotContain("CreationDate").And.NotContain("(D:");
    }

    [Fact]
    public void Each_storey_has_its_own_file_with_the_numbers_of_the_whole_set()
    {
        using PlanSheetSet set = Shipped.Sheets("quay-terrace", new());

        set.Storeys.Select(storey => storey.Storey.Value).Should().Equal("ground", "first", "loft");
        set.Storeys.Select(storey => storey.First).Should().Equal(1, 2, 3);
        set.Sheets.Select(sheet => sheet.Title.Sheet).Should().Equal("sheet 1 of 3", "sheet 2 of 3", "sheet 3 of 3");
        foreach (StoreySheets storey in set.Storeys) MediaBox().Count(Encoding.Latin1.GetString(set.Pdf(storey.Storey))).Should().Be(storey.PlanSheets + storey.KeySheets);
        FluentActions.Invoking(() => set.Pdf(new FloorPlans.StoreyName("cellar"))).Should().Throw<ArgumentException>();
    }

    [Theory]
    [InlineData("quay-terrace", PaperFormat.A3)]
    [InlineData("quay-terrace", PaperFormat.A4)]
    [InlineData("harbour-flat", PaperFormat.A3)]
    [InlineData("harbour-flat", PaperFormat.A4)]
    public void Every_device_is_numbered_and_nothing_written_covers_a_wall_a_device_or_another_label(string home, PaperFormat paper)
    {
        using PlanSheetSet set = Shipped.Sheets(home, new() { Paper = paper });
        foreach (PlanDrawing plan in set.Sheets.Select(sheet => sheet.Plan).OfType<PlanDrawing>())
        {
            PlanSheet sheet = set.Sheets.First(one => one.Plan == plan);
            PixelBox[] devices = [.. plan.Devices.Select(mark => mark.Box)];
            plan.Labels.Count(label => label.Request.Kind == LabelKind.Device).Should().Be(plan.Devices.Length);
            for (int i = 0; i < plan.Labels.Length; i++)
            {
                PixelBox box = plan.Labels[i].Box;
                plan.Frame.Holds(box).Should().BeTrue();
                plan.Labels.Skip(i + 1).Should().NotContain(other => other.Box.Overlaps(box), "labels keep clear of each other");
                devices.Should().NotContain(device => device.Overlaps(box), "labels keep clear of devices");
            }

            WallRun[] walls = [.. sheet.Storey.Walls.Select(wall => WallRun.Of(wall, sheet.Subject.Home, plan.Projection))];
            plan.Labels.Where(label => label.Request.Kind is LabelKind.Device or LabelKind.Room)
                .Should().NotContain(
                    label => walls.Any(wall => label.Box.Grown(wall.ThicknessPixels / 2).IsMetBy(wall.Start, wall.At(wall.LengthPixels, 0))),
                    "numbers and names keep clear of walls");
        }
    }

    [Fact]
    public void Every_device_of_the_home_is_in_a_key_exactly_once()
    {
        foreach (PaperFormat paper in Enum.GetValues<PaperFormat>())
        {
            using PlanSheetSet set = Shipped.Sheets("quay-terrace", new() { Paper = paper });
            set.Sheets.SelectMany(sheet => sheet.Key).SelectMany(column => column.Rows).OfType<KeyDeviceRow>().Select(row => row.Number)
                .Should().BeEquivalentTo(Enumerable.Range(1, set.Sheets[0].Subject.Home.Devices.Length));
        }
    }

    [Fact]
    public void Nothing_on_a_sheet_lies_over_anything_else()
    {
        using PlanSheetSet set = Shipped.Sheets("quay-terrace", new() { Paper = PaperFormat.A4 });
        foreach (PlanSheet sheet in set.Sheets)
        {
            PixelBox page = new(0, 0, Paper.Pixels(sheet.Layout.Paper.WidthMillimetres), Paper.Pixels(sheet.Layout.Paper.HeightMillimetres));
            PixelBox[] parts = [sheet.Layout.Title, .. sheet.Plan is null ? [] : new[] { sheet.Layout.Map }, .. sheet.Key.Select(column => column.Box)];
            parts.Should().OnlyContain(part => page.Holds(part));
            for (int i = 0; i < parts.Length; i++) parts.Skip(i + 1).Should().NotContain(other => other.Overlaps(parts[i]));
            foreach (KeyColumn column in sheet.Key) column.Rows.Sum(row => row.HeightPixels).Should().BeLessThanOrEqualTo(column.Box.Height);
            using var ink = new Ink();
            sheet.Title.Lines(sheet.Layout.Title.Width, ink).Sum(line => line.Style.LineHeight).Should().BeLessThanOrEqualTo(sheet.Layout.Title.Height - (2 * SheetTitle.Pad));
        }
    }

    [Fact]
    public void A_storey_too_large_for_a_sheet_is_shown_whole_on_several()
    {
        (Home home, var coverages) = PlainHouse.Of(90, 60);
        using PlanSheetSet set = new(home, coverages, new());

        set.Storeys[0].Scale.Should().Be(100);
        set.Storeys[0].PlanSheets.Should().BeGreaterThan(1);
        foreach (FloorPlans.Geometry.PlanPoint corner in home.FloorPlan.Storeys[0].Rooms[0].Outline.Corners)
            set.Sheets.Where(sheet => sheet.Plan is not null).Should().Contain(sheet => sheet.Plan!.Frame.Holds(PixelBox.About(sheet.Plan.Projection.ToPixel(corner), 0, 0)));
    }

    [Fact]
    public void What_cannot_be_drawn_is_said_before_it_is_tried()
    {
        (Home home, var coverages) = PlainHouse.Of(900, 900);

        PlanSheetSet.WhyNot(home, coverages, new()).Should().StartWith("storey \"ground\" needs ").And.Contain("sheets at 1:100 on A3, more than 24");
        PlanSheetSet.WhyNot(home, [], new()).Should().Be("there is no network to draw");
        FluentActions.Invoking(() => new PlanSheetSet(home, coverages, new())).Should().Throw<ArgumentException>().WithMessage("*ground*");
    }

    private static double Millimetres(Match box, string side) => double.Parse(box.Groups[side].Value, CultureInfo.InvariantCulture) / 72 * 25.4;

    [GeneratedRegex(@"/MediaBox \[0 0 (?<width>[\d.]+) (?<height>[\d.]+)\]", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex MediaBox();
}
