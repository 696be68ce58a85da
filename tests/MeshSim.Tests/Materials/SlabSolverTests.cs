using System.Collections.Immutable;
using System.Numerics;
using CsCheck;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Tests.Materials;

/// <summary>ITU-R P.2040 stacks against independent tables of 12 digits, and the balance of energy.</summary>
public class SlabSolverTests
{
    // Two ways to sum the same energies, each with some hundred roundings of 1e-16.
    private const double EnergyRounding = 1e-12;

    public static readonly TheoryData<string, string> Slabs = [];

    private static readonly ImmutableArray<PublishedRow> Rows = [.. SlabTables.Editions.SelectMany(table => table.Rows)];

    static SlabSolverTests()
    {
        foreach (var slab in Rows.Select(row => (Edition: row["edition"], Slab: row["slab_id"])).Distinct())
            Slabs.Add(slab.Edition, slab.Slab);
    }

    [Fact]
    public void The_tables_have_every_row()
    {
        SlabTables.LayersOfSlab.Should().HaveCount(21);
        Rows.CountBy(row => (row["edition"], row["slab_id"])).Should().OnlyContain(slab => slab.Value == 40);
    }

    [Theory]
    [MemberData(nameof(Slabs))]
    public void Losses_and_coefficients_are_those_of_the_table(string edition, string slab) =>
        RowsOf(edition, slab).SelectMany(SlabTables.Coefficients).ShouldHold();

    [Theory]
    [MemberData(nameof(Slabs))]
    public void Powers_are_those_of_the_table(string edition, string slab) =>
        RowsOf(edition, slab).SelectMany(SlabTables.Powers).ShouldHold();

    [Theory]
    [MemberData(nameof(Slabs))]
    public void With_the_exact_constant_the_loss_is_that_of_the_exact_column(string edition, string slab) =>
        RowsOf(edition, slab).SelectMany(SlabTables.ExactConstant).ShouldHold();

    [Theory]
    [MemberData(nameof(Slabs))]
    public void The_mean_of_both_powers_and_the_range_flag_are_those_of_the_table(string edition, string slab) =>
        RowsOf(edition, slab).SelectMany(SlabTables.MeanAndRange).ShouldHold();

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
