namespace MeshSim.Tests.Architecture;

public sealed class MemberLengthsTests
{
    private const string Source = """
        namespace MeshSim.Samples;

        /// <summary>A sample.</summary>
        public sealed class Sample(int width)
            : IDisposable
        {
            private static readonly int[] Table =
            [
                1, 2,
                3,
            ];

            public int Height { get; }

            [Obsolete]
            public int Area(
                int height)
            {
                int area = width * height;

                return area;
            }

            public int Twice(int value) =>
                value
                + value;

            public void Dispose()
            {
            }

            private struct Inner
            {
                public int One()
                {
                    return 1;
                }
            }

            public int Last()
            {
                if (width > 0)
                {
                    return 1;
                }

                return 2;
            }
        }
        """;

    [Fact]
    public void A_body_is_counted_without_its_header_braces_and_surroundings() =>
        MemberLengths.In(Source.Split('\n')).Where(member => member.Member.StartsWith("public", StringComparison.Ordinal)).Should().Equal(
            ("public int Height { get; }", 0),
            ("public int Area(", 3),
            ("public int Twice(int value) =>", 2),
            ("public void Dispose()", 0),
            ("public int One()", 1),
            ("public int Last()", 6));
}
