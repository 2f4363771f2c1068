using HintBook.Books;
using HintBook.Reading.Sittings;
using HintBook.Replying;
using HintBook.Sittings;
using HintBook.Tests.Books;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Replying;

/// <summary>Which pages owners ask about is appended, nothing of it is lost, and it is counted.</summary>
public sealed class LetterNotesTests : IDisposable
{
    private static readonly DateOnly Day = new(2026, 11, 28);
    private readonly BookOnDisk book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    public void A_new_file_has_its_heading()
    {
        Append("83wf3vhk", Day);
        Append("mn8h4cjx", null);

        Assert.Equal("page,date\n83wf3vhk,2026-11-28\nmn8h4cjx,\n", Text);
    }

    [Theory]
    [InlineData("page,date\n83wf3vhk,2026-11-01", "page,date\n83wf3vhk,2026-11-01\nmn8h4cjx,2026-11-28\n")]
    [InlineData("Datum;Seite;Notiz\r\n2026-11-01;83wf3vhk;x\r\n", "Datum;Seite;Notiz\r\n2026-11-01;83wf3vhk;x\r\n2026-11-28;mn8h4cjx;\r\n")]
    [InlineData("\uFEFFpage\n", "\uFEFFpage\nmn8h4cjx\n")]
    [InlineData("\n", "\npage,date\nmn8h4cjx,2026-11-28\n")]
    public void What_stands_there_stays_and_the_row_fits_its_columns(string before, string after)
    {
        book.With(LetterFile.FileName, before);

        Append("mn8h4cjx", Day);

        Assert.Equal(after, System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(Where)));
    }

    [Fact]
    public void A_file_without_a_column_for_pages_is_left_alone()
    {
        book.With(LetterFile.FileName, "who,what\nAnn,help\n");

        Assert.Contains("names no column “page”", LetterNotes.Append(book.Path, "mn8h4cjx", Day)?.Why, StringComparison.Ordinal);
        Assert.Equal("who,what\nAnn,help\n", Text);
    }

    [Fact]
    public void A_link_is_not_followed()
    {
        var elsewhere = Path.GetTempFileName();
        book.WithLink(LetterFile.FileName, elsewhere);

        Assert.Contains("nothing was noted", LetterNotes.Append(book.Path, "mn8h4cjx", Day)?.Why, StringComparison.Ordinal);

        Assert.Equal("", File.ReadAllText(elsewhere));
        File.Delete(elsewhere);
    }

    [Fact]
    public void Nobody_but_its_owner_may_read_it()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no such mode.");
            return;
        }

        Append("83wf3vhk", Day);
        Append("mn8h4cjx", Day);

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Where));
    }

    [Fact]
    public void Of_many_at_once_none_is_lost()
    {
        Parallel.For(0, 40, number => Append($"page{number:00}", Day));

        Assert.Equal(41, File.ReadAllLines(Where).Length);
        Assert.Equal(40, LetterFile.In(new SourceFile(LetterFile.FileName, Text), []).Select(letter => letter.Page).Distinct().Count());
    }

    [Fact]
    public void Seven_of_ten_letters_about_one_stage_are_told_with_how_sure_that_is()
    {
        var told = Letters(Enumerable.Repeat("well", 7).Concat(["lid", "lid", "gone"]));

        // Wilson's interval for 7 of 10, as NIST's formula has it: 0.397 to 0.892.
        Assert.Equal(
            "\n10 letters of owners noted:\n"
            + "  “well-title”: 7 of 10; of all letters between 40 % and 89 %; more than its share: its nudge doesn't help\n"
            + "  “lid-title”: 2 of 10; of all letters between 6 % and 51 %\n"
            + "  about no stage of the book: 1\n",
            told.ToText());
    }

    [Fact]
    public void Two_letters_say_nothing_yet() => Assert.DoesNotContain("more than its share", Letters(["well", "well"]).ToText(), StringComparison.Ordinal);

    [Fact]
    public void Without_letters_nothing_is_said() => Assert.Equal("", Letters([]).ToText());

    [Theory]
    [InlineData("when,what\n2026-11-28,x\n", 0, 1)]
    [InlineData("page,date\n83wf3vhk,yesterday\n,2026-11-28\n83WF3VHK,2026-11-28\n", 2, 2)]
    [InlineData("", 0, 0)]
    public void A_row_that_can_not_be_used_is_told_and_the_rest_is_used(string text, int letters, int findings)
    {
        var told = new List<Finding>();

        Assert.Equal(letters, LetterFile.In(new SourceFile(LetterFile.FileName, text), told).Length);
        Assert.Equal(Enumerable.Repeat("HB7411", findings), told.Select(finding => finding.Code.Id));
    }

    private static BoxLetters Letters(IEnumerable<string> about)
    {
        var made = A.Book(A.Stage("lid"), A.Stage("well"), A.Stage("pin"), A.Stage("jar"), A.Stage("bee"), A.Stage("end"));
        var addresses = A.Addresses(made);
        var pages = about.Select(stage => addresses.Names.TryGetValue(stage, out var names) ? names[0] : stage);
        return BoxLetters.Of(made with { Letters = [.. pages.Select(page => new NotedLetter(page, Day, A.Somewhere))] }, addresses);
    }

    private void Append(string page, DateOnly? day) => Assert.Null(LetterNotes.Append(book.Path, page, day));

    private string Where => Path.Combine(book.Path, LetterFile.FileName);

    private string Text => File.ReadAllText(Where);
}
