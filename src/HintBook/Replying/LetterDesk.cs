using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Replying;

/// <summary>What a maker wants answered.</summary>
public sealed record LetterAsked
{
    /// <summary>The page or stage, as the maker names it; null to read it from <see cref="Text"/>.</summary>
    public string? Page { get; init; }

    /// <summary>The owner's letter or its subject; null for none.</summary>
    public string? Text { get; init; }

    /// <summary>How much help to give.</summary>
    public LetterStep Step { get; init; }

    /// <summary>The serial of the owner's copy; null to read it from <see cref="Text"/>.</summary>
    public string? Serial { get; init; }

    /// <summary>The language to answer in; null to go by the letter, then by the copy, then by the book.</summary>
    public string? Language { get; init; }
}

/// <summary>What comes of it.</summary>
public abstract record LetterAnswer
{
    private LetterAnswer()
    {
    }

    /// <summary>There is a letter.</summary>
    /// <param name="Letter">The letter.</param>
    /// <param name="Remarks">What the maker should know about it, as sentences.</param>
    public sealed record Written(Letter Letter, ImmutableArray<string> Remarks) : LetterAnswer;

    /// <summary>There is none.</summary>
    /// <param name="Why">Why, as a sentence.</param>
    public sealed record Refused(string Why) : LetterAnswer;
}

/// <summary>From what a maker asks to the letter: the one door of this room.</summary>
public static class LetterDesk
{
    /// <summary>Answers a letter.</summary>
    /// <param name="known">A book without errors.</param>
    /// <param name="asked">What is asked.</param>
    public static LetterAnswer Answer(Examined known, LetterAsked asked)
    {
        var read = asked.Text is { } text ? LetterReader.Read(text, known.Theme.Words.Values, PagesOf(known)) : new(null, null, null);
        var languages = LetterWriter.LanguagesOf(known.Book);
        if (asked.Language is { } language && !languages.Any(each => LetterWriter.Same(each, language)))
            return new LetterAnswer.Refused(LetterWriter.NotIn(languages, language));
        var remarks = ImmutableArray.CreateBuilder<string>();
        var (copy, why) = CopyFor(known, asked, read, remarks);
        if (why is not null)
            return new LetterAnswer.Refused(why);
        string?[] wanted = [asked.Language, read.Language, copy?.Language?.Value];
        var writer = new LetterWriter(known, wanted.FirstOrDefault(each => languages.Any(has => LetterWriter.Same(has, each))), copy);
        return (asked.Page ?? read.Page) is not { } named
            ? new LetterAnswer.Written(writer.NoStage(null), [.. remarks, "The letter names no page, so the answer leads to “Where am I?”."])
            : LetterPage.Find(named, known) switch
            {
                LetterPage.OfStage page => new LetterAnswer.Written(writer.Help(page, asked.Step), remarks.ToImmutable()),
                LetterPage.Gone page => new LetterAnswer.Written(writer.Gone(page), [.. remarks, $"The stage of page {page.Page} is gone from the book."]),
                LetterPage.OfNoStage page => new LetterAnswer.Written(writer.NoStage(page), [.. remarks, $"{page.Page} belongs to no stage."]),
                LetterPage.Unknown page => new LetterAnswer.Refused(page.Says),
                _ => throw new InvalidOperationException("A page is nothing else."),
            };
    }

    private static HashSet<string> PagesOf(Examined known) =>
        [.. known.Addresses.Names.Values.SelectMany(names => names), .. known.Addresses.Gone];

    // A serial that the maker gives must be right; one that stands in a letter may be mistyped, and then nothing of any copy is said.
    private static (Copy? Copy, string? Why) CopyFor(Examined known, LetterAsked asked, ReadLetter read, ImmutableArray<string>.Builder remarks)
    {
        if ((asked.Serial ?? read.Serial) is not { } serial)
            return (null, null);
        var copy = Copies.WithSerial(known.Book, serial);
        var why = copy is null ? Unknown(known, serial) : copy.Retired ? $"Copy {TerminalText.Shown(serial)} is out of use." : null;
        if (why is null && asked.Serial is null)
            remarks.Add($"Written for copy {TerminalText.Shown(serial)}, which the letter names.");
        if (why is null)
            return (copy, null);
        if (asked.Serial is not null)
            return (null, why);
        if (!known.Book.Copies.IsEmpty)
            remarks.Add($"{why} The letter names it; the answer says nothing of any copy.");
        return (null, null);
    }

    // On a sealed page an owner reads the number of their card, which says nothing of the serial.
    private static string Unknown(Examined known, string serial)
    {
        var card = known.Sealing?.Kept.Copies.FirstOrDefault(kept => $"{kept.Number}" == serial);
        return Copies.Unknown(known.Book, serial) + (card is null ? "" : $" {serial} is the number on the card of copy {TerminalText.Shown(card.Serial)}.");
    }
}
