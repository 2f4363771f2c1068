using System.CommandLine;
using System.Globalization;
using HintBook.Reading;

namespace HintBook.Cli.Verbs;

/// <summary>Arguments and options that several verbs share.</summary>
internal static class Options
{
    public static Argument<string> Book() => new("BOOK") { Description = "The book's folder." };

    public static Option<string?> Out(string what) => new("--out") { Description = what, HelpName = "PATH" };

    /// <summary>Leave to write over a file that is there already.</summary>
    public static Option<bool> Replace() => new("--replace") { Description = "Write over what is there already under that name." };

    public static Option<bool> Notes() => new("--notes") { Description = "Say what is worth knowing, too." };

    public static Option<string> Paper()
    {
        var paper = new Option<string>("--paper") { Description = "The sheets to print on, where book.yaml names none.", DefaultValueFactory = _ => "a4" };
        return paper.AcceptOnlyFromAmong("a4", "letter", "a3", "sra3");
    }

    /// <summary>The maker's date. No clock is asked: the same input gives the same bytes.</summary>
    public static Option<string?> Date() =>
        Date($"Today, as {PrintedCards.DateForm}: {AddressList.FileName} keeps it for the cards that are printed.");

    /// <summary>A date of the maker's.</summary>
    /// <param name="what">What it is for.</param>
    public static Option<string?> Date(string what)
    {
        var date = new Option<string?>("--date") { Description = what, HelpName = "DATE" };
        date.Validators.Add(given =>
        {
            if (given.Tokens is [var token] && DateOf(token.Value) is null)
                given.AddError($"“{token.Value}” is no date. Write year, month and day: --date 2026-11-28.");
        });
        return date;
    }

    public static DateOnly? DateOf(string? text) =>
        DateOnly.TryParseExact(text, PrintedCards.DateForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;

    public static Cards.Paper PaperOf(string name) => name switch
    {
        "letter" => Cards.Paper.Letter,
        "a3" => Cards.Paper.A3,
        "sra3" => Cards.Paper.Sra3,
        _ => Cards.Paper.A4,
    };
}
