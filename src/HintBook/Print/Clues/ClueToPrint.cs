using HintBook.Books;
using HintBook.Ciphers.Making;

namespace HintBook.Print.Clues;

/// <summary>A clue that is to be printed.</summary>
/// <param name="Code">The code that it gives, as the copy has it.</param>
/// <param name="Clue">The clue.</param>
/// <param name="File">Its file, relative to the print folder.</param>
/// <param name="Serial">The copy that it is for; null for one that all have.</param>
internal sealed record ClueToPrint(Code Code, MadeClue Clue, string File, string? Serial)
{
    /// <summary>The clues of a book that are made of paper: those that all copies have, then for each copy those that are its own.</summary>
    public static IEnumerable<ClueToPrint> In(PaperBook paper)
    {
        var language = paper.Book.Language.Value;
        return
        [
            .. from code in paper.Book.Box.Codes
               where !IsOwn(code)
               let clue = CluesOnPaper.Of(code, language)
               where clue is not null
               select new ClueToPrint(code, clue, $"clues/{code.Id.Value}.pdf", null),
            .. from copy in paper.Boxes
               from code in paper.For(copy).Book.Box.Codes
               where IsOwn(code)
               let clue = CluesOnPaper.OfCopy(code, language)
               where clue is not null
               select new ClueToPrint(code, clue, $"clues/{copy.Folder}/{code.Id.Value}.pdf", copy.Serial),
        ];
    }

    private static bool IsOwn(Code code) => code.AnswerByCopy is not null || code.ClueByCopy is not null;
}
