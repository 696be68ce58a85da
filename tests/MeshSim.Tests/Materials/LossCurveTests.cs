using System.Collections.Immutable;
using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Tests.Materials;

/// <summary>The planning loss against its definition, for every construction shipped.</summary>
public class LossCurveTests
{
    // Straight lines between knots; a hundredth of a decibel decides no purchase.
    private const double InterpolationDb = 0.01;

    // A few roundings of numbers of some tens of decibels.
    private const double Rounding = 1e-11;

    public static readonly TheoryData<string> Named = [.. MaterialCatalogue.Constructions.Keys.Select(name => name.Value).Order(StringComparer.Ordinal)];

    private static readonly string[] SomeMaterials = ["glass", "brick", "air", "metal", "wood"];

    private static readonly Frequency[] Carriers = [new(433.92), new(868.4), new(908.4), new(2440)];

    [Theory]
    [MemberData(nameof(Named))]
    public void Between_knots_it_follows_the_planning_loss(string name)
    {
        Construction construction = MaterialCatalogue.Constructions[new(name)];
        foreach (Frequency carrier in Carriers)
        {
            var curve = new LossCurve(construction, carrier);
            for (double angleDegrees = 0.5; angleDegrees < PlanningLoss.CapDegrees; angleDegrees += 3)
            {
                double cosine = Math.Cos(angleDegrees * Math.PI / 180);
                double exactDb = construction.Stated.IsEmpty
                    ? PlanningLoss.OfLayers(construction.Layers, carrier, cosine).Value
                    : StatedLoss.At(construction.Stated, carrier).Value;
                curve.At(cosine).Value.Should().BeApproximately(exactDb, InterpolationDb, "{0} at {1}, {2}°", name, carrier, angleDegrees);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Named))]
    public void It_lies_between_zero_and_the_ceiling_and_stays_level_beyond_the_cap(string name)
    {
        foreach (Frequency carrier in Carriers)
        {
            var curve = new LossCurve(MaterialCatalogue.Constructions[new(name)], carrier);
            for (double cosine = 0; cosine <= 1; cosine += 0.01)
                curve.At(cosine).Value.Should().BeInRange(0, PlanningLoss.Ceiling.Value);
            curve.At(0).Should().Be(curve.At(PlanningLoss.CapCosine));
            curve.At(PlanningLoss.CapCosine / 2).Should().Be(curve.At(PlanningLoss.CapCosine));
        }
    }

    [Fact]
    public void A_stated_loss_is_the_same_at_every_angle_and_extrapolated_outside_its_frequencies()
    {
        Construction stated = Of([new(new(800), new(3)), new(new(1000), new(5))]);
        var curve = new LossCurve(stated, new(1000));
        curve.IsConstant.Should().BeTrue();
        curve.IsExtrapolated.Should().BeFalse();
        new[] { 0, 0.3, 1 }.Should().OnlyContain(cosine => curve.At(cosine) == new Decibels(5));
        new LossCurve(stated, new(1001)).IsExtrapolated.Should().BeTrue();
        new LossCurve(stated, new(799)).IsExtrapolated.Should().BeTrue();
    }

    [Fact]
    public void A_stated_loss_above_the_ceiling_counts_as_the_ceiling() =>
        new LossCurve(Of([new(new(900), new(80))]), new(900)).At(1).Should().Be(PlanningLoss.Ceiling);

    [Fact]
    public void Metal_counts_as_the_ceiling() =>
        new LossCurve(OfLayers("metal:0.5"), new(2440)).At(1).Value.Should().BeApproximately(PlanningLoss.Ceiling.Value, Rounding);

    [Fact]
    public void Air_costs_nothing() => new LossCurve(OfLayers("air:100"), new(2440)).At(0.6).Value.Should().BeApproximately(0, Rounding);

    [Theory]
    [InlineData(433.92, true)]
    [InlineData(2440, false)]
    public void A_material_outside_its_measured_frequencies_marks_the_curve(double megahertz, bool isExtrapolated) =>
        new LossCurve(OfLayers("wood:10, brick:100"), new(megahertz)).IsExtrapolated.Should().Be(isExtrapolated);

    [Fact]
    public void A_construction_without_layers_or_losses_is_refused()
    {
        Func<LossCurve> nothing = () => new(Of([]), new(2440));
        nothing.Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Any_stack_gives_a_loss_within_zero_and_the_ceiling() =>
        Gen.Select(Gen.Int[0, SomeMaterials.Length - 1], Gen.Double[1, 300]).Array[1, 5].Sample(layers =>
        {
            string text = string.Join('|', layers.Select(layer => FormattableString.Invariant($"{SomeMaterials[layer.Item1]}:{layer.Item2}")));
            double lossDb = PlanningLoss.OfLayers(MaterialCatalogue.Layers(text), new(2440), 0.8).Value;
            lossDb.Should().BeInRange(0, PlanningLoss.Ceiling.Value);
        }, iter: 200);

    [Fact]
    public void Curves_are_shared_per_construction_and_frequency()
    {
        Construction wall = OfLayers("brick:100");
        LossCurves.Of(wall, new(2440)).Should().BeSameAs(LossCurves.Of(wall, new(2440)));
        LossCurves.Of(wall, new(868.4)).Should().NotBeSameAs(LossCurves.Of(wall, new(2440)));
        LossCurves.Of(wall, new(868.4)).At(0.7).Should().Be(new LossCurve(wall, new(868.4)).At(0.7));
    }

    private static Construction OfLayers(string text) => Of([]) with { Layers = MaterialCatalogue.Layers(text) };

    private static Construction Of(ImmutableArray<StatedLoss> stated) => new()
    {
        Name = new ConstructionName("test-wall"),
        Description = "a wall of the test",
        Use = ConstructionUse.Wall,
        Stated = stated,
        Spread = new(1),
        Source = "assumed",
    };
}
