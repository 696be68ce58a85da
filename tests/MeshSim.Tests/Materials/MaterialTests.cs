using System.Numerics;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Tests.Materials;

/// <summary>Permittivity and conductivity of the rows of ITU-R P.2040, Table 3.</summary>
public class MaterialTests
{
    // The printed 9 GHz values have five significant digits.
    private const double HalfUnitOfFiveDigits = 0.5e-5;

    public static readonly ReproducedTable Permittivities =
        new("Materials/P2040_permittivity.csv", 176, ["edition", "material", "f_MHz"], ComparePermittivity);

    public static readonly ReproducedTable AtNineGigahertz =
        new("Materials/P2040-1_permittivity-9-GHz.csv", 5, ["edition", "material", "f_MHz"], CompareAtNineGigahertz);

    public static readonly ReproducedTable Catalogue =
        new("Materials/P2040_materials.csv", 62, ["edition", "material", "row"], CompareParameters);

    public static readonly TheoryData<string, string> Named = [];

    static MaterialTests()
    {
        foreach (var named in Permittivities.Rows.Select(row => (Edition: row["edition"], Material: row["material"])).Distinct())
            Named.Add(named.Edition, named.Material);
    }

    [Fact]
    public void The_table_has_every_row() =>
        Permittivities.Rows.CountBy(row => (row["edition"], row["material"])).Should().OnlyContain(material => material.Value == 4);

    [Theory]
    [MemberData(nameof(Named))]
    public void Permittivity_is_that_of_the_table(string edition, string name) =>
        Permittivities.Rows.Where(row => row["edition"] == edition && row["material"] == name).SelectMany(Permittivities.Compare).ShouldHold();

    [Fact]
    public void At_9_gigahertz_values_printed_elsewhere_are_met() => AtNineGigahertz.ShouldBeMet();

    [Fact]
    public void The_catalogue_repeats_the_published_rows() => Catalogue.ShouldBeMet();

    private static IEnumerable<Comparison> ComparePermittivity(PublishedRow row)
    {
        Material material = Find(row);
        var frequency = new Frequency(row.Number("f_MHz"));
        Complex permittivity = material.RelativePermittivity(frequency);
        Complex index = Complex.Sqrt(permittivity);
        yield return row.Printed("eps_real", permittivity.Real);
        yield return row.Printed("eps_imag_17p98", -permittivity.Imaginary);
        yield return row.Printed("loss_tangent", -permittivity.Imaginary / permittivity.Real);
        yield return row.Printed("n_real", index.Real, index.Magnitude);
        yield return row.Printed("n_imag", -index.Imaginary, index.Magnitude);
        yield return row.Exactly("f_inside_table_range", material.FrequencyGigahertz.Contains(frequency.Gigahertz));
    }

    private static IEnumerable<Comparison> CompareAtNineGigahertz(PublishedRow row)
    {
        var frequency = new Frequency(row.Number("f_MHz"));
        Complex permittivity = Find(row).RelativePermittivity(frequency);
        double conductivity = -permittivity.Imaginary * frequency.Gigahertz / Material.LossFactorGigahertz;
        yield return row.Near("published_sigma", conductivity, HalfUnitOfFiveDigits, "S/m (five printed digits)");
        yield return row.Exactly("published_eps_real", permittivity.Real);
        yield return row.Printed("computed_sigma", conductivity);
    }

    /// <summary>Where an edition prints a second row for other frequencies, the catalogue has the first.</summary>
    private static IEnumerable<Comparison> CompareParameters(PublishedRow row)
    {
        if (row.Whole("row") != 1) yield break;
        Material material = Find(row);
        yield return row.Exactly("c_S_per_m", material.C);
        yield return row.Exactly("a", material.A);
        yield return row.Exactly("b", material.B);
        yield return row.Exactly("d", material.D);
        yield return row.Exactly("f_min_GHz", material.FrequencyGigahertz.Min);
        yield return row.Exactly("f_max_GHz", material.FrequencyGigahertz.Max);
    }

    private static Material Find(PublishedRow row) =>
        MaterialCatalogue.Find(row["material"].Replace('_', '-'), row["edition"]) ?? throw new InvalidDataException(row.Place);
}
