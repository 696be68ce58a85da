using MeshSim.Mesh.Reliability;

namespace MeshSim.Tests.Mesh.Reliability;

public sealed class SplitMix64Tests
{
    private const int Numbers = 1_000_000;

    /// <summary>Five standard errors of the mean, the square and the product of that many normal numbers: sqrt(1), sqrt(2), 1 over 1000.</summary>
    private const double FiveErrors = 5e-3 * 1.5;

    [Fact]
    public void The_sequence_is_the_one_published_with_the_algorithm()
    {
        // The first numbers of seed 1234567 as they circulate with the reference code; from memory.
        var random = new SplitMix64(1234567);
        new[] { random.Next(), random.Next(), random.Next(), random.Next(), random.Next() }.Should().Equal(
            6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821);
    }

    [Fact]
    public void Normal_numbers_have_mean_nought_and_deviation_one_and_come_in_independent_pairs()
    {
        var random = new SplitMix64(1);
        double sum = 0, squares = 0, products = 0;
        for (int i = 0; i < Numbers; i++)
        {
            (double first, double second) = random.NextNormals();
            sum += first;
            squares += second * second;
            products += first * second;
        }

        (sum / Numbers).Should().BeApproximately(0, FiveErrors);
        (squares / Numbers).Should().BeApproximately(1, FiveErrors);
        (products / Numbers).Should().BeApproximately(0, FiveErrors);
    }

    [Fact]
    public void Blocks_and_seeds_start_apart()
    {
        ulong[] starts = [.. from seed in Enumerable.Range(0, 100) from block in Enumerable.Range(0, 1000) select Start((ulong)seed, block)];
        starts.Should().OnlyHaveUniqueItems();

        static ulong Start(ulong seed, int block)
        {
            SplitMix64 random = SplitMix64.OfBlock(seed, block);
            return random.Next();
        }
    }
}
