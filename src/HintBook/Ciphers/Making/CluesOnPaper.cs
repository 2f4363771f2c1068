using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers.Making;

/// <summary>Makes the clues that authors leave to the program: from then on they are clues like any other, and are proved like any other.</summary>
public static class CluesOnPaper
{
    /// <summary>The book with its clues made, in each of its languages, and what couldn't be made.</summary>
    public static (Book Book, ImmutableArray<Finding> Findings) In(Book book)
    {
        if (!book.Box.Codes.Any(code => code.OnPaper is not null))
            return (book, []);
        var made = book.Box.Codes.Where(code => code.OnPaper is not null).ToDictionary(code => code.Id.Value, code => Make(code, book.Language.Value));
        return (
            With(book) with { Translations = [.. book.Translations.Select(With)] },
            [.. made.Values.Select(each => each.Finding).OfType<Finding>(), .. book.Box.Codes.SelectMany(code => RefusedIn(book, code))]);

        Book With(Book each) => each with { Box = each.Box with { Codes = [.. each.Box.Codes.Select(code => Filled(code, made))] } };
    }

    /// <summary>The book as it is for the owner of one copy, with the clues that are made for this copy alone.</summary>
    public static Book As(Book book, Copy copy)
    {
        var own = book.As(copy);
        return own with { Box = own.Box with { Codes = [.. own.Box.Codes.Select(FilledForCopy)] } };

        Code FilledForCopy(Code code) => code is { OnPaper: { } asked, AnswerByCopy: not null } && Of(code, book.Language.Value) is { } clue
            ? Filled(code, asked, clue)
            : code;
    }

    /// <summary>The clue of a code, to be printed; null for a code whose clue isn't made, or can't be.</summary>
    /// <param name="code">The code.</param>
    /// <param name="language">The book's language, for clues of words.</param>
    public static MadeClue? Of(Code code, string language) =>
        code.OnPaper is { } asked && Attempted(code, asked, language) is Attempt.Made made ? made.Clue : null;

    /// <summary>The clue that a code has in one copy, to be printed; null for a code without one.</summary>
    /// <param name="code">The code as this copy has it.</param>
    /// <param name="language">The book's language, for clues of words.</param>
    public static MadeClue? OfCopy(Code code, string language)
    {
        if (code.OnPaper is not null || code.ClueByCopy is null || code.Clue is not { } clue)
            return Of(code, language);
        var text = clue.Value.TrimEnd().ReplaceLineEndings("\n");
        // A written clue is drawn like a made one where it is one: the same signs, or other letters around the same holes.
        return code.Reads is [var step]
            && Spoken(code.Answer.Value, step.Way.Value, [.. step.With.Select(each => each.Value)], 0, language) is Attempt.Made { Clue: var made }
            && (made.Text == text || (made.Mask is not null && Shape(made.Text).SequenceEqual(Shape(text))))
                ? made with { Text = text }
                : new MadeClue { Way = WayOf(code), Answer = code.Answer.Value, Text = text, Reads = [] };
    }

    /// <summary>Why the clue that a code asks for can't be made for an answer; null if it can.</summary>
    /// <param name="code">The code.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="language">The book's language, for clues of words.</param>
    public static string? RefusedFor(Code code, string answer, string language) =>
        code.OnPaper is { } asked && Attempted(code with { Answer = code.Answer with { Value = answer } }, asked, language) is Attempt.Refused refused
            ? refused.Why
            : null;

    private static string WayOf(Code code) => code.Reads.IsEmpty ? "text" : string.Join(", ", code.Reads.Select(step => step.Way.Value));

    private static IEnumerable<int> Shape(string text) => text.Split('\n').Select(line => line.Length);

    private static (MadeClue? Clue, Finding? Finding) Make(Code code, string language) => code is not { OnPaper: { } asked, AnswerByCopy: null }
        ? (null, null)
        : Attempted(code, asked, language) switch
        {
            Attempt.Made made => (made.Clue, null),
            Attempt.Refused refused => (null, CipherFindings.CantBeMade(code, asked, refused.Why)),
            _ => throw new InvalidOperationException("a clue is made or refused"),
        };

    // That a copy has no answer at all is told by the proof.
    private static IEnumerable<Finding> RefusedIn(Book book, Code code) => code is not { OnPaper: { } asked, AnswerByCopy: { } name }
        ? []
        : from copy in book.Copies
          let own = copy[name.Value]
          where own is not null
          let answer = (Located<string>)own
          let attempt = Attempted(code with { Answer = answer }, asked, book.Language.Value) as Attempt.Refused
          where attempt is not null
          group copy.Serial.Value by attempt.Why into same
          select CipherFindings.InCopies(CipherFindings.CantBeMade(code, asked, same.Key), [.. same], book.Copies.Length);

    private static Attempt Attempted(Code code, ClueOnPaper asked, string language) =>
        Spoken(code.Answer.Value, asked.Way.Value, [.. asked.With.Select(each => each.Value)], asked.Variant, language);

    // A clue without words is the same in every language.
    private static Attempt Spoken(string answer, string way, ImmutableArray<string> told, int variant, string language)
    {
        var spoken = Clues.Languages.Contains(language) ? language : Clues.Languages[0];
        var attempt = Clues.For(answer, way, told, variant, spoken);
        return attempt is Attempt.Refused && spoken != Clues.Languages[0] ? Clues.For(answer, way, told, variant, Clues.Languages[0]) : attempt;
    }

    private static Code Filled(Code code, Dictionary<string, (MadeClue? Clue, Finding? Finding)> made) =>
        code.OnPaper is { } asked && made.TryGetValue(code.Id.Value, out var each) && each.Clue is { } clue ? Filled(code, asked, clue) : code;

    private static Code Filled(Code code, ClueOnPaper asked, MadeClue clue)
    {
        var way = asked.Way;
        return code with
        {
            Clue = At(clue.Text),
            Reads = [.. clue.Reads.Select(step => new ReadingStep(At(step.Way), [.. step.Told.Select(At)], way.At))],
        };

        Located<string> At(string text) => way with { Value = text };
    }
}
