using System.Text;
using CsCheck;
using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests;

/// <summary>Whatever is done to a good home, reading it answers: with a home or with problems, never with both, never with an exception.</summary>
public sealed class MutationTests
{
    private const int Iterations = 600;

    private static readonly string[] Names = ["home.yaml", "devices.csv", "outlets.csv", "readings.csv"];
    private static readonly byte[][] Originals = [.. new[] { SampleHome.HomeYaml, SampleHome.DevicesCsv, SampleHome.OutletsCsv, SampleHome.ReadingsCsv }.Select(Encoding.UTF8.GetBytes)];

    // Bytes that mean something to the parsers come up more often than others.
    private static readonly byte[] Meaningful = "{}[]:,-#&*!|>'\"%@`~?\n\r\t 0123456789.;"u8.ToArray();
    private static readonly Gen<byte> AnyByte = Gen.Frequency((3, Gen.Int[0, Meaningful.Length - 1].Select(i => Meaningful[i])), (1, Gen.Byte));

    private static readonly Gen<Func<byte[], byte[]>> Mutation = Gen.OneOf(
        from at in Gen.Double.Unit from value in AnyByte select (Func<byte[], byte[]>)(bytes => Put(bytes, at, value, 1)),
        from at in Gen.Double.Unit from value in AnyByte select (Func<byte[], byte[]>)(bytes => Put(bytes, at, value, 0)),
        from at in Gen.Double.Unit select (Func<byte[], byte[]>)(bytes => EditLine(bytes, at, _ => [])),
        from at in Gen.Double.Unit select (Func<byte[], byte[]>)(bytes => EditLine(bytes, at, line => [line, line])),
        from at in Gen.Double.Unit from other in Gen.Double.Unit select (Func<byte[], byte[]>)(bytes => EditLine(bytes, at, _ => [LineAt(bytes, other)])),
        from at in Gen.Double.Unit select (Func<byte[], byte[]>)(bytes => bytes[..Index(at, bytes.Length)]));

    [Fact]
    public void A_mutated_home_is_read_or_refused() =>
        Gen.Select(Gen.Int[0, Names.Length - 1], Mutation.Array[1, 3]).Sample(
            (file, mutations) =>
            {
                using TemporaryFolder folder = new TemporaryFolder().WithSample();
                File.WriteAllBytes(folder.File(Names[file]), mutations.Aggregate(Originals[file], (bytes, mutate) => mutate(bytes)));

                HomeReadResult result = folder.Read();

                (result.Home is null).Should().Be(!result.Problems.IsEmpty);
                result.Problems.All(problem => problem.Line >= 1 && problem.Column >= 1 && !problem.ToString().Contains('\n', StringComparison.Ordinal)).Should().BeTrue();
            },
            iter: Iterations);

    private static int Index(double share, int count) => Math.Min((int)(share * count), count - 1) is var index && index < 0 ? 0 : index;

    private static byte[] Put(byte[] bytes, double at, byte value, int replaced)
    {
        if (bytes.Length == 0) return [value];
        int index = Index(at, bytes.Length);
        return [.. bytes[..index], value, .. bytes[(index + replaced)..]];
    }

    private static string LineAt(byte[] bytes, double at)
    {
        string[] lines = Encoding.UTF8.GetString(bytes).Split('\n');
        return lines[Index(at, lines.Length)];
    }

    private static byte[] EditLine(byte[] bytes, double at, Func<string, string[]> edit)
    {
        string[] lines = Encoding.UTF8.GetString(bytes).Split('\n');
        int index = Index(at, lines.Length);
        return Encoding.UTF8.GetBytes(string.Join('\n', [.. lines[..index], .. edit(lines[index]), .. lines[(index + 1)..]]));
    }
}
