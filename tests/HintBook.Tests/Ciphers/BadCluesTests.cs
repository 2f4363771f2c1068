using CsCheck;
using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Tests.Books;
using static HintBook.Tests.Ciphers.CodeBooks;

namespace HintBook.Tests.Ciphers;

/// <summary>Whatever stands in a clue, there are proofs and findings, never an exception.</summary>
public class BadCluesTests
{
    private static readonly string[] Odd =
    [
        "", " ", "\n\n", "e\u0301a\u0308", "\u0301", "שלום עולם", "\u202Eabc\u202C", "𝟓𝟏𝟕𝟑", "٥١٧٣", "\uD800", "\uDC00x", "👩‍👩‍👧",
        "a\0b", "½²Ⅻ", "0", "99999999999999999999999",
        "1-1", "-", "/", "one", "IX", "⠼⠁", "12:30 pm", "31 February 0000", "0000-00-00", "🂡🃏", "AB\nCD", "clockwise",
    ];

    private static readonly Gen<string> Texts = Gen.OneOf(Any(Odd), Gen.String, Gen.Select(Any(Odd), Gen.String, Any(Odd), (a, b, c) => a + b + c));

    private static readonly Gen<ReadingStep> Steps =
        Gen.Select(Gen.OneOf(Any(Ways.Names), Any(Odd)), Texts.Array[0, 3], (way, told) => Step(way, told));

    private static Gen<T> Any<T>(IReadOnlyList<T> all) => Gen.Int[0, all.Count - 1].Select(at => all[at]);

    [Fact]
    public void Every_way_answers_every_text() =>
        Gen.Select(Any(Ways.All), Texts, Texts.Array[0, 3]).Sample((way, text, told) => way.Read(text, [.. told]) is not null, iter: 20_000);

    [Fact]
    public void Every_code_gets_a_proof() =>
        Gen.Select(Texts, Texts, Gen.Int[0, 5], Texts, Steps.Array[0, 3], Texts).Sample((answer, clue, wheels, symbols, steps, ruledOut) =>
        {
            var code = Code(answer, clue, wheels, symbols, steps) with { RuledOut = [new RuledOut(A.Value(ruledOut), A.Value("why"))] };
            var proofs = Prove(code);
            return proofs.Codes is [var proof] && (proof.Says is not Verdict.Refuted refuted || proofs.Findings.Contains(refuted.Finding));
        }, iter: 5_000);

    [Fact]
    public void A_code_is_proved_only_if_its_steps_end_in_its_answer() =>
        Gen.Select(Texts, Steps.Array[1, 3]).Sample((clue, steps) =>
        {
            var proof = Prove(Code("5173", clue, 4, "0123456789", steps)).Codes[0];
            return proof.Says is Verdict.Proved
                ? Fit.Same(proof.Steps[^1].To, "5173", null)
                : proof.Steps.Length < steps.Length || !Fit.Same(proof.Steps[^1].To, "5173", null);
        }, iter: 5_000);

    [Fact]
    public void A_clue_of_a_megabyte_is_read_to_its_end()
    {
        var clue = string.Concat(Enumerable.Repeat("five hives, one queen\n", 50_000));

        Assert.All(Ways.All, way => Assert.NotNull(way.Read(clue, way.Told is null ? [] : ["2"])));
        Assert.Contains("HB4204", Prove(Number("5173", clue, "number-words")).Said());
        var counted = Code("100000", clue, 6, "0123456789", Step("count-number-words"));
        Assert.Equal(
            "The clue of number has 1,100,000 characters: other readings are looked for only up to 10,000.",
            Assert.Single(Prove(counted).Findings, finding => finding.Code.Id == "HB4303").Message);
    }

    [Fact]
    public void A_lock_without_wheels_takes_no_answer() => Assert.Contains("HB4101", Prove(Code("5", "five", 0, "", Step("number-words"))).Said());

    [Fact]
    public void A_letter_with_its_marks_stays_one_letter() =>
        Assert.Equal("E\u0301", ReadAs.Way("acrostic", "e\u0301tude"));
}
