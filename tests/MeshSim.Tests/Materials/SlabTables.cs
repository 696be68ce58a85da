using System.Collections.Immutable;
using System.Numerics;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Tests.Materials;

/// <summary>The tables of flat stacks by ITU-R P.2040, and what the slab solver makes of their rows.</summary>
public static class SlabTables
{
    // 1/(2π ε0 · 1e9) with ε0 of CODATA 2018, which the tables' exact column uses.
    private const double ExactLossFactorGigahertz = 1 / (2 * Math.PI * 8.8541878128e-12 * 1e9);

    public static readonly ImmutableDictionary<string, string> LayersOfSlab =
        PublishedTable.Read("Materials/slab-definitions.csv").Rows.ToImmutableDictionary(row => row["slab_id"], row => row["layers_material_mm_in_order"]);

    public static readonly ImmutableArray<ReproducedTable> Editions =
        [Edition("P2040-1", 560), Edition("P2040-3", 640), Edition("P2040-4", 640)];

    public static IEnumerable<Comparison> Coefficients(PublishedRow row)
    {
        SlabResponse response = Solve(row);
        yield return Loss(row, "transmission_loss_dB", response.TransmissionLoss.Value);
        yield return row.Printed("reflection_loss_dB", response.ReflectionLoss.Value);

        // A component may be small against its number's magnitude, which is what rounding is in proportion to.
        double t = response.Transmission.Magnitude, r = response.Reflection.Magnitude;
        yield return row.Printed("T_re", response.Transmission.Real, t);
        yield return row.Printed("T_im", response.Transmission.Imaginary, t);
        yield return row.Printed("R_re", response.Reflection.Real, r);
        yield return row.Printed("R_im", response.Reflection.Imaginary, r);
    }

    public static IEnumerable<Comparison> Powers(PublishedRow row)
    {
        SlabResponse response = Solve(row);
        double t = Math.Pow(response.Transmission.Magnitude, 2), r = Math.Pow(response.Reflection.Magnitude, 2);
        yield return row.Printed("T_power", t);
        yield return row.Printed("R_power", r);
        yield return row.Printed("absorbed_power", 1 - t - r, scale: 1);
    }

    public static IEnumerable<Comparison> ExactConstant(PublishedRow row)
    {
        ImmutableArray<Layer> layers = LayersOf(row);
        var frequency = new Frequency(row.Number("f_MHz"));
        Complex[] permittivities = [.. layers.Select(layer => ExactPermittivity(layer.Material, frequency))];
        double[] thicknessesMetres = [.. layers.Select(layer => layer.ThicknessMetres)];
        SlabResponse response = SlabSolver.Solve(permittivities, thicknessesMetres, frequency, row.Number("theta_deg"), PolarisationOf(row));
        yield return Loss(row, "transmission_loss_dB_exact_eps0", response.TransmissionLoss.Value);
    }

    public static IEnumerable<Comparison> MeanAndRange(PublishedRow row)
    {
        ImmutableArray<Layer> layers = LayersOf(row);
        var frequency = new Frequency(row.Number("f_MHz"));
        yield return Loss(row, "transmission_loss_dB_mean_TE_TM_power", MeanLossDb(layers, frequency, row.Number("theta_deg")));
        yield return row.Exactly("all_layers_inside_table_range", layers.All(layer => layer.Material.FrequencyGigahertz.Contains(frequency.Gigahertz)));
    }

    /// <summary>The loss of the mean of both polarisations' powers, taken relative to the larger so that metal underflows nothing.</summary>
    public static double MeanLossDb(ImmutableArray<Layer> layers, Frequency frequency, double angleDegrees)
    {
        double te = SlabSolver.Solve(layers.AsSpan(), frequency, angleDegrees, Polarisation.TransverseElectric).TransmissionLoss.Value;
        double tm = SlabSolver.Solve(layers.AsSpan(), frequency, angleDegrees, Polarisation.TransverseMagnetic).TransmissionLoss.Value;
        double lower = Math.Min(te, tm);
        return lower - (10 * Math.Log10((Math.Pow(10, (lower - te) / 10) + Math.Pow(10, (lower - tm) / 10)) / 2));
    }

    private static ReproducedTable Edition(string edition, int rowCount) => new(
        $"Materials/{edition}_slab.csv",
        rowCount,
        ["slab_id", "f_MHz", "theta_deg", "pol"],
        row => [.. Coefficients(row), .. Powers(row), .. ExactConstant(row), .. MeanAndRange(row)]);

    private static SlabResponse Solve(PublishedRow row) =>
        SlabSolver.Solve(LayersOf(row).AsSpan(), new(row.Number("f_MHz")), row.Number("theta_deg"), PolarisationOf(row));

    private static ImmutableArray<Layer> LayersOf(PublishedRow row) => MaterialCatalogue.Layers(LayersOfSlab[row["slab_id"]], row["edition"]);

    private static Comparison Loss(PublishedRow row, string column, double oursDb) =>
        row.Printed(column, oursDb, PrintedDigits.ScaleOfLoss(row.Number(column)));

    private static Polarisation PolarisationOf(PublishedRow row) => row["pol"] switch
    {
        "TE" => Polarisation.TransverseElectric,
        "TM" => Polarisation.TransverseMagnetic,
        _ => throw new InvalidDataException(row.Place),
    };

    private static Complex ExactPermittivity(Material material, Frequency frequency)
    {
        Complex rounded = material.RelativePermittivity(frequency);
        return new(rounded.Real, rounded.Imaginary * ExactLossFactorGigahertz / Material.LossFactorGigahertz);
    }
}
