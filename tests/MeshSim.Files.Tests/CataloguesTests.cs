using MeshSim.FloorPlans;
using MeshSim.Radio;

namespace MeshSim.Files.Tests;

public sealed class CataloguesTests
{
    [Fact]
    public void Every_row_parses_and_has_its_source()
    {
        Catalogues.Materials.Select(row => row.Source).Should().NotBeEmpty().And.NotContain("");
        Catalogues.Constructions.Select(row => row.Source).Should().NotBeEmpty().And.NotContain("");
        Catalogues.Radios.Select(row => row.Source).Should().NotBeEmpty().And.NotContain("");
        Catalogues.Mountings.Select(row => row.Source).Should().NotBeEmpty().And.NotContain("");
        Catalogues.BandLimits.Select(row => row.Source).Should().NotBeEmpty().And.NotContain("");
    }

    [Fact]
    public void Every_line_of_a_file_is_a_row()
    {
        Rows("materials.csv").Should().Be(Catalogues.Materials.Length);
        Rows("constructions.csv").Should().Be(Catalogues.Constructions.Length);
        Rows("radios.csv").Should().Be(Catalogues.Radios.Length);
        Rows("mountings.csv").Should().Be(Catalogues.Mountings.Length);
        Rows("band-limits.csv").Should().Be(Catalogues.BandLimits.Length);
    }

    [Fact]
    public void Names_are_unique()
    {
        Catalogues.Materials.Select(row => (row.Name, row.Edition)).Should().OnlyHaveUniqueItems();
        Catalogues.Constructions.Select(row => row.Name).Should().OnlyHaveUniqueItems();
        Catalogues.Radios.Select(row => row.Name).Should().OnlyHaveUniqueItems();
        Catalogues.Mountings.Select(row => row.Name).Should().OnlyHaveUniqueItems();
    }

    [Fact]
    public void Planning_takes_the_edition_in_force_for_planning_where_there_is_one()
    {
        Catalogues.FindMaterial("concrete")!.Edition.Should().Be("P.2040-3");
        Catalogues.FindMaterial("insulation")!.Edition.Should().Be("assumed");
        Catalogues.FindMaterial("carpet-tile")!.Edition.Should().Be("P.2040-4");
        Catalogues.FindMaterial("cheese").Should().BeNull();
    }

    [Fact]
    public void Layers_and_stated_losses_arrive()
    {
        Catalogues.ConstructionsByName[new ConstructionName("stud-partition")].Layers.Select(layer => (layer.Material.Name, layer.ThicknessMetres))
            .Should().Equal(("plasterboard", 0.0125), ("air", 0.075), ("plasterboard", 0.0125));
        Catalogues.ConstructionsByName[new ConstructionName("foil-faced-wall")].Stated.Select(loss => (loss.Frequency.Megahertz, loss.Loss.Value))
            .Should().Equal((433, 15), (868, 18), (2500, 22));
    }

    [Fact]
    public void The_433_MHz_receiver_is_as_sensitive_as_its_source_says()
    {
        RadioProfile radio = Catalogues.Radios.Single(row => row.Name == "short-range-433");
        Receiver receiver = new(radio);

        double noiseAsksForDbm = (receiver.NoiseFloor + receiver.RequiredSinr).Dbm;
        Math.Round(noiseAsksForDbm).Should().Be(-106);
        receiver.RequiredLevel.Should().Be(radio.Sensitivity);
        radio.Source.Should().Contain("about -106 dBm, so the sensitivity is what counts");
    }

    [Fact]
    public void The_default_mounting_is_in_the_catalogue() =>
        Catalogues.Mountings.Should().Contain(mounting => mounting.Name == "surface");

    // No field of a catalogue holds a line break, so rows can be counted as lines.
    private static int Rows(string file) => File.ReadLines(Path.Combine(Fixtures.SourceTree.Root, "datasets", file)).Count(line => line.Length > 0) - 1;
}
