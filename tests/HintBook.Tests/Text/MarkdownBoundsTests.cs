using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Text;

/// <summary>Text that would keep the parser busy for minutes is told instead, wherever it stands; text that people write is not.</summary>
public sealed class MarkdownBoundsTests
{
    public static TheoryData<string> TooMuch =>
    [
        Nested(2_000, "  "),
        Nested(200, "\t"),
        Repeat("- ", 50_000) + "x",
        Repeat("> ", 33) + "x",
        Repeat("1. ", 33) + "x",
        Repeat("![a](", 20_000),
        Repeat("[", 20_000),
        Repeat("*a ", 20_000),
        Repeat("a**b_c ", 20_000),
        Repeat("[a]: b\n", 20_000),
        Repeat("<a ", 20_000),
        Repeat("x", 20_001),
        Repeat("x\n\n", 100_000),
        string.Concat(Enumerable.Range(1, 600).Select(length => new string('`', length) + "a")),
    ];

    [Theory]
    [MemberData(nameof(TooMuch))]
    public void Too_much_is_told_in_a_stage_and_in_a_text_of_the_book(string text)
    {
        using var book = new BookOnDisk();
        book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]").Replace("Look up.", text, StringComparison.Ordinal));

        Assert.Contains("HB1311", book.Codes());
        Assert.Equal([MarkdownFindings.TooDeep], ProseHtml.Render(A.Prose(text)).Findings.Select(finding => finding.Code));
    }

    [Fact]
    public void The_place_of_the_line_is_told()
    {
        using var book = new BookOnDisk();
        var deep = Repeat("> ", 40) + "x";
        book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]").Replace("Look up.", $"Look\r\nup.\n{deep}", StringComparison.Ordinal));

        Assert.Equal(deep, book.Only().At.Text);
    }

    public static TheoryData<string> WhatPeopleWrite =>
    [
        "",
        "One sentence.",
        Nested(8, "    "),
        Repeat("- ", 200),
        Repeat("* ", 200).TrimEnd(),
        new string('_', 5_000),
        new string('-', 5_000),
        Repeat("- **brass** and *tin*, [here](https://alder-row.example)\n", 900),
        Repeat("A sentence of some *words*. ", 500),
        Repeat(Repeat("A sentence of some words. ", 100) + "\n\n", 70),
    ];

    [Theory]
    [MemberData(nameof(WhatPeopleWrite))]
    public void What_people_write_is_read(string text) => Assert.Null(MarkdownBounds.Left(text));

    private static string Repeat(string text, int times) => string.Concat(Enumerable.Repeat(text, times));

    private static string Nested(int levels, string step) =>
        string.Concat(Enumerable.Range(0, levels).Select(level => Repeat(step, level) + "- a\n"));
}
