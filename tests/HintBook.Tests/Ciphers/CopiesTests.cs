using System.Text.Json;
using HintBook.Ciphers;
using HintBook.Mechanism;
using HintBook.Spoilers;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Ciphers;

/// <summary>Codes that differ by copy, from the file to what <c>check</c> and <c>prove</c> say.</summary>
public sealed class CopiesTests : IDisposable
{
    private const string Number = """
        codes:
          number:
            answer: { copy: number }
            lock: { wheels: 4, symbols: 0-9 }
            clue: { copy: letter }
            reads: [ number-words ]
        """;

    private const string Two = """
        copies:
          001: { own: { number: 5173, letter: "Five hives, one queen, seven drones, three swarms" } }
          002: { own: { number: 2046, letter: "Two combs, no bee: nought. Four wasps, six moths" } }
        """;

    private readonly BookOnDisk book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    public void The_clue_of_each_copy_is_proved_to_give_its_own_answer()
    {
        var proof = Assert.Single(Proofs(Number, Two).Codes);

        Assert.Equal("proved", proof.Says.Word);
        Assert.Equal(
            [("001", "5173"), ("002", "2046")],
            Assert.IsType<Verdict.ByCopy>(proof.Says).Copies.Select(copy => (copy.Copy.Serial.Value, copy.Proof.Steps[^1].To)));
        Assert.Empty(Findings(Number, Two));
    }

    [Fact]
    public void A_clue_that_gives_another_answer_names_its_copy()
    {
        var finding = Assert.Single(Findings(Number, Two.Replace("2046", "2047", StringComparison.Ordinal)));

        Assert.Equal(("HB4204", "In copy 002: The clue of number gives “2046”, but the answer is “2047”."), (finding.Code.Id, finding.Message));
        Assert.Equal("refuted", Proofs(Number, Two.Replace("2046", "2047", StringComparison.Ordinal)).Codes[0].Says.Word);
    }

