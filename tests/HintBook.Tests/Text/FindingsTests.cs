using CsCheck;
using HintBook.Text;

namespace HintBook.Tests.Text;

public class FindingsTests
{
    private static readonly SourceFile Book = new("book.yaml", "one two three");
    private static readonly SourceFile First = new("stages/01-a.md", "one two three");
    private static readonly SourceFile Other = new("album.yaml", "one two three");

    [Fact]
    public void The_book_comes_first_then_files_by_name_then_places_then_codes()
    {
        Finding[] ordered =
        [
            Say.At(Say.Wrong, Book, "two"), Say.At(Say.Wrong, Book, "three"), Say.At(Say.Mild, Other, "one"),
            Say.At(Say.Wrong, First, "one"), Say.At(Say.Odd, First, "one"), Say.At(Say.Wrong, First, "two"),
        ];
        Gen.Shuffle(ordered).Sample(shuffled => Findings.Of(shuffled).All.SequenceEqual(ordered));
    }

    [Fact]
    public void An_error_of_a_file_that_was_not_taken_into_the_book_comes_before_what_may_follow_from_it()
    {
        var (unread, stray) = (SourceFile.Unread("stages/02-b.md.txt"), SourceFile.Unread("stages/notes.txt"));
        Finding[] ordered = [Say.At(Say.Wrong, unread, ""), Say.At(Say.Wrong, Book, "two"), Say.At(Say.Odd, stray, "")];
        Gen.Shuffle(ordered).Sample(shuffled => Findings.Of(shuffled).All.SequenceEqual(ordered));
    }

    [Fact]
    public void Exact_repeats_are_said_once() =>
        Assert.Single(Findings.Of([Say.At(Say.Wrong, Book, "two"), Say.At(Say.Wrong, Book, "two")]).All);

    [Fact]
    public void Only_errors_keep_a_book_from_being_published()
    {
        Assert.False(Findings.Of([Say.At(Say.Odd, Book, "two"), Say.At(Say.Mild, Book, "two")]).AnyError);
        Assert.True(Findings.Of([Say.At(Say.Wrong, Book, "two")]).AnyError);
    }

    [Fact]
    public void Adding_findings_keeps_the_order() =>
        Assert.Equal(
            ["one", "two", "three"],
            Findings.Of([Say.At(Say.Odd, Book, "two")]).And([Say.At(Say.Odd, Book, "three"), Say.At(Say.Odd, Book, "one")])
                .All.Select(finding => finding.At.Text));

    [Fact]
    public void Notes_are_shown_only_when_asked_for()
    {
        var findings = Findings.Of([Say.At(Say.Wrong, Book, "one"), Say.At(Say.Odd, Book, "two"), Say.At(Say.Mild, Book, "three")]);
        Assert.Equal(["HB1101", "HB2102"], findings.Shown(withNotes: false).Select(finding => finding.Code.Id));
        Assert.Equal(["HB1101", "HB2102", "HB3103"], findings.Shown(withNotes: true).Select(finding => finding.Code.Id));
        Assert.Equal(1, findings.Count(Severity.Note));
    }

    [Theory]
    [InlineData("nothing")]
    [InlineData("a", "a")]
    [InlineData("a and b", "a", "b")]
    [InlineData("a, b and c", "a", "b", "c")]
    public void Names_are_listed_as_a_sentence_does(string list, params string[] names) =>
        Assert.Equal(list, Words.List(names));

    [Theory]
    [InlineData(0, "0 stages")]
    [InlineData(1, "1 stage")]
    [InlineData(2, "2 stages")]
    public void Numbers_agree_with_their_nouns(int number, string text) =>
        Assert.Equal(text, Words.Count(number, "stage"));
}
