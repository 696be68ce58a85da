using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class LossWorkTests
{
    private const string Layers = "plasterboard:12.5, air:100, plasterboard:12.5";

    /// <summary>JSON carries twelve significant digits of values below 100 dB.</summary>
    private const double JsonPrecisionDb = 1e-9;

    [Fact]
    public async Task A_construction_of_the_catalogue_is_told_in_text()
    {
        Run run = await Run.Of("loss", "brick-half", "--frequency", "2440", "--angle", "0", "60");

        run.Code.Should().Be(0);
        run.Error.Should().BeEmpty();
        Approval.Verify(run.Output, "loss-brick-half.txt");
    }

    [Fact]
    public async Task Json_has_the_pure_slab_beside_the_planning_value()
    {
        Run run = await Run.Of("loss", "--layers", Layers, "--json");

        JsonElement losses = run.Json.GetProperty("losses");
        losses.GetArrayLength().Should().Be(3 * 4, "three bands at four angles are the default");
        JsonElement slanted = losses[11];
        slanted.GetProperty("frequencyMegahertz").GetDouble().Should().Be(2440);
        slanted.GetProperty("angleDegrees").GetDouble().Should().Be(60);
        slanted.EnumerateObject().Select(property => property.Name).Should().Equal("frequencyMegahertz", "angleDegrees", "planningLossDb", "isExtrapolated", "te", "tm");
        slanted.GetProperty("te").EnumerateObject().Select(property => property.Name).Should().Equal("transmissionLossDb", "reflectionLossDb");
        run.Json.GetProperty("layers").EnumerateArray().Select(layer => layer.GetProperty("thicknessMillimetres").GetDouble()).Should().Equal(12.5, 100, 12.5);
    }

    [Fact]
    public async Task At_normal_incidence_the_polarisations_agree()
    {
        Run run = await Run.Of("loss", "--layers", Layers, "--json", "--angle", "0");

        foreach (JsonElement loss in run.Json.GetProperty("losses").EnumerateArray())
            TransmissionDb(loss, "te").Should().BeApproximately(TransmissionDb(loss, "tm"), JsonPrecisionDb);
    }

    [Fact]
    public async Task A_stated_loss_has_no_slab()
    {
        Run run = await Run.Of("loss", "water-cylinder", "--json");

        run.Json.GetProperty("layers").GetArrayLength().Should().Be(0);
        run.Json.GetProperty("losses")[0].GetProperty("te").ValueKind.Should().Be(JsonValueKind.Null);
        run.Json.GetProperty("losses")[0].GetProperty("planningLossDb").GetDouble().Should().BePositive();
    }

    [Fact]
    public async Task The_list_names_every_construction_and_fits_the_page()
    {
        Run text = await Run.Of("loss", "--list");
        Run json = await Run.Of("loss", "--list", "--json");

        text.Output.Split('\n').Should().OnlyContain(line => line.Length <= Terminal.PipedWidth);
        json.Json.GetArrayLength().Should().BeGreaterThanOrEqualTo(30);
        foreach (JsonElement construction in json.Json.EnumerateArray())
            text.Output.Should().Contain(construction.GetProperty("construction").GetString());
    }

    [Fact]
    public async Task The_result_can_go_to_a_file()
    {
        using var temporary = new TemporaryFolder();

        Run toFile = await Run.Of("loss", "brick-half", "--out", temporary["loss.txt"]);
        Run toScreen = await Run.Of("loss", "brick-half");

        toFile.Output.Should().BeEmpty();
        File.ReadAllText(temporary["loss.txt"]).Should().Be(toScreen.Output);
    }

    [Fact]
    public async Task Every_problem_of_a_build_up_is_told_at_once_with_its_place()
    {
        Run run = await Run.Of("loss", "--layers", "brik:10, air:-5");

        run.Code.Should().Be(2);
        run.ErrorLines.Should().HaveCount(2);
        run.ErrorLines[0].Should().StartWith("--layers(1): error:");
    }

    private static double TransmissionDb(JsonElement loss, string polarisation) => loss.GetProperty(polarisation).GetProperty("transmissionLossDb").GetDouble();
}
