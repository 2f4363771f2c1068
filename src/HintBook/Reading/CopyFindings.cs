using HintBook.Books;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What can be wrong with the copies of an edition.</summary>
internal static class CopyFindings
{
    public static readonly FindingCode InTwoPlacesCode = new("HB8101", Severity.Error, "copies in two places");
    public static readonly FindingCode InTheBookCode = new("HB8102", Severity.Note, "copies in book.yaml");
    public static readonly FindingCode OtherLanguageCode = new("HB8103", Severity.Error, "a copy in a language that the book doesn't have");

    public static Finding InTwoPlaces(Located<string> key) => InTwoPlacesCode.At(
        key.At,
        $"The copies stand here and in {Copies.FileName}, so it isn't known which of them are right.",
        $"Keep them in {Copies.FileName} and take “copies” out of book.yaml.");

    public static Finding InTheBook(Located<string> key) => InTheBookCode.At(
        key.At,
        $"The copies have a file of their own, {Copies.FileName}. Here they are read as well, but “hintbook copies” can't add to them.",
        $"Move “copies” into {Copies.FileName}, and what stands under each serial under “own” there.");

    /// <summary>Copies whose owner reads a language that the book isn't in.</summary>
    public static IEnumerable<Finding> OtherLanguages(Book book)
    {
        string[] has = [book.Language.Value, .. book.Translations.Select(translation => translation.Language.Value)];
        return
            from copy in book.Copies
            let language = copy.Language
            where language is { } asked && !has.Contains(asked.Value, StringComparer.OrdinalIgnoreCase)
            select OtherLanguageCode.At(
                language.Value.At,
                $"Copy {copy.Serial.Value} is in “{language.Value.Value}”, and the book is in {Words.List(has.Select(tag => $"“{tag}”"))}.",
                "Name one of these, or translate the book.");
    }
}
