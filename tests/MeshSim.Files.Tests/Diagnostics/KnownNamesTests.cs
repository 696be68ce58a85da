using CsCheck;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Tests.Diagnostics;

public sealed class KnownNamesTests
{
    private static readonly Gen<string> Word = Gen.String[Gen.Char['a', 'c'], 0, 6];

    [Theory]
    [InlineData("kitchen", "kitchen", 0)]
    [InlineData("kitchn", "kitchen", 1)]
    [InlineData("ktichen", "kitchen", 1)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("", "abc", 3)]
    public void Edits_are_counted_and_a_swap_is_one(string a, string b, int edits) =>
        KnownNames.EditDistance(a, b, 10).Should().Be(edits);

    [Fact]
    public void Edits_are_symmetric_and_cut_off_at_the_limit() =>
        Gen.Select(Word, Word, Gen.Int[0, 6]).Sample((a, b, limit) =>
        {
            int full = KnownNames.EditDistance(a, b, 100);
            return full == KnownNames.EditDistance(b, a, 100) && KnownNames.EditDistance(a, b, limit) == Math.Min(full, limit + 1);
        });

    [Theory]
    [InlineData("hal", "did you mean \"hall\"?")]
    [InlineData("HALL", "did you mean \"hall\"?")]
    [InlineData("kit", "did you mean \"kitchen\"?")]
    [InlineData("zoo", "known rooms: \"hall\", \"kitchen\"")]
    public void Help_names_the_nearest_or_all(string written, string help) =>
        KnownNames.Help(written, ["hall", "kitchen"], "rooms").Should().Be(help);

    [Theory]
    [InlineData("UK", "known regions: \"EU\", \"US\"")]
    [InlineData("UE", "did you mean \"EU\"?")]
    [InlineData("us", "did you mean \"US\"?")]
    public void A_short_name_is_near_only_when_its_letters_agree(string written, string help) =>
        KnownNames.Help(written, ["EU", "US"], "regions").Should().Be(help);

    [Fact]
    public void Help_says_when_there_is_nothing_to_choose_from()
    {
        KnownNames.Help("x", [], "rooms").Should().Be("there are no rooms");
        KnownNames.Help("zzzzzz", [.. Enumerable.Range(0, 50).Select(i => FormattableString.Invariant($"room {i}"))], "rooms").Should().Be("none of the 50 rooms has a similar name");
    }

    [Fact]
    public void A_quoted_text_fits_on_a_line()
    {
        KnownNames.Quote("a\nb\u0007").Should().Be("\"a?b?\"");
        KnownNames.Quote(new string('x', 100)).Should().Be("\"" + new string('x', 60) + "...\"");
    }
}
