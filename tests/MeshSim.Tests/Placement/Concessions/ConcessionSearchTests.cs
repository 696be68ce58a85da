using System.Collections.Immutable;
using MeshSim.Placement;
using MeshSim.Placement.Concessions;
using MeshSim.Quantities;

namespace MeshSim.Tests.Placement.Concessions;

/// <summary>Each concession against trying every subset of the outlets in the problem as it is then.</summary>
public sealed class ConcessionSearchTests
{
    private const int Problems = 60;

    [Fact]
    public void Each_concession_comes_to_what_the_best_of_all_subsets_comes_to()
    {
        int better = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            SurvivalSample sample = SurvivalSample.Random(seed, isCoarse: seed % 2 == 0, ways: 2);
            ConcessionSearch search = SearchOf(sample);
            Decibels margin = new(sample.Everyday.DesignMarginDb), less = margin - ConcessionSearch.Less;
            int hops = sample.Everyday.HopLimit + 1;
            ExhaustiveSurvival asked = new(sample);

            Compare(search.AsAsked(), asked);
            Compare(search.OneWay(), new(sample with { Ways = 1 }));
            Compare(search.WithHopLimit(hops), new(With(sample, everywhere => everywhere with { HopLimit = hops })));
            Compare(search.WithMargin(less), new(With(sample, everywhere => everywhere with { DesignMarginDb = less.Value })));
            for (int situation = 1; situation < sample.Situations.Length; situation++)
                Compare(search.Without(situation), new(sample with { Situations = sample.Situations.RemoveAt(situation), Off = sample.Off.RemoveAt(situation) }));

            better += Undone(search.WithMargin(less)) < asked.Unservable.Length + asked.Unmet.Length ? 1 : 0;

            void Compare(RepeaterSolution solution, ExhaustiveSurvival oracle)
            {
                solution.Unservable.Should().Equal(oracle.Unservable, "seed {0}", seed);
                solution.Unmet.Should().Equal(oracle.Unmet, "seed {0}", seed);
                solution.Cost.Should().Be(oracle.Count, "seed {0}", seed);
                solution.IsProven.Should().BeTrue("seed {0}", seed);
                oracle.Serves(ExhaustivePlacement.SubsetOf(solution.Outlets)).Should().BeTrue("seed {0}", seed);
            }
        }

