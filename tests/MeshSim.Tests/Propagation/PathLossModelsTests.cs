using MeshSim.Propagation;
using static MeshSim.Tests.Propagation.ModelHouse;

namespace MeshSim.Tests.Propagation;

public class PathLossModelsTests
{
    [Theory]
    [InlineData(ModelName.LogDistance, "log-distance")]
    [InlineData(ModelName.Detour, "detour")]
    [InlineData(ModelName.MultiWall, "multi-wall")]
    [InlineData(ModelName.SiteGeneral, "site-general")]
    public void Every_figure_says_which_model_made_it(ModelName name, string expected) =>
        Model(name, Build()).Between(At(1, 1, 1), At(5, 1, 1)).Model.Should().Be(expected);

    [Fact]
    public void An_unknown_model_is_refused()
    {
        Action unknown = () => Model((ModelName)99, Build());
        unknown.Should().Throw<ArgumentOutOfRangeException>();
    }

    [Theory]
    [InlineData(ModelName.LogDistance)]
    [InlineData(ModelName.Detour)]
    [InlineData(ModelName.MultiWall)]
    [InlineData(ModelName.SiteGeneral)]
    public void A_frequency_of_nothing_is_refused(ModelName name)
    {
        Action silent = () => PathLossModels.Create(name, Build(), Constructions, default, 2);
        silent.Should().Throw<ArgumentOutOfRangeException>();
    }
}
