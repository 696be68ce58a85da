using System.Collections.Immutable;
using System.Globalization;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Studies;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Studies;

/// <summary>The home of docs/two-room-home.md: the page's own files, and every number in its tables.</summary>
public sealed class TwoRoomHomeTests
{
    private static readonly string[] Page = File.ReadAllLines(Path.Combine(SourceTree.Root, "docs", "two-room-home.md"));
    private static readonly Home Home = ReadHome();
    private static readonly NetworkCoverage Coverage = CoverageStudy.Run(Home, Home.Networks[0], new StudyOptions { Model = ModelName.LogDistance });

    [Fact]
    public void Every_link_is_as_printed()
    {
        string[][] printed = Table("link", "distance");
        printed.Should().HaveCount(Coverage.Links.Length);
        foreach ((string[] row, Link link) in printed.Zip(Coverage.Links))
        {
            double LossOf(LossKind kind) => link.PathLoss.Items.Where(item => item.Kind == kind).Sum(item => item.Loss.Value);
            row.Should().Equal(
                $"{link.From} – {link.To}",
                link.PathLoss.DistanceMetres.ToString("0.000", CultureInfo.InvariantCulture),
                Printed(LossOf(LossKind.Distance)),
                Printed(LossOf(LossKind.Wall)),
                Printed(LossOf(LossKind.Mounting)),
                Printed(link.PathLoss.Total.Value),
                Printed(link.Received.Dbm),
                Printed(link.Reverse.Dbm),
                Printed(link.Margin.Value),
                link.Margin >= Coverage.DesignMargin ? "yes" : "no");
        }
    }

    [Fact]
    public void What_a_way_round_would_save_is_as_printed()
    {
        NetworkCoverage round = CoverageStudy.Run(Home, Home.Networks[0], new StudyOptions());
        string[] row = Table("link", "wall").Should().ContainSingle().Subject;
        Link link = round.Links.Single(one => $"{one.From} – {one.To}" == row[0]);
        LossItem ItemOf(LossKind kind) => link.PathLoss.Items.Single(item => item.Kind == kind);
        row.Skip(1).Should().Equal(
            Printed(ItemOf(LossKind.Wall).Loss.Value),
            Printed(ItemOf(LossKind.Detour).Loss.Value),
            Printed(link.PathLoss.Total.Value),
            Printed(link.Margin.Value),
            link.Margin >= round.DesignMargin ? "yes" : "no");
    }

    [Fact]
    public void Every_route_is_as_printed()
    {
        string[][] printed = Table("device", "route");
        printed.Should().HaveCount(Coverage.Devices.Length);
        foreach ((string[] row, DeviceReach reach) in printed.Zip(Coverage.Devices))
        {
            Route route = reach.Route!;
            row.Should().Equal(
                reach.Device.Value,
                string.Join(", ", route.Path),
                route.Hops.ToString(CultureInfo.InvariantCulture),
                Printed(route.WeakestMargin.Value),
                reach.DisjointRoutes.ToString(CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void What_drops_out_with_the_lamp_is_as_printed()
    {
        NetworkCoverage lampOff = CoverageStudy.Run(Home, Home.Networks[0], new StudyOptions { Model = ModelName.LogDistance, State = Home.States[0] });
        ImmutableArray<DeviceReach> lost = [.. lampOff.Devices.Where(reach => !reach.IsReached)];
        string[][] printed = Table("device", "nearest link");
        printed.Should().HaveCount(lost.Length).And.HaveCount(lampOff.Devices.Length);
        foreach ((string[] row, DeviceReach reach) in printed.Zip(lost))
        {
            Link nearest = reach.NearestLink!;
            row.Should().Equal(
                reach.Device.Value,
                nearest.Other(reach.Device).Value,
                Printed(nearest.Margin.Value),
                Printed((lampOff.DesignMargin - nearest.Margin).Value));
        }
    }

    [Fact]
    public void The_delivery_is_as_printed()
    {
        string[] row = Table("link", "delivery").Should().ContainSingle().Subject;
        Link link = Coverage.Links.Single(one => $"{one.From} – {one.To}" == row[0]);
        row.Skip(1).Should().Equal(
            link.Delivery.ToString("0.0000", CultureInfo.InvariantCulture), link.Etx.ToString("0.0000", CultureInfo.InvariantCulture));
    }

    [Fact]
    public void The_points_of_the_map_are_as_printed()
    {
        MarginMap map = CoverageStudy.Map(Coverage, new("ground"), new StudyOptions { Model = ModelName.LogDistance, GridStepMetres = 0.5 });
        string[][] printed = Table("x", "y");
        printed.Should().HaveCount(2);
        foreach (string[] row in printed)
        {
            int column = (int)((double.Parse(row[0]) - map.Margin.Grid.At(0, 0).Plan.XMetres) / 0.5);
            int line = (int)((double.Parse(row[1]) - map.Margin.Grid.At(0, 0).Plan.YMetres) / 0.5);
            Printed(map.Margin[column, line]).Should().Be(row[3]);
        }

        map.Rooms.Select(room => room.DarkShare).Should().Equal(0, 0);
    }

    private static string Printed(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>The rows of the table whose header starts with two cells.</summary>
    private static string[][] Table(string first, string second) =>
    [
        .. Page.SkipWhile(line => !line.StartsWith($"| {first} | {second} |", StringComparison.Ordinal))
            .Skip(2)
            .TakeWhile(line => line.StartsWith('|'))
            .Select(line => line.Trim('|').Split('|', StringSplitOptions.TrimEntries)),
    ];

    private static Home ReadHome()
    {
        string folder = Directory.CreateTempSubdirectory("two-rooms").FullName;
        try
        {
            File.WriteAllLines(Path.Combine(folder, "home.yaml"), Fenced("yaml"));
            File.WriteAllLines(Path.Combine(folder, "devices.csv"), Fenced("csv"));
            HomeReadResult result = HomeFolder.Read(folder);
            result.Problems.Should().BeEmpty();
            return result.Home!;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static IEnumerable<string> Fenced(string language) =>
        Page.SkipWhile(line => line != "```" + language).Skip(1).TakeWhile(line => line != "```");
}
