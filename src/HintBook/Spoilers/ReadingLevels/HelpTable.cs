using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers.ReadingLevels;

/// <summary>How long each step of help is, and how hard to read: <c>check --table</c>.</summary>
/// <param name="Language">The language of the book, as a BCP 47 tag.</param>
/// <param name="Graded">Whether reading levels are known for it: the formula and the syllables are those of English.</param>
/// <param name="Rows">Three for each stage, in the author's order.</param>
public sealed record HelpTable(string Language, bool Graded, ImmutableArray<HelpRow> Rows)
{
    /// <summary>Measures every nudge, clue and answer of a book. Titles, headings and the marks of Markdown don't count.</summary>
    public static HelpTable Measure(Book book)
    {
        var graded = SearchLanguage.For(book.Language.Value) == English.Language;
        return new(book.Language.Value, graded, [.. book.Stages.SelectMany(stage => StepsOf(stage, graded))]);
    }

    private static IEnumerable<HelpRow> StepsOf(Stage stage, bool graded)
    {
        yield return Row(stage, Place.Nudge, stage.Nudge, graded);
        yield return Row(stage, Place.Clue, stage.Clue, graded);
        yield return Row(stage, Place.Answer, stage.Answer, graded);
    }

    private static HelpRow Row(Stage stage, Place tier, Prose text, bool graded)
    {
        var reckoned = TextLength.In(text.Markdown);
        return new(stage, tier, reckoned.Words, reckoned.Sentences, graded && reckoned.Grade is { } grade ? Math.Max(0, grade) : null);
    }
}

/// <summary>One step of help.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Tier"><see cref="Place.Nudge"/>, <see cref="Place.Clue"/> or <see cref="Place.Answer"/>.</param>
/// <param name="Words">How many words it has.</param>
/// <param name="Sentences">How many sentences they stand in.</param>
/// <param name="Grade">
/// The Flesch–Kincaid grade level, 0 where the formula gives less, as it does for very short texts; null where the language has none, or where there is
/// no word.
/// </param>
public sealed record HelpRow(Stage Stage, Place Tier, int Words, int Sentences, double? Grade)
{
    /// <summary><c>nudge</c>, <c>clue</c> or <c>answer</c>.</summary>
    public string TierWord => Tier switch
    {
        Place.Nudge => "nudge",
        Place.Clue => "clue",
        _ => "answer",
    };
}
