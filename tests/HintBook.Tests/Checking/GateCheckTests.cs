using System.Text;
using HintBook.Sealing;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Checking;

/// <summary>What a gate may ask for: a code that everybody knows who stands there, or a word that every keyboard writes alike.</summary>
public sealed class GateCheckTests
{
    [Fact]
    public void A_code_that_is_certain_before_the_stage_is_fine_and_a_note_says_what_it_holds()
    {
        using var desk = new SealedDesk().With("lid-number");

        var note = Assert.Single(desk.Found());

        Assert.Equal("HB8235", note.Code.Id);
        Assert.Equal("lid-number", note.At.Text);
        Assert.Contains("all 10000 settings of this gate within 17 minutes", note.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("02-the-number", "this stage itself gives it")]
    [InlineData("01-the-side-panel", "it becomes known in “The picture on the lid”, and a way leads to “The side panel” without that")]
    public void A_code_that_someone_may_not_know_yet_locks_out_whoever_needs_the_help(string stage, string why)
    {
        using var desk = new SealedDesk().With("lid-number", stage);

        var error = Assert.Single(desk.Found());

        Assert.Equal("HB8231", error.Code.Id);
        Assert.Equal("lid-number", error.At.Text);
        Assert.Contains(why, error.Message, StringComparison.Ordinal);
        Assert.StartsWith("No code is known for certain before this stage", error.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_other_codes_are_certain_they_are_named()
    {
        using var desk = new SealedDesk();
        desk.Desk.Change("book.yaml", "\n# FACTS", "\n  never: { answer: \"123\", lock: { wheels: 3, symbols: 0-9, seconds-a-try: 3 } }\n\n# FACTS");

        var error = Assert.Single(desk.With("never").Found());

        Assert.Contains("no stage gives it", error.Message, StringComparison.Ordinal);
        Assert.Contains("Known for certain before this stage: lid-number.", error.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lid-numbr", "The book has no code “lid-numbr”.", "Do you mean “lid-number”?")]
    [InlineData("steel-pin", "“steel-pin” is something of the box, but no code that could be typed.", "Write the name of a code.")]
    public void A_name_that_is_no_code_is_told_with_the_nearest(string gate, string says, string help)
    {
        using var desk = new SealedDesk().With(gate);

        var error = Assert.Single(desk.Found());

        Assert.Equal("HB8232", error.Code.Id);
        Assert.Equal(says, error.Message);
        Assert.StartsWith(help, error.Help, StringComparison.Ordinal);
        Assert.Contains($"{{ word: {gate} }}", error.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("farmyard")]
    [InlineData("{ word: lid-numbr }")]
    [InlineData("\"Queen Bee 7\"")]
    [InlineData("Bienenkönigin")]
    [InlineData("улей")]
    [InlineData("ハチミツ")]
    [InlineData("عسل")]
    [InlineData("ΜΕΛΙΣΣΑ")]
    public void A_word_may_be_asked_for_in_any_script(string gate)
    {
        using var desk = new SealedDesk().With(gate);

        Assert.Equal(["HB8235"], desk.Found().Select(finding => finding.Code.Id));
    }

    // ß, İ, ı and ς have another small or large form on some devices; the others come out of NFKC as other letters.
    [Theory]
    [InlineData("Straße", "“ß”", "Write “ss” in its place")]
    [InlineData("İstanbul", "“İ”", "Write “i” in its place")]
    [InlineData("ışık", "“ı”", "Write “i” in its place")]
    [InlineData("μέλος", "“ς”", "Write “σ” in its place")]
    [InlineData("ﬁsh", "“ﬁ”", "Ask for another word")]
    [InlineData("½ litre", "“½”", "Ask for another word")]
    [InlineData("Ａbc", "“Ａ”", "Ask for another word")]
    [InlineData("cafe\u0301", "“\u0301”", "Ask for another word")]
    [InlineData("٥١٧٣", "“٥”", "Ask for another word")]
    public void Letters_that_devices_write_differently_are_refused(string word, string odd, string help)
    {
        using var desk = new SealedDesk().With($"\"{word}\"");

        var error = Assert.Single(desk.Found());

        Assert.Equal("HB8233", error.Code.Id);
        Assert.Contains(odd, error.Message, StringComparison.Ordinal);
        Assert.StartsWith(help, error.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_without_letters_is_refused()
    {
        using var desk = new SealedDesk().With("\"- -\"");

        Assert.Contains("there are none", Assert.Single(desk.Found()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_codes_that_differ_by_copy_every_one_is_looked_at_where_it_is_written()
    {
        using var desk = SealedDesk.OfNumbered().With("lid-number");
        Assert.Equal(["HB8235"], desk.Found().Select(finding => finding.Code.Id));

        desk.Desk.Change("copies.yaml", "5173", "٥١٧٣");

        var error = desk.Found().Single(finding => finding.Code.Id == "HB8233");
        Assert.Equal("copies.yaml", error.At.File.Path);
    }

    [Fact]
    public void In_a_book_that_lies_open_a_gate_is_told_to_ask_nobody()
    {
        using var desk = new SealedDesk().With("lid-number");
        desk.Desk.Change("book.yaml", "sealed: true", "sealed: false");

        var warning = Assert.Single(desk.Found());

        Assert.Equal("HB8234", warning.Code.Id);
        desk.Desk.Published();
        Assert.DoesNotContain("data-gate", string.Concat(Directory.GetFiles(desk.Site, "*.html").Select(File.ReadAllText)), StringComparison.Ordinal);
    }

    // Section 8 of the format: a tenth of a second for a guess; 1,000 settings, 10,000, and 30,000 words.
    [Theory]
    [InlineData(1, "1 second")]
    [InlineData(1_000, "2 minutes")]
    [InlineData(10_000, "17 minutes")]
    [InlineData(30_000, "50 minutes")]
    [InlineData(100_000, "3 hours")]
    [InlineData(10_000_000, "12 days")]
    public void Guessing_takes_a_tenth_of_a_second_each(int guesses, string time) => Assert.Equal(time, GateWord.TimeFor(guesses));

    [Fact]
    public void A_letter_that_may_be_asked_for_is_a_letter_or_a_digit_with_one_small_form()
    {
        var all = Enumerable.Range(0, 0x11_0000).Where(Rune.IsValid).Select(value => new Rune(value)).Where(rune => GateWord.Odd(rune.ToString()) is null);

        Assert.All(all.Where(rune => Gate.Plain(rune.ToString()).Length > 0), rune =>
            Assert.Null(GateWord.Odd(Gate.Plain(rune.ToString()))));
        Assert.DoesNotContain(all, rune => "ßİıςªºµſĳŉ²½٥".EnumerateRunes().Contains(rune));
    }
}
