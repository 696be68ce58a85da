using System.Collections.Immutable;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

public sealed class CoverageLadderTests
{
    private const int Problems = 150;

    [Fact]
    public void Each_rung_is_the_best_of_all_subsets_of_its_size()
    {
        int climbs = 0, nestedWorse = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            LadderSample sample = LadderSample.Random(seed);
            ImmutableArray<Rung> rungs = sample.Climb();
            foreach (Rung rung in rungs)
            {
                rung.IsProven.Should().BeTrue("seed {0}", seed);
                rung.Outlets.Length.Should().BeLessThanOrEqualTo(rung.Count);
                rung.Best.Should().Be(sample.Best(rung.Count), "seed {0} rung {1}", seed, rung.Count);
                sample.Of(ExhaustivePlacement.SubsetOf(rung.Outlets)).Should().Be(rung.Best, "seed {0}", seed);
                sample.Of(ExhaustivePlacement.SubsetOf(rung.Nested)).Should().Be(rung.NestedBest, "seed {0}", seed);
                if (rung.NestedBest < rung.Best) nestedWorse++;
            }

            rungs[^1].Best.Should().Be(sample.Best(sample.Problem.OutletCount), "the ladder ends where nothing is gained, seed {0}", seed);
            if (rungs.Length > 2) climbs++;
        }

        climbs.Should().BeGreaterThan(Problems / 4);
        nestedWorse.Should().BeGreaterThan(0, "buying one by one must sometimes be worse");
    }

    [Fact]
    public void Each_rung_covers_more_than_the_one_below_or_buys_the_way_to_the_next()
    {
        for (int seed = 0; seed < Problems; seed++)
        {
            ImmutableArray<Rung> rungs = LadderSample.Random(seed).Climb();
            for (int i = 1; i < rungs.Length; i++)
            {
                (rungs[i].Best >= rungs[i - 1].Best).Should().BeTrue("seed {0}", seed);
                (rungs[i].NestedBest >= rungs[i - 1].NestedBest).Should().BeTrue("seed {0}", seed);
                (rungs[i].Best >= rungs[i].NestedBest).Should().BeTrue("seed {0}", seed);
                rungs[i - 1].Nested.Should().BeSubsetOf(rungs[i].Nested, "what was bought stays");
            }
        }
    }

    [Fact]
    public void A_floor_too_large_for_masters_takes_nothing_from_the_devices()
    {
        int floorLeft = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            LadderSample sample = LadderSample.Random(seed);
            foreach (Rung rung in sample.Climb(new() { FloorSize = 0 }))
            {
                Coverage best = sample.Best(rung.Count);
                (rung.Best.Reached, rung.Best.TwoWays).Should().Be((best.Reached, best.TwoWays), "seed {0}", seed);
                sample.Of(ExhaustivePlacement.SubsetOf(rung.Outlets)).Should().Be(rung.Best, "seed {0}", seed);
                if (rung.IsProven) rung.Best.Should().Be(best, "seed {0}", seed);
                else floorLeft++;
            }
        }

        floorLeft.Should().BeGreaterThan(0, "some samples have floor that is not covered anyway");
    }

    [Fact]
    public void Each_nested_rung_is_the_best_next_one()
    {
        for (int seed = 0; seed < Problems; seed++)
        {
            LadderSample sample = LadderSample.Random(seed);
            ImmutableArray<Rung> rungs = sample.Climb();
            for (int i = 1; i < rungs.Length; i++)
            {
                int before = ExhaustivePlacement.SubsetOf(rungs[i - 1].Nested);
                Coverage best = Enumerable.Range(0, sample.Problem.OutletCount).Select(outlet => sample.Of(before | (1 << outlet))).Max();
                rungs[i].NestedBest.Should().Be(best, "seed {0}", seed);
            }
        }
    }

    [Fact]
    public void Without_work_the_rungs_are_still_choices_and_say_that_they_are_not_proven()
    {
        int unproven = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            LadderSample sample = LadderSample.Random(seed);
            ImmutableArray<Rung> rungs = sample.Climb(new() { CoverageRounds = 0 });
            foreach (Rung rung in rungs)
                sample.Of(ExhaustivePlacement.SubsetOf(rung.Outlets)).Should().Be(rung.Best, "seed {0}", seed);
            unproven += rungs.Count(rung => !rung.IsProven);
        }

        unproven.Should().BePositive();
    }
}
