using MeshSim.Drawing.PlanSheets;
using MeshSim.Drawing.Tests.Scenes;

namespace MeshSim.Drawing.Tests.PlanSheets;

public sealed class SheetSubjectTests
{
    [Fact]
    public void Devices_are_numbered_in_the_homes_order_whatever_is_drawn()
    {
        var subject = new SheetSubject(TwoStoreyFlat.Home, [SyntheticCoverage.Coverage]);

        subject.Numbers.Values.Should().BeEquivalentTo(Enumerable.Range(1, TwoStoreyFlat.Home.Devices.Length));
        foreach (var device in TwoStoreyFlat.Home.Devices) subject.Device(device.Id).Should().Be(device);
    }

    [Fact]
    public void Circuits_are_lettered_by_name_and_go_on_after_z()
    {
        var home = TwoStoreyFlat.Home with
        {
            Devices =
            [
                .. Enumerable.Range(0, 60).Select(
                    i =>
                        TwoStoreyFlat.Home.Devices[0] with
                        {
                            Id = new(FormattableString.Invariant($"d{i}")),
                            Circuit = FormattableString.Invariant($"circuit {i:00}"),
                        }),
            ],
            Outlets = [],
            Circuits = [new("circuit 03", "way 3")],
        };
        var subject = new SheetSubject(home, []);

        new[] { 0, 25, 26, 27, 51, 52, 59 }.Select(i => subject.LetterOf(FormattableString.Invariant($"circuit {i:00}"))).Should().Equal("a", "z", "aa", "ab", "az", "ba", "bh");
        subject.LetterOf(null).Should().BeEmpty();
        (subject.IsolationOf("circuit 03"), subject.IsolationOf("circuit 04")).Should().Be(("way 3", null));
    }

    [Fact]
    public void The_first_four_networks_have_strokes_of_their_own()
    {
        var subject = new SheetSubject(
            TwoStoreyFlat.Home,
            [
                .. Enumerable.Range(0, 4).Select(
                    i => SyntheticCoverage.Coverage with { Network = TwoStoreyFlat.Network with { Name = new(FormattableString.Invariant($"n{i}")) } })]);

        Enumerable.Range(0, 4).Select(i => subject.DashOf(new(FormattableString.Invariant($"n{i}")))).Should().OnlyHaveUniqueItems();
    }
}