        better.Should().BeGreaterThan(Problems / 10, "giving in must help now and then");
    }

    [Fact]
    public void Two_at_an_outlet_come_to_what_the_best_of_all_subsets_of_doubled_outlets_comes_to()
    {
        int offered = 0, elsewhere = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            SurvivalSample sample = SurvivalSample.Random(seed, isCoarse: seed % 2 == 0, ways: 2);
            ImmutableArray<int> outlets = [.. Enumerable.Range(0, sample.Everyday.OutletCount)];
            ConcessionSearch search = SearchOf(sample);
            RepeaterSolution asked = search.AsAsked();
            RepeaterSolution solution = search.WithTwoAtAnOutlet(outlets, asked);
            ImmutableArray<int> hungOn = search.HungOn(asked), doubled = ConcessionSearch.Doubled(solution);

            ExhaustiveSurvival oracle = new(sample.WithTwins(outlets));
            solution.Unservable.Should().Equal(oracle.Unservable, "seed {0}", seed);
            solution.Unmet.Should().Equal(oracle.Unmet, "seed {0}", seed);
            solution.Cost.Should().Be(oracle.Count, "seed {0}", seed);
            solution.IsProven.Should().BeTrue("seed {0}", seed);
            solution.Outlets.Should().HaveCount(oracle.Count, "seed {0}", seed);
            oracle.Serves(SubsetOf(solution, doubled, outlets.Length)).Should().BeTrue("seed {0}", seed);

            solution.Unmet.Should().Equal(asked.Unmet.Where(entry => entry.Lost is not { } lost || lost < sample.Everyday.Relays.Length), "seed {0}", seed);
            hungOn.Should().BeSubsetOf(doubled, "seed {0}: one alone there leaves somebody", seed);
            bool isDearerThere = new ExhaustiveSurvival(sample.WithTwins(hungOn)).Count > oracle.Count;
            (doubled.Length > hungOn.Length).Should().Be(isDearerThere, "seed {0}: no outlet takes two in vain", seed);
            offered += hungOn.IsEmpty ? 0 : 1;
            elsewhere += isDearerThere ? 1 : 0;
        }

        offered.Should().BeGreaterThan(Problems / 4, "somebody must hang on a repeater now and then");
        elsewhere.Should().BePositive();

        static int SubsetOf(RepeaterSolution solution, ImmutableArray<int> doubled, int outlets) =>
            ExhaustivePlacement.SubsetOf([.. solution.Outlets.Distinct(), .. doubled.Select(outlet => outlets + outlet)]);
    }

    [Fact]
    public void What_takes_a_circuit_takes_both_at_an_outlet()
    {
        // 0 is the coordinator; 1 hears it over the outlet 2 alone, everyday and in a state in which the outlet is off.
        double[,] margins = { { 0, -9, 9 }, { -9, 0, 9 }, { 9, 9, 0 } };
        ProblemSample house = new([true, false], OutletCount: 1, HopLimit: 5, ProblemSample.DefaultDesignMarginDb, margins);
        ConcessionSearch search = SearchOf(new([house, house], [[], [2]], Ways: 2));

        RepeaterSolution asked = search.AsAsked(), solution = search.WithTwoAtAnOutlet([0], asked);
        asked.Unmet.Should().Equal(new UnmetDemand(1, 1, null), new UnmetDemand(1, 0, 2));
        solution.Outlets.Should().Equal(0, 0);
        solution.Unmet.Should().Equal(new UnmetDemand(1, 1, null));
    }

    [Fact]
    public void No_concession_costs_a_device_what_it_has_without()
    {
        for (int seed = 0; seed < Problems; seed++)
        {
            SurvivalSample sample = SurvivalSample.Random(seed, isCoarse: seed % 2 == 0, ways: 2);
            ConcessionSearch search = SearchOf(sample);
            int[] asked = Without(search.AsAsked());
            Without(search.WithTwoAtAnOutlet([.. Enumerable.Range(0, sample.Everyday.OutletCount)], search.AsAsked())).Should().BeSubsetOf(asked, "seed {0}", seed);
            Without(search.OneWay()).Should().BeSubsetOf(asked, "seed {0}", seed);
            Without(search.WithHopLimit(sample.Everyday.HopLimit + 1)).Should().BeSubsetOf(asked, "seed {0}", seed);
            Without(search.WithMargin(new Decibels(sample.Everyday.DesignMarginDb) - ConcessionSearch.Less)).Should().BeSubsetOf(asked, "seed {0}", seed);
            for (int situation = 1; situation < sample.Situations.Length; situation++)
                Without(search.Without(situation)).Should().BeSubsetOf(asked, "seed {0}", seed);
        }

        static int[] Without(RepeaterSolution solution) => [.. solution.Undone.Select(unmet => unmet.Device).Distinct()];
    }

    [Fact]
    public void With_the_least_margin_nothing_is_left_undone_and_with_any_more_something_is()
    {
        int found = 0, inSteps = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            SurvivalSample sample = SurvivalSample.Random(seed, isCoarse: seed % 2 == 0, ways: 2);
            ConcessionSearch search = SearchOf(sample);
            ImmutableArray<UnmetDemand> undone = [.. search.AsAsked().Undone];
            if (undone.IsEmpty) continue;
            double[] marginsDb = [.. sample.Situations.SelectMany(problem => problem.MarginsDb.Cast<double>()).Append(sample.Everyday.DesignMarginDb)
                .Where(marginDb => marginDb >= 0 && marginDb <= sample.Everyday.DesignMarginDb).Distinct().Order()];
            if (search.WithLeastMargin(undone) is not { } least)
            {
                IsUndoneAt(marginsDb[0]).Should().BeTrue("seed {0}", seed);
                continue;
            }

            Undone(least.Solution).Should().Be(0, "seed {0}", seed);
            IsUndoneAt(least.Margin.Value).Should().BeFalse("seed {0}", seed);
            IsUndoneAt(marginsDb.First(marginDb => marginDb > least.Margin.Value)).Should().BeTrue("seed {0}", seed);
            found++;
            inSteps += least.Margin < ObstacleFinder.LeastMargin(search.Situations, undone) ? 1 : 0;

            bool IsUndoneAt(double marginDb)
            {
                ExhaustiveSurvival oracle = new(With(sample, everywhere => everywhere with { DesignMarginDb = marginDb }));
                return oracle.Unservable.Length + oracle.Unmet.Length > 0;
            }
        }

        found.Should().BePositive();
        inSteps.Should().BePositive("devices out of reach must want second ways now and then");
    }

    private static int Undone(RepeaterSolution solution) => solution.Undone.Count();

    private static ConcessionSearch SearchOf(SurvivalSample sample)
    {
        ImmutableArray<Situation> situations = [.. sample.Situations.Zip(sample.Off, (problem, off) => new Situation(problem.Problem(), off))];
        return new(situations, sample.Ways, [.. Enumerable.Repeat(1, sample.Everyday.OutletCount)]);
    }

    private static SurvivalSample With(SurvivalSample sample, Func<ProblemSample, ProblemSample> change) =>
        sample with { Situations = [.. sample.Situations.Select(change)] };
}
