using System.Numerics;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Tests.Materials;

/// <summary>Permittivity and conductivity of the rows of ITU-R P.2040, Table 3.</summary>
public class MaterialTests
{
    // The printed 9 GHz values have five significant digits.
    private const double HalfUnitOfFiveDigits = 0.5e-5;

    public static readonly TheoryData<string, string> Named = [];

    private static readonly List<PublishedRow> Permittivities = PublishedTable.Read("Materials/P2040_permittivity.csv").Rows;

    static MaterialTests()
    {
        foreach (var named in Permittivities.Select(row => (Edition: row["edition"], Material: row["material"])).Distinct())
            Named.Add(named.Edition, named.Material);
    }

    [Fact]
    public void The_table_has_every_row()
    {
        Permittivities.Should().HaveCount(176);
        Permittivities.CountBy(row => (row["edition"], row["material"])).Should().OnlyContain(material => material.Value == 4);
    }

    [Theory]
    [MemberData(nameof(Named))]
    public void Permittivity_is_that_of_the_table(string edition, string name)
    {
        Material material = Find(name, edition);
        foreach (PublishedRow row in Permittivities.Where(row => row["edition"] == edition && row["material"] == name))
        {
            var frequency = new Frequency(row.Number("f_MHz"));
            Complex permittivity = material.RelativePermittivity(frequency);
            Complex index = Complex.Sqrt(permittivity);
            permittivity.Real.ShouldBePrintedAs(row.Number("eps_real"), row.Place);
            (-permittivity.Imaginary).ShouldBePrintedAs(row.Number("eps_imag_17p98"), row.Place);
            (-permittivity.Imaginary / permittivity.Real).ShouldBePrintedAs(row.Number("loss_tangent"), row.Place);
            index.Real.ShouldBePrintedAs(row.Number("n_real"), row.Place, index.Magnitude);
            (-index.Imaginary).ShouldBePrintedAs(row.Number("n_imag"), row.Place, index.Magnitude);
            material.FrequencyGigahertz.Contains(frequency.Gigahertz).Should().Be(row.Flag("f_inside_table_range"), row.Place);
        }
    }

    [Fact]
    public void At_9_gigahertz_values_printed_elsewhere_are_met()
    {
        List<PublishedRow> rows = PublishedTable.Read("Materials/P2040-1_permittivity-9-GHz.csv").Rows;
        rows.Should().HaveCount(5);
        foreach (PublishedRow row in rows)
        {
            var frequency = new Frequency(row.Number("f_MHz"));
            Complex permittivity = Find(row["material"], row["edition"]).RelativePermittivity(frequency);
            double conductivity = -permittivity.Imaginary * frequency.Gigahertz / Material.LossFactorGigahertz;
            permittivity.Real.Should().Be(row.Number("published_eps_real"), row.Place);
            conductivity.Should().BeApproximately(row.Number("published_sigma"), HalfUnitOfFiveDigits, row.Place);
            conductivity.ShouldBePrintedAs(row.Number("computed_sigma"), row.Place);
        }
    }

    [Fact]
    public void The_catalogue_repeats_the_published_rows()
    {
        List<PublishedRow> published = PublishedTable.Read("Materials/P2040_materials.csv").Rows;
        published.Should().HaveCount(62);
        foreach (PublishedRow row in published.Where(row => row.Number("row") == 1))
        {
            Material material = Find(row["material"], row["edition"]);
            (material.A, material.B, material.C, material.D)
                .Should().Be((row.Number("a"), row.Number("b"), row.Number("c_S_per_m"), row.Number("d")), row.Place);
            material.FrequencyGigahertz.Should().Be(new ValidRange(row.Number("f_min_GHz"), row.Number("f_max_GHz"), "GHz"), row.Place);
        }
    }

    private static Material Find(string name, string edition) =>
        MaterialCatalogue.Find(name.Replace('_', '-'), edition) ?? throw new InvalidDataException($"no {name} in {edition}");
}