    [Fact]
    public void An_answer_that_does_not_fit_the_lock_stands_at_its_copy()
    {
        var finding = Findings(Number, Two.Replace("2046", "20466", StringComparison.Ordinal))[^1];

        Assert.Equal(("HB4101", "20466"), (finding.Code.Id, finding.At.Text));
        Assert.StartsWith("In copy 002: ", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_with_every_copy_is_said_once() =>
        Assert.StartsWith(
            "In every copy: There is no way",
            Assert.Single(Findings(Number.Replace("number-words", "numberwords", StringComparison.Ordinal), Two)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_copy_without_a_value_is_told()
    {
        var finding = Assert.Single(Findings(Number, Two + "\n  003: { own: { letter: one two three four } }\n"));

        Assert.Equal(("HB4401", "003"), (finding.Code.Id, finding.At.Text));
        Assert.Equal("Copy 003 has no value “number”, which number takes from each copy.", finding.Message);
        Assert.Equal("not proved", Proofs(Number, Two + "\n  003: { own: { letter: one two three four } }\n").Codes[0].Says.Word);
    }

    [Theory]
    [InlineData("numbr", "Write instead: number")]
    [InlineData("serial-of-the-lid", "Give each copy one: “001: { own: { serial-of-the-lid: … } }”.")]
    public void A_name_that_no_copy_has_is_told_with_the_nearest(string name, string help)
    {
        var finding = Assert.Single(Findings(Number.Replace("copy: number", $"copy: {name}", StringComparison.Ordinal), Two));
        Assert.Equal(("HB4402", name, help), (finding.Code.Id, finding.At.Text, finding.Help));
    }

    [Fact]
    public void Without_any_copies_it_says_where_they_are_listed() =>
        Assert.All(Findings(Number, ""), finding =>
        {
            Assert.Equal("HB4402", finding.Code.Id);
            Assert.Contains("“copies: ", finding.Help, StringComparison.Ordinal);
        });

    [Fact]
    public void A_code_that_is_read_from_such_a_code_differs_as_well()
    {
        var codes = Number + "\n  back:\n    answer: { copy: back }\n    reads: [ { from: number }, reverse ]";
        var copies = Two
            .Replace("{ n", "{ back: 3715, n", StringComparison.Ordinal)
            .Replace("back: 3715, number: 2046", "back: 6402, number: 2046", StringComparison.Ordinal);

        var byCopy = Assert.IsType<Verdict.ByCopy>(Proofs(codes, copies).Codes[1].Says);
        Assert.Equal(["3715", "6402"], byCopy.Copies.Select(copy => copy.Proof.Steps[^1].To));
    }

    [Theory]
    [InlineData("and", "")]
    [InlineData("and, sky", "In every copy: The clue of number has no “sky” to leave out.")]
    public void HB4209_a_word_left_out_is_told_only_if_no_copys_clue_has_it(string skip, string says)
    {
        var codes = $"codes: {{ number: {{ answer: {{ copy: n }}, clue: {{ copy: letter }}, reads: [ resistor-colours ], skip: [ {skip} ] }} }}";
        const string copies = "copies: { 001: { own: { n: 87, letter: grey and violet } }, 002: { own: { n: 78, letter: \"violet, grey\" } } }";

        Assert.Equal(says, string.Concat(Findings(codes, copies).Select(finding => finding.Message)));
    }

    [Fact]
    public void The_workings_of_each_copy_are_printed()
    {
        var proofs = Proofs(Number, Two);

        Assert.Contains("\nproved      number in copy 002 is 2046\n", ProofText.Write(book.Read().Book!, proofs, withNotes: false), StringComparison.Ordinal);
        using var json = JsonDocument.Parse(ProofJson.Write(proofs));
        Assert.Equal("2046", json.RootElement.GetProperty("codes")[0].GetProperty("copies")[1].GetProperty("answer").GetString());
    }

    [Theory]
    [InlineData("answer", "Set 5173 and take the honey.")]
    [InlineData("answer", "Set two, nought, four, six and take the honey.")]
    [InlineData("nudge", "Is it 5173?")]
    [InlineData("reset", "Turn the wheels to 2046.")]
    public void No_text_that_all_owners_read_may_tell_one_copys_code(string tier, string text)
    {
        var finding = Assert.Single(Leaked(tier, text));

        Assert.Equal("HB3105", finding.Code.Id);
        Assert.Contains("says what opens “number” of copy 00", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotMatch("5173|2046", finding.Message + finding.Help);
    }

    [Fact]
    public void An_answer_may_send_the_owner_to_the_own_number() =>
        Assert.Empty(Leaked("answer", "Set the number on the sheet of your copy and take the honey."));

    private Proofs Proofs(string codes, string copies)
    {
        book.With("book.yaml", $"{BookOnDisk.Keys}{codes}\n").Without("copies.yaml");
        if (copies.Length > 0)
            book.With("copies.yaml", $"{copies}\n");
        return HintBook.Ciphers.Proofs.Prove(book.Read().Book!);
    }

    private Finding[] Findings(string codes, string copies)
    {
        var proofs = Proofs(codes, copies);
        Assert.Empty(book.Read().Findings.All);
        return [.. HintBook.Text.Findings.Of(proofs.Findings).Shown(withNotes: false)];
    }

    private Finding[] Leaked(string tier, string text)
    {
        Proofs(Number, Two);
        var help = new Dictionary<string, string> { ["nudge"] = "Look up.", ["clue"] = "Look at the lid.", ["answer"] = "Take the honey.", [tier] = text };
        book.Without("stages/01-the-lid.md").With(
            "stages/01-the-lid.yaml",
            "title: The lid\nsign: It is shut.\n"
                + "moves: [ { name: read, gives: [ number ] }, { name: set, needs: [ number ], gives: [ honey ] } ]\n"
                + string.Concat(help.Select(one => $"{one.Key}: {one.Value}\n")));
        var (_, read, findings) = book.Read();
        Assert.Empty(findings.All);
        return [.. Leaks.In(read!, Surveyor.Survey(read!, whole: true).Survey!).Findings.Shown(withNotes: false)];
    }
}
