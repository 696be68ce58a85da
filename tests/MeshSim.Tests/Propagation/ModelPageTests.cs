using MeshSim.Materials;
using MeshSim.Propagation;
using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;

namespace MeshSim.Tests.Propagation;

/// <summary>The page about the models says what the code does.</summary>
public class ModelPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Root(), "docs", "models.md")).ReplaceLineEndings(" ");

    [Fact]
    public void Every_model_has_its_four_parts()
    {
        string[] models = [.. Page.Split("## ").Skip(1)];
        models.Should().HaveCount(8);
        models.Should().OnlyContain(model => new[] { "**Formula.**", "**Symbols.**", "**Range.**", "**Outside.**" }.All(model.Contains));
    }

    [Fact]
    public void Every_limit_of_the_code_is_on_the_page()
    {
        ValidRange[] limits =
        [
            FreeSpace.DistanceMetres, FreeSpace.FrequencyMegahertz, SlabSolver.FrequencyMegahertz, Cost231.Around900Megahertz,
            Cost231.Around1800Megahertz, P1238.FrequencyMegahertz, P1238.DistanceMetres, P1238.CoefficientMegahertz, P1238.Band2400Megahertz,
            P1238SiteGeneral.FrequencyGigahertz, P1238SiteGeneral.DistanceMetres,
        ];
        foreach (ValidRange limit in limits) Page.Should().Contain(limit.ToString());
        Page.Should().Contain(FormattableString.Invariant($"n {LogDistance.Exponent.Min} to {LogDistance.Exponent.Max}"));
        Page.Should().Contain(FormattableString.Invariant($"R {Detour.ExtraDb.Min} to {Detour.ExtraDb.Max} dB, {Detour.UsualDb} unless"));
        Page.Should().Contain(FormattableString.Invariant($"loors {Cost231.Floors.Min} to {Cost231.Floors.Max}"));
        Page.Should().Contain(FormattableString.Invariant($"0 to {PlanningLoss.Ceiling.Value} dB; angle 0° to {PlanningLoss.CapDegrees}°; 1 to {PlanningLoss.MaxLayers} layers"));
        Page.Should().Contain(FormattableString.Invariant($"over {PlanningLoss.ThicknessSets} thickness sets"));
        Page.Should().Contain(FormattableString.Invariant($"kept at {LossCurve.Intervals + 1} angles"));
    }

    private static string Root()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "MeshSim.sln"))) folder = Path.GetDirectoryName(folder);
        return folder ?? throw new InvalidOperationException("the tests must run below the solution folder");
    }
}
