using System.Collections.Immutable;
using HintBook.Pages;
using HintBook.Replying;

namespace HintBook.Tests.Replying;

/// <summary>Letters are read back with the words that the site wrote them with.</summary>
public sealed class LetterReaderTests
{
    private static readonly HashSet<string> Pages = ["83wf3vhk", "mn8h4cjx"];
    private static readonly ImmutableSortedDictionary<string, ThemeWords> Words = Theme.BuiltIn(Theme.Default).Theme.Words;

    private static readonly string[] Before =
        ["", "Re: ", "RE: Re: ", "AW: ", "Fwd: ", "TR : ", "RV: ", "رد: ", "Re[2]: ", "[box-help] Re: ", "Subject: Re: ", "返信："];

    public static TheoryData<string, string> LanguagesAndPrefixes => new MatrixTheoryData<string, string>(["en", "de", "fr", "es", "ja", "ar"], Before);

    [Theory]
    [MemberData(nameof(LanguagesAndPrefixes))]
    public void The_subject_that_the_site_writes_is_read_back(string language, string before)
    {
        var subject = before + Words[language].Say("mail_subject", ("book", "The Box: Stuck, page 12"), ("page", "83wf3vhk"));

        var read = Read(subject);

        Assert.Equal(("83wf3vhk", language), (read.Page, read.Language));
        Assert.Equal(("83wf3vhk", language), (Read(subject.Replace(" ", "\u00A0", StringComparison.Ordinal)).Page, read.Language));
        Assert.Equal("83wf3vhk", Read(subject.ToUpperInvariant()).Page, ignoreCase: true);
        Assert.Equal(("83wf3vhk", language), (Read($"\u200F{subject}\u200E").Page, Read($"\u200F{subject}\u200E").Language));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    [InlineData("ja")]
    [InlineData("ar")]
    public void The_body_that_the_site_writes_is_read_back_quoted_or_not(string language)
    {
        var lines = Words[language].Say("mail_body", ("book", "The Box"), ("page", "mn8h4cjx")).Split('\n');
        var number = Array.FindIndex(lines, 2, line => line.Length > 0);
        lines[number] += "007";
        var body = string.Join("\r\n", lines);

        Assert.Equal(new ReadLetter("mn8h4cjx", language, "007"), Read(body));
        Assert.Equal(new ReadLetter("mn8h4cjx", language, "007"), Read(string.Join("\r\n", lines.Select(line => $"> {line}"))));
    }

    [Fact]
    public void A_number_that_was_not_filled_in_is_none() =>
        Assert.Null(Read(Words["en"].Say("mail_body", ("book", "The Box"), ("page", "mn8h4cjx"))).Serial);

    [Theory]
    [InlineData("stuck at 83wf3vhk, copy 007", "83wf3vhk", "007")]
    [InlineData("I'm on https://made.example/box/mn8h4cjx.html?x=1#clue and see a hole", "mn8h4cjx", null)]
    [InlineData("Hilfe! 83WF3VHK, Exemplar 12-b", "83wf3vhk", "12-b")]
    [InlineData("Nothing of use. I set 5173 on the lock.", null, null)]
    [InlineData("", null, null)]
    public void Where_owners_write_otherwise_the_names_of_pages_are_looked_for(string text, string? page, string? serial) =>
        Assert.Equal(new ReadLetter(page, null, serial), Read(text));

    [Fact]
    public void A_header_that_goes_on_in_the_next_line_is_one_line()
    {
        var read = Read("From: somebody\nSubject: Re: Ich komme nicht weiter: Der\n Kasten, Seite\n 83wf3vhk\n\nHallo");

        Assert.Equal(("83wf3vhk", "de"), (read.Page, read.Language));
    }

    [Fact]
    public void A_page_that_never_was_is_read_all_the_same_so_that_it_can_be_told() => Assert.Equal("83wf3vhx", Read("Stuck: The Box, page 83wf3vhx").Page);

    private static ReadLetter Read(string text) => LetterReader.Read(text, Words.Values, Pages);
}
