using System.Text;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing.Mappings;
using MeshSim.Files.Sources;

namespace MeshSim.Files.Tests.Importing.Mappings;

public sealed class MappingReaderTests
{
    [Fact]
    public void A_mapping_is_read_whole()
    {
        ImportMapping mapping = Read("""
            home: Fern Court
            region: EU
            north: 30
            scale: 50
            constructions:
              - { construction: cob, layers: "clay-tile:450" }
            storeys:
              - { storey: ground, layer: Ground, ceiling: 2.5, outer: cob, anchor: a0 }
              - { storey: up, layer: Up, floor: joists-boards-lath, structure: 0.25 }
            take:
              - { layer: walls, as: wall, by thickness: { 0.2: cob, 0: stud-partition }, thickest: 0.7 }
              - { class: d, as: door, is: door-timber, height: 1.9, open: true }
              - { id: "lamp*", as: device, power: mains, kind: bulb, height: 2.2, mounting: lamp-shade, circuit: lights, switched by: hall switch }
              - { layer: notes, as: nothing }
            networks:
              - { network: mesh, radio: ieee802154-2450, channel: 20, coordinator: hub }
            """, out string[] said)!;

        said.Should().BeEmpty();
        mapping.Storeys.Select(storey => storey.Name).Should().Equal("ground", "up");
        mapping.Rules[0].ByThickness.Select(step => (step.LeastMetres, step.Construction.Value)).Should().Equal((0, "stud-partition"), (0.2, "cob"));
        mapping.Rules[0].AreFaces.Should().BeTrue("only faces have a thickness");
        mapping.Rules[1].Should().Match<TakeRule>(rule => rule.IsOpen && rule.HeightMetres == 1.9 && rule.Meaning == Meaning.Door);
        mapping.Rules[2].Should().Match<TakeRule>(rule => rule.Kind == "bulb" && rule.SwitchedBy == "hall switch" && rule.Circuit == "lights");
        mapping.Networks.Single().Channel.Should().Be(20);
    }

    [Fact]
    public void Every_mistake_is_said_with_its_place_in_one_run()
    {
        Read("""
            region: EUU
            take:
              - { layer: a, as: wal, is: brick-half }
              - { layer: b, as: wall }
              - { as: wall, is: brick-hlf }
              - { layer: c, as: room, is: brick-half }
              - { layer: d, as: wall, is: brick-half, drawn as: edges }
              - { layer: e, as: device, power: gas, mounting: nowhere }
              - { layer: f }
            storeys:
              - { storey: up, ceiling: 99 }
            """, out string[] said);

        said.Select(line => line[..line.IndexOf(';', StringComparison.Ordinal)]).Should().Equal(
            "map.yaml(1,9): error: unknown region \"EUU\"",
            "map.yaml(3,21): error: a shape cannot be taken as \"wal\"",
            "map.yaml(4,5): error: a rule for this lacks the key \"is\"",
            "map.yaml(5,5): error: the rule does not say which shapes it is for",
            "map.yaml(5,21): error: no construction is called \"brick-hlf\"",
            "map.yaml(6,27): error: a rule for this has no key \"is\"",
            "map.yaml(7,53): error: walls are not drawn as \"edges\"",
            "map.yaml(8,36): error: unknown word \"gas\"",
            "map.yaml(8,51): error: no mounting is called \"nowhere\"",
            "map.yaml(9,5): error: the rule does not say what its shapes are taken as",
            "map.yaml(11,28): error: \"ceiling\" is 99");
    }

    private static ImportMapping? Read(string text, out string[] said)
    {
        DiagnosticList problems = new(["map.yaml"]);
        ImportMapping? mapping = MappingReader.Read(SourceFile.FromBytes("map.yaml", Encoding.UTF8.GetBytes(text), problems)!, problems);
        said = [.. problems.Sorted(Severity.Error).Select(problem => problem.ToString())];
        return mapping;
    }
}
