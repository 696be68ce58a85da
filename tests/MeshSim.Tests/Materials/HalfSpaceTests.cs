using System.Numerics;
using MeshSim.Materials;

namespace MeshSim.Tests.Materials;

/// <summary>Reflection by an endless material, ITU-R P.2040-3.</summary>
public class HalfSpaceTests
{
    public static readonly TheoryData<string> Named = [];

    private static readonly List<PublishedRow> Rows = PublishedTable.Read("Materials/P2040-3_half-space.csv").Rows;

    static HalfSpaceTests()
    {
        foreach (string material in Rows.Select(row => row["material"]).Distinct())
            Named.Add(material);
    }

    [Fact]
    public void The_table_has_every_row() => Rows.Should().HaveCount(120);

    [Theory]
    [MemberData(nameof(Named))]
    public void Reflection_is_that_of_the_table(string name)
    {
        foreach (PublishedRow row in Rows.Where(row => row["material"] == name))
        {
            Complex permittivity = MaterialCatalogue.Find(name)!.RelativePermittivity(new(row.Number("f_MHz")));
            double angle = row.Number("theta_deg");
            Check(HalfSpace.Reflection(permittivity, angle, Polarisation.TransverseElectric), row, "TE");
            Check(HalfSpace.Reflection(permittivity, angle, Polarisation.TransverseMagnetic), row, "TM");
        }
    }

    [Fact]
    public void Grazing_is_refused()
    {
        Action grazing = () => HalfSpace.Reflection(new(4, -1), 90, Polarisation.TransverseElectric);
        grazing.Should().Throw<ArgumentOutOfRangeException>();
    }

    private static void Check(Complex reflection, PublishedRow row, string polarisation)
    {
        reflection.Real.ShouldBePrintedAs(row.Number($"R_{polarisation}_re"), row.Place, reflection.Magnitude);
        reflection.Imaginary.ShouldBePrintedAs(row.Number($"R_{polarisation}_im"), row.Place, reflection.Magnitude);
        double lossDb = row.Number($"RL_{polarisation}_dB");
        double scale = Math.Max(lossDb, PrintedDigits.DecibelsPerNeperOfPower);
        (-20 * Math.Log10(reflection.Magnitude)).ShouldBePrintedAs(lossDb, row.Place, scale);
    }
}
