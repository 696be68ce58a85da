using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class RadiatedPowerTests
{
    /// <summary>What regulators drop from the gain of a half-wave dipole, 2.150880 dB.</summary>
    private const double RoundingDb = 0.00088037433;

    private static readonly ReferenceTable Erp = ReferenceTable.Read("Radio/erp-eirp.csv");
    private static readonly ReferenceTable Field = ReferenceTable.Read("Radio/field-strength.csv");

    public static TheoryData<int> ErpRows => Erp.Rows(7);

    public static TheoryData<int> FieldRows => Field.Rows(6);

    [Theory]
    [MemberData(nameof(ErpRows))]
    public void Erp_gives_every_printed_eirp(int row)
    {
        var erp = PowerLevel.FromMilliwatts(Erp.Number(row, "ERP_mW"));
        PowerLevel eirp = RadiatedPower.EirpFromErp(erp);
        Erp.ShouldPrint(row, "ERP_dBm", erp.Dbm);
        Erp.ShouldPrint(row, "EIRP_dBm_rounded_2p15", eirp.Dbm);
        Erp.ShouldPrint(row, "EIRP_mW_rounded", eirp.Milliwatts);
        Erp.ShouldPrint(row, "EIRP_dBm_exact_dipole", eirp.Dbm + RoundingDb);
        RadiatedPower.ErpFromEirp(eirp).Dbm.Should().BeApproximately(erp.Dbm, 1e-12, "adding and subtracting one number");
    }

    [Theory]
    [MemberData(nameof(FieldRows))]
    public void Field_strength_gives_every_printed_eirp(int row)
    {
        PowerLevel eirp = RadiatedPower.EirpFromField(Field.Number(row, "E_uV_per_m"), Field.Number(row, "d_m"));
        Field.ShouldPrint(row, "EIRP_mW", eirp.Milliwatts);
        Field.ShouldPrint(row, "EIRP_dBm", eirp.Dbm);
    }

    [Theory]
    [InlineData(0, 3)]
    [InlineData(500, 0)]
    [InlineData(double.NaN, 3)]
    public void Nonsense_is_refused(double fieldMicrovoltsPerMetre, double distanceMetres) =>
        FluentActions.Invoking(() => RadiatedPower.EirpFromField(fieldMicrovoltsPerMetre, distanceMetres)).Should().Throw<ArgumentOutOfRangeException>();
}
