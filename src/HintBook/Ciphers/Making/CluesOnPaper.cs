using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers.Making;

/// <summary>Makes the clues that authors leave to the program: from then on they are clues like any other, and are proved like any other.</summary>
public static class CluesOnPaper
{
    private const string ByCopy = "The answer differs by copy, so each copy would need a clue of its own. Make them with “hintbook clue”.";

    /// <summary>The book with its clues made, in each of its languages, and what couldn't be made.</summary>
    public static (Book Book, ImmutableArray<Finding> Findings) In(Book book)
    {
        if (!book.Box.Codes.Any(code => code.OnPaper is not null))
            return (book, []);
        var made = book.Box.Codes.Where(code => code.OnPaper is not null).ToDictionary(code => code.Id.Value, code => Make(code, book.Language.Value));
        return (
            With(book) with { Translations = [.. book.Translations.Select(With)] },
            [.. made.Values.Select(each => each.Finding).OfType<Finding>()]);

        Book With(Book each) => each with { Box = each.Box with { Codes = [.. each.Box.Codes.Select(code => Filled(code, made))] } };
    }

    /// <summary>The clue of a code, to be printed; null for a code whose clue isn't made, or can't be.</summary>
    /// <param name="code">The code.</param>
    /// <param name="language">The book's language, for clues of words.</param>
    public static MadeClue? Of(Code code, string language) =>
        code.OnPaper is { } asked && Attempted(code, asked, language) is Attempt.Made made ? made.Clue : null;

    private static (MadeClue? Clue, Finding? Finding) Make(Code code, string language) => code.OnPaper is not { } asked
        ? (null, null)
        : code.AnswerByCopy is not null
            ? (null, CipherFindings.CantBeMade(code, asked, ByCopy))
            : Attempted(code, asked, language) switch
            {
                Attempt.Made made => (made.Clue, null),
                Attempt.Refused refused => (null, CipherFindings.CantBeMade(code, asked, refused.Why)),
                _ => throw new InvalidOperationException("a clue is made or refused"),
            };

    // A clue without words is the same in every language.
    private static Attempt Attempted(Code code, ClueOnPaper asked, string language)
    {
        ImmutableArray<string> told = [.. asked.With.Select(each => each.Value)];
        var spoken = Clues.Languages.Contains(language) ? language : Clues.Languages[0];
        var attempt = Clues.For(code.Answer.Value, asked.Way.Value, told, asked.Variant, spoken);
        return attempt is Attempt.Refused && spoken != Clues.Languages[0]
            ? Clues.For(code.Answer.Value, asked.Way.Value, told, asked.Variant, Clues.Languages[0])
            : attempt;
    }

    private static Code Filled(Code code, Dictionary<string, (MadeClue? Clue, Finding? Finding)> made)
    {
        if (code.OnPaper is not { Way: var way } || !made.TryGetValue(code.Id.Value, out var each) || each.Clue is not { } clue)
            return code;
        return code with
        {
            Clue = At(clue.Text),
            Reads = [.. clue.Reads.Select(step => new ReadingStep(At(step.Way), [.. step.Told.Select(At)], way.At))],
        };

        Located<string> At(string text) => way with { Value = text };
    }
}
