using System.Collections.Immutable;
using System.Numerics;
using CsCheck;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Tests.Materials;

/// <summary>ITU-R P.2040 stacks against independent tables of 12 digits, and the balance of energy.</summary>
public class SlabSolverTests
{
    // 1/(2π ε0 · 1e9) with ε0 of CODATA 2018, which the tables' exact column uses.
    private const double ExactLossFactorGigahertz = 1 / (2 * Math.PI * 8.8541878128e-12 * 1e9);

    // Two ways to sum the same energies, each with some hundred roundings of 1e-16.
    private const double EnergyRounding = 1e-12;

    public static readonly TheoryData<string, string> Slabs = [];

    private static readonly ImmutableDictionary<string, string> LayersOfSlab =
        PublishedTable.Read("Materials/slab-definitions.csv").Rows.ToImmutableDictionary(row => row["slab_id"], row => row["layers_material_mm_in_order"]);

    private static readonly ImmutableArray<PublishedRow> Rows =
        [.. new[] { "P2040-1", "P2040-3", "P2040-4" }.SelectMany(edition => PublishedTable.Read($"Materials/{edition}_slab.csv").Rows)];

    static SlabSolverTests()
    {
        foreach (var slab in Rows.Select(row => (Edition: row["edition"], Slab: row["slab_id"])).Distinct())
            Slabs.Add(slab.Edition, slab.Slab);
    }

    [Fact]
    public void The_tables_have_every_row()
    {
        Rows.CountBy(row => row["edition"]).Should().BeEquivalentTo(
            new KeyValuePair<string, int>[] { new("P.2040-1", 560), new("P.2040-3", 640), new("P.2040-4", 640) });
        LayersOfSlab.Should().HaveCount(21);
        Rows.CountBy(row => (row["edition"], row["slab_id"])).Should().OnlyContain(slab => slab.Value == 40);
    }

    [Theory]
    [MemberData(nameof(Slabs))]
    public void Losses_and_coefficients_are_those_of_the_table(string edition, string slab)
    {
        foreach (PublishedRow row in RowsOf(edition, slab))
        {
            SlabResponse response = Solve(row);
            response.TransmissionLoss.Value.ShouldBePrintedAs(row.Number("transmission_loss_dB"), row.Place, ScaleOf(row.Number("transmission_loss_dB")));
            response.ReflectionLoss.Value.ShouldBePrintedAs(row.Number("reflection_loss_dB"), row.Place);

            // A component may be small against its number's magnitude, which is what rounding is in proportion to.
            double t = response.Transmission.Magnitude, r = response.Reflection.Magnitude;
            response.Transmission.Real.ShouldBePrintedAs(row.Number("T_re"), row.Place, t);
            response.Transmission.Imaginary.ShouldBePrintedAs(row.Number("T_im"), row.Place, t);
            response.Reflection.Real.ShouldBePrintedAs(row.Number("R_re"), row.Place, r);
            response.Reflection.Imaginary.ShouldBePrintedAs(row.Number("R_im"), row.Place, r);
        }
    }

    [Theory]
    [MemberData(nameof(Slabs))]
    public void Powers_are_those_of_the_table(string edition, string slab)
    {
        foreach (PublishedRow row in RowsOf(edition, slab))
        {
            SlabResponse response = Solve(row);
            double t = Math.Pow(response.Transmission.Magnitude, 2), r = Math.Pow(response.Reflection.Magnitude, 2);
            t.ShouldBePrintedAs(row.Number("T_power"), row.Place);
            r.ShouldBePrintedAs(row.Number("R_power"), row.Place);
            (1 - t - r).ShouldBePrintedAs(row.Number("absorbed_power"), row.Place, scale: 1);
        }
    }

    [Theory]
    [MemberData(nameof(Slabs))]
    public void With_the_exact_constant_the_loss_is_that_of_the_exact_column(string edition, string slab)
    {
        foreach (PublishedRow row in RowsOf(edition, slab))
        {
            ImmutableArray<Layer> layers = MaterialCatalogue.Layers(LayersOfSlab[slab], edition);
            var frequency = new Frequency(row.Number("f_MHz"));
            Complex[] permittivities = [.. layers.Select(layer => ExactPermittivity(layer.Material, frequency))];
            double[] thicknessesMetres = [.. layers.Select(layer => layer.ThicknessMetres)];
            SlabResponse response = SlabSolver.Solve(permittivities, thicknessesMetres, frequency, row.Number("theta_deg"), PolarisationOf(row));
            response.TransmissionLoss.Value.ShouldBePrintedAs(row.Number("transmission_loss_dB_exact_eps0"), row.Place, ScaleOf(row.Number("transmission_loss_dB_exact_eps0")));
        }
    }

