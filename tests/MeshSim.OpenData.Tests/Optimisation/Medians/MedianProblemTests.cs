namespace MeshSim.OpenData.Tests.Optimisation.Medians;

public sealed class MedianProblemTests
{
    [Fact]
    public void Each_client_is_served_from_its_cheapest_chosen_site()
    {
        MedianProblem problem = new([[4, 2, 9], [7, 8, 1]], 2);
        problem.CostOf([0, 1]).Should().Be(9);
        problem.CostOf([1, 2]).Should().Be(3);
    }

    [Fact]
    public void Sites_come_cheapest_first_and_of_equal_ones_the_first() =>
        new MedianProblem([[4, 2, 4, 1]], 1).CheapestFor(0).ToArray().Should().Equal(3, 1, 0, 2);

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void A_count_that_there_are_not_is_refused(int count) =>
        FluentActions.Invoking(() => new MedianProblem([[1, 2]], count)).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void Costs_that_are_no_table_of_whole_costs_are_refused()
    {
        FluentActions.Invoking(() => new MedianProblem([], 1)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new MedianProblem([[1, 2], [1]], 1)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new MedianProblem([[1, -2]], 1)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
