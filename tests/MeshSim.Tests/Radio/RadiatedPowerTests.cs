using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class RadiatedPowerTests
{
    /// <summary>What regulators drop from the gain of a half-wave dipole, 2.150880 dB.</summary>
    private const double RoundingDb = 0.00088037433;

    public static readonly ReproducedTable Erp = new("Radio/erp-eirp.csv", 7, ["ERP_mW"], CompareErp);

    public static readonly ReproducedTable Field = new("Radio/field-strength.csv", 6, ["rule", "E_uV_per_m", "d_m"], CompareField);

    public static TheoryData<int> ErpPlaces => Erp.Places;

    public static TheoryData<int> FieldPlaces => Field.Places;

    [Theory]
    [MemberData(nameof(ErpPlaces))]
    public void Erp_gives_every_printed_eirp(int place) => Erp.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(ErpPlaces))]
    public void Eirp_gives_back_the_erp(int place)
    {
        var erp = new PowerLevel(Erp.Rows[place].Number("ERP_dBm"));
        RadiatedPower.ErpFromEirp(RadiatedPower.EirpFromErp(erp)).Dbm.Should().BeApproximately(erp.Dbm, 1e-12, "adding and subtracting one number");
    }

    [Theory]
    [MemberData(nameof(FieldPlaces))]
    public void Field_strength_gives_every_printed_eirp(int place) => Field.ShouldBeMetAt(place);

    [Theory]
    [InlineData(0, 3)]
    [InlineData(500, 0)]
    [InlineData(double.NaN, 3)]
    public void Nonsense_is_refused(double fieldMicrovoltsPerMetre, double distanceMetres) =>
        FluentActions.Invoking(() => RadiatedPower.EirpFromField(fieldMicrovoltsPerMetre, distanceMetres)).Should().Throw<ArgumentOutOfRangeException>();

    private static IEnumerable<Comparison> CompareErp(PublishedRow row)
    {
        var erp = PowerLevel.FromMilliwatts(row.Number("ERP_mW"));
        PowerLevel eirp = RadiatedPower.EirpFromErp(erp);
        yield return row.Within("EIRP_dBm_rounded_2p15", eirp.Dbm);
        yield return row.Within("ERP_dBm", erp.Dbm);
        yield return row.Within("EIRP_mW_rounded", eirp.Milliwatts);
        yield return row.Within("EIRP_dBm_exact_dipole", eirp.Dbm + RoundingDb);
    }

    private static IEnumerable<Comparison> CompareField(PublishedRow row)
    {
        PowerLevel eirp = RadiatedPower.EirpFromField(row.Number("E_uV_per_m"), row.Number("d_m"));
        yield return row.Within("EIRP_dBm", eirp.Dbm);
        yield return row.Within("EIRP_mW", eirp.Milliwatts);
    }
}
