using System.Numerics;
using MeshSim.Materials;

namespace MeshSim.Tests.Materials;

/// <summary>Reflection by an endless material, ITU-R P.2040-3.</summary>
public class HalfSpaceTests
{
    public static readonly ReproducedTable Reflections =
        new("Materials/P2040-3_half-space.csv", 120, ["material", "f_MHz", "theta_deg"], Compare);

    public static readonly TheoryData<string> Named = [];

    static HalfSpaceTests()
    {
        foreach (string material in Reflections.Rows.Select(row => row["material"]).Distinct())
            Named.Add(material);
    }

    [Theory]
    [MemberData(nameof(Named))]
    public void Reflection_is_that_of_the_table(string name) =>
        Reflections.Rows.Where(row => row["material"] == name).SelectMany(Reflections.Compare).ShouldHold();

    [Fact]
    public void Grazing_is_refused()
    {
        Action grazing = () => HalfSpace.Reflection(new(4, -1), 90, Polarisation.TransverseElectric);
        grazing.Should().Throw<ArgumentOutOfRangeException>();
    }

    private static IEnumerable<Comparison> Compare(PublishedRow row)
    {
        Complex permittivity = MaterialCatalogue.Find(row["material"])!.RelativePermittivity(new(row.Number("f_MHz")));
        double angle = row.Number("theta_deg");
        return
        [
            .. Compare(row, "TE", HalfSpace.Reflection(permittivity, angle, Polarisation.TransverseElectric)),
            .. Compare(row, "TM", HalfSpace.Reflection(permittivity, angle, Polarisation.TransverseMagnetic)),
        ];
    }

    private static Comparison[] Compare(PublishedRow row, string polarisation, Complex reflection)
    {
        string loss = $"RL_{polarisation}_dB";
        return
        [
            row.Printed(loss, -20 * Math.Log10(reflection.Magnitude), PrintedDigits.ScaleOfLoss(row.Number(loss))),
            row.Printed($"R_{polarisation}_re", reflection.Real, reflection.Magnitude),
            row.Printed($"R_{polarisation}_im", reflection.Imaginary, reflection.Magnitude),
        ];
    }
}
