using CsCheck;

namespace MeshSim.OpenData.Tests.Optimisation.Medians;

public sealed class MedianSearchTests
{
    private const int Problems = 300;
    private const int Nodes = 10_000;

    [Fact]
    public void The_answer_is_the_best_of_all_choices_and_proven() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[1, 12], Gen.Int[1, 9]).Sample(
            (seed, clients, sites) =>
            {
                var random = new Random(seed);
                int count = random.Next(1, sites + 1);
                int[][] costs = [.. Enumerable.Range(0, clients).Select(_ => Enumerable.Range(0, sites).Select(_ => random.Next(0, 30)).ToArray())];
                MedianProblem problem = new(costs, count);

                MedianSolution solution = MedianSearch.Solve(problem, Nodes);

                int least = Enumerable.Range(0, 1 << sites)
                    .Where(subset => int.PopCount(subset) == count)
                    .Min(subset => costs.Sum(row => row.Where((_, site) => (subset >> site & 1) != 0).Min()));
                solution.Sites.Should().BeInAscendingOrder().And.OnlyHaveUniqueItems().And.HaveCount(count);
                solution.Cost.Should().Be(least).And.Be(problem.CostOf(solution.Sites));
                solution.LowerBound.Should().Be(least);
                solution.IsProven.Should().BeTrue();
            },
            iter: Problems);

    [Fact]
    public void With_no_search_the_sites_still_serve_and_the_bound_still_holds() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 30]).Sample(
            (seed, sites) =>
            {
                var random = new Random(seed);
                int[][] costs = [.. Enumerable.Range(0, sites).Select(_ => Enumerable.Range(0, sites).Select(_ => random.Next(1, 100)).ToArray())];
                MedianProblem problem = new(costs, random.Next(1, sites));
                MedianSolution quick = MedianSearch.Solve(problem, nodes: 1), proven = MedianSearch.Solve(problem, Nodes);
                quick.Cost.Should().Be(problem.CostOf(quick.Sites)).And.BeGreaterThanOrEqualTo(proven.Cost);
                quick.LowerBound.Should().BeLessThanOrEqualTo(proven.Cost);
                quick.IsProven.Should().Be(quick.Cost == quick.LowerBound);
            },
            iter: Problems / 3);

    [Fact]
    public void Five_rooms_in_a_row_are_served_best_from_the_second_and_the_fourth()
    {
        // Sites and clients at 0, 1, 2, 3, 4; two sites at 1 and 3 leave 1 + 0 + 1 + 0 + 1. So do 0 or 1 with 3 and others; not less.
        int[][] costs = [.. Enumerable.Range(0, 5).Select(client => Enumerable.Range(0, 5).Select(site => Math.Abs(client - site)).ToArray())];
        MedianSolution solution = MedianSearch.Solve(new(costs, 2), Nodes);
        solution.Cost.Should().Be(3);
        solution.IsProven.Should().BeTrue();
    }

    [Fact]
    public void As_many_sites_as_there_are_are_all_chosen()
    {
        MedianSolution solution = MedianSearch.Solve(new([[3, 1, 2], [5, 6, 4]], 3), Nodes);
        solution.Sites.Should().Equal(0, 1, 2);
        solution.Cost.Should().Be(5);
        solution.IsProven.Should().BeTrue();
    }
}
