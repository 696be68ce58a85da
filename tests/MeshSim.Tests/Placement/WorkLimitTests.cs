using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

public sealed class WorkLimitTests
{
    [Fact]
    public void Shared_work_is_no_more_than_one_question_would_get_but_for_rounding_up()
    {
        WorkLimit whole = new() { Relaxations = 100, RelaxationsForTies = 10, Searches = 1000, SearchesForTies = 9, NodeEntries = 7, NodeEntriesForTies = 3 };
        whole.SharedBy(1).Should().Be(whole);
        whole.SharedBy(3).Should().Be(
            whole with { Relaxations = 34, RelaxationsForTies = 4, Searches = 334, SearchesForTies = 3, NodeEntries = 3, NodeEntriesForTies = 1 });
    }

    [Fact]
    public void Work_beyond_a_thousand_million_is_shared_too() =>
        new WorkLimit { Searches = 9_000_000_000 }.SharedBy(3).Searches.Should().Be(3_000_000_000);

    [Fact]
    public void Nobody_is_refused() =>
        FluentActions.Invoking(() => new WorkLimit().SharedBy(0)).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void Work_that_is_done_is_not_left_and_never_less_than_none_is() =>
        new WorkLimit { Relaxations = 5, Searches = 10, NodeEntries = 20 }.Less(new(Relaxations: 2, Searches: 11, NodeEntries: 20))
            .Should().Be(new WorkLimit { Relaxations = 3, Searches = 0, NodeEntries = 0 });
}