    [Theory]
    [MemberData(nameof(Slabs))]
    public void The_mean_of_both_powers_and_the_range_flag_are_those_of_the_table(string edition, string slab)
    {
        foreach (PublishedRow row in RowsOf(edition, slab))
        {
            ImmutableArray<Layer> layers = MaterialCatalogue.Layers(LayersOfSlab[slab], edition);
            var frequency = new Frequency(row.Number("f_MHz"));
            double angle = row.Number("theta_deg");
            double te = SlabSolver.Solve(layers.AsSpan(), frequency, angle, Polarisation.TransverseElectric).TransmissionLoss.Value;
            double tm = SlabSolver.Solve(layers.AsSpan(), frequency, angle, Polarisation.TransverseMagnetic).TransmissionLoss.Value;
            double lower = Math.Min(te, tm);
            double mean = lower - (10 * Math.Log10((Math.Pow(10, (lower - te) / 10) + Math.Pow(10, (lower - tm) / 10)) / 2));
            mean.ShouldBePrintedAs(row.Number("transmission_loss_dB_mean_TE_TM_power"), row.Place, ScaleOf(row.Number("transmission_loss_dB_mean_TE_TM_power")));
            layers.All(layer => layer.Material.FrequencyGigahertz.Contains(frequency.Gigahertz))
                .Should().Be(row.Flag("all_layers_inside_table_range"), row.Place);
        }
    }

    [Fact]
    public void A_lossless_stack_loses_no_energy() => Stack(Gen.Const(0.0)).Sample(stack =>
    {
        SlabResponse response = stack.Solve();
        Math.Abs(Energy(response) - 1).Should().BeLessThan(EnergyRounding);
    });

    [Fact]
    public void No_stack_makes_energy() => Stack(Gen.Double[0, 60]).Sample(stack =>
    {
        SlabResponse response = stack.Solve();
        Energy(response).Should().BeLessThanOrEqualTo(1 + EnergyRounding);
        response.TransmissionLoss.Value.Should().BeGreaterThanOrEqualTo(-EnergyRounding);
    });

    [Fact]
    public void A_stack_transmits_the_same_from_either_side() => Stack(Gen.Double[0, 60]).Sample(stack =>
    {
        SlabResponse front = stack.Solve();
        SlabResponse back = (stack with { Permittivities = [.. stack.Permittivities.Reverse()], ThicknessesMetres = [.. stack.ThicknessesMetres.Reverse()] }).Solve();
        back.TransmissionLoss.Value.Should().BeApproximately(front.TransmissionLoss.Value, EnergyRounding * Math.Max(1, front.TransmissionLoss.Value));
    });

    [Fact]
    public void A_metre_of_metal_overflows_nothing()
    {
        ImmutableArray<Layer> layers = MaterialCatalogue.Layers("metal:1000, air:50, metal:1000");
        SlabResponse response = SlabSolver.Solve(layers.AsSpan(), new(2440), 30, Polarisation.TransverseMagnetic);
        response.Transmission.Should().Be(Complex.Zero);
        response.TransmissionLoss.Value.Should().BeInRange(5_000_000, 6_000_000, "metal takes about 2.7 million dB per metre at 2.44 GHz");
        response.ReflectionLoss.Value.Should().BeInRange(0, 0.01);
    }

    [Fact]
    public void Angle_and_frequency_are_refused_just_outside_their_range()
    {
        ImmutableArray<Layer> layers = MaterialCatalogue.Layers("glass:4");
        ((Action)(() => SlabSolver.Solve(layers.AsSpan(), new(2440), 90, default))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => SlabSolver.Solve(layers.AsSpan(), new(2440), double.NaN, default))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => SlabSolver.Solve(layers.AsSpan(), new(SlabSolver.FrequencyMegahertz.Max * 1.001), 0, default))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => SlabSolver.Solve([], new(2440), 0, default))).Should().Throw<ArgumentException>();
        SlabSolver.Solve(layers.AsSpan(), new(SlabSolver.FrequencyMegahertz.Max), SlabSolver.AngleDegrees.Max, default)
            .TransmissionLoss.Value.Should().BePositive();
    }

    private static IEnumerable<PublishedRow> RowsOf(string edition, string slab) =>
        Rows.Where(row => row["edition"] == edition && row["slab_id"] == slab);

    private static SlabResponse Solve(PublishedRow row) => SlabSolver.Solve(
        MaterialCatalogue.Layers(LayersOfSlab[row["slab_id"]], row["edition"]).AsSpan(),
        new(row.Number("f_MHz")),
        row.Number("theta_deg"),
        PolarisationOf(row));

    private static double ScaleOf(double lossDb) => Math.Max(lossDb, PrintedDigits.DecibelsPerNeperOfPower);

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

    private static double Energy(SlabResponse response) =>
        Math.Pow(response.Transmission.Magnitude, 2) + Math.Pow(response.Reflection.Magnitude, 2);

    private static Gen<RandomStack> Stack(Gen<double> lossPart) =>
        Gen.Select(
            Gen.Select(Gen.Double[1, 12], lossPart, Gen.Double[0.0005, 0.4]).Array[1, 8],
            Gen.Double[100, 6000],
            Gen.Double[0, 89],
            Gen.Bool,
            (layers, megahertz, angle, isTe) => new RandomStack(
                [.. layers.Select(layer => new Complex(layer.Item1, -layer.Item2))],
                [.. layers.Select(layer => layer.Item3)],
                new(megahertz),
                angle,
                isTe ? Polarisation.TransverseElectric : Polarisation.TransverseMagnetic));

    private sealed record RandomStack(
        ImmutableArray<Complex> Permittivities,
        ImmutableArray<double> ThicknessesMetres,
        Frequency Frequency,
        double AngleDegrees,
        Polarisation Polarisation)
    {
        public SlabResponse Solve() =>
            SlabSolver.Solve(Permittivities.AsSpan(), ThicknessesMetres.AsSpan(), Frequency, AngleDegrees, Polarisation);
    }
}
