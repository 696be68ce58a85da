using MeshSim.Devices;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Tests.Scenes;

namespace MeshSim.Drawing.Tests.Symbols;

public sealed class SymbolShapesTests
{
    [Theory]
    [InlineData("smart plug", SymbolShape.Outlet)]
    [InlineData("light switch", SymbolShape.Switch)]
    [InlineData("Bulb", SymbolShape.Lamp)]
    [InlineData("contact sensor", SymbolShape.Contact)]
    [InlineData("radiator valve thermostat", SymbolShape.Valve)]
    [InlineData("relay behind switch", SymbolShape.Module)]
    [InlineData("leak sensor", SymbolShape.Water)]
    [InlineData("plug-in repeater", SymbolShape.Repeater)]
    [InlineData("ticket puncher", SymbolShape.Other)]
    [InlineData("", SymbolShape.Other)]
    internal void The_kind_decides_the_symbol(string kind, SymbolShape shape) =>
        SymbolShapes.Of(TwoStoreyFlat.Home.Devices[1] with { Kind = kind }).Should().Be(shape);

    [Fact]
    public void A_coordinator_has_its_own_symbol_whatever_its_kind() =>
        SymbolShapes.Of(TwoStoreyFlat.Home.Devices[1] with { Kind = "plug", Role = Role.Coordinator }).Should().Be(SymbolShape.Controller);

    [Fact]
    public void Every_symbol_stays_on_its_disc()
    {
        foreach (SymbolShape shape in Enum.GetValues<SymbolShape>())
            SymbolStrokes.Of(shape).SelectMany(stroke => stroke.Points).Should().OnlyContain(point => Math.Sqrt((point.X * point.X) + (point.Y * point.Y)) <= 1.0, shape.ToString());
    }

    [Fact]
    public void Every_symbol_has_a_meaning_and_a_drawing_of_its_own()
    {
        SymbolShape[] shapes = Enum.GetValues<SymbolShape>();

        shapes.Select(SymbolShapes.Meaning).Should().OnlyHaveUniqueItems();
        shapes.Select(shape => string.Join(' ', SymbolStrokes.Of(shape).SelectMany(stroke => stroke.Points))).Should().OnlyHaveUniqueItems();
    }
}
