using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What there is to say of a book in another language.</summary>
internal static class TranslationFindings
{
    public static readonly FindingCode OwnLanguageCode = new("HB1601", Severity.Warning, "a book translated into its own language");
    public static readonly FindingCode NoBookCode = new("HB1602", Severity.Error, "a language without its texts");
    public static readonly FindingCode NoSuchStageCode = new("HB1603", Severity.Error, "a translation of a stage that isn't there");
    public static readonly FindingCode NotTranslatedCode = new("HB1604", Severity.Note, "a stage that isn't translated");
    public static readonly FindingCode NoSuchNameCode = new("HB1605", Severity.Error, "a translation of a name that isn't there");

    public static readonly FindingCode NoDigestCode = new("HB1606", Severity.Note, "a translation that doesn't say which texts it was made from");
    public static readonly FindingCode LeftBehindCode = new("HB1607", Severity.Warning, "a translation that its original has left behind");
    public static readonly FindingCode TranslatesNothingCode = new("HB1608", Severity.Error, "“translates” where nothing is translated");

    public static Finding OwnLanguage(Located<string> language) => OwnLanguageCode.At(language.At,
        $"“{language.Value}” is the language that the book is written in.", "Take it out of “languages”, or correct “language”.");

    public static Finding NoBook(Located<string> language, string file) => NoBookCode.At(language.At,
        $"The book says that it is in “{language.Value}”, but there is no {file}.",
        $"Write {file} with at least “title: …” in that language, or take “{language.Value}” out of “languages”.");

    public static Finding NoSuchStage(Stage stage, IReadOnlyCollection<string> ids) => NoSuchStageCode.At(stage.File.Top,
        $"The book has no stage “{stage.Id.Value}” that this file could translate.",
        Nearest.To(stage.Id.Value, ids) is { } near
            ? $"Write instead: {near}. A translation has the name of the file it translates."
            : "Give it the name of the file it translates.");

    public static Finding NotTranslated(Stage stage, string language) => NotTranslatedCode.At(stage.Title.At,
        $"“{stage.Title}” isn't translated: readers in “{language}” get it as it stands here.",
        $"Copy the file to stages/{language}/ and translate it there.");

    /// <summary>A name that a translation gives words to and that the book doesn't have there.</summary>
    /// <param name="name">The name.</param>
    /// <param name="kind">The heading that it stands under.</param>
    /// <param name="known">The names that book.yaml has under that heading.</param>
    /// <param name="elsewhere">The heading under which book.yaml has it, or null.</param>
    public static Finding NoSuchName(Located<string> name, string kind, IReadOnlyCollection<string> known, string? elsewhere) => NoSuchNameCode.At(
        name.At,
        $"The book has no “{name.Value}” under “{kind}”.",
        elsewhere is not null ? $"In book.yaml it stands under “{elsewhere}”: move it there."
        : Nearest.To(name.Value, known) is { } near ? $"Write instead: {near}"
        : known.Count == 0 ? "Take it out: book.yaml has no names under that heading."
        : $"Write one of the names that book.yaml has there, {Words.List(known.Take(12).Select(each => $"“{each}”"), "or")}, and the translation behind it.");

    public static Finding NoDigest(Stage texts, Stage original, string digest) => NoDigestCode.At(texts.Title.At,
        $"This translation doesn't say which texts of {original.File.Path} it was made from, so nobody is told when they change.",
        $"If it is up to date, add among its keys: translates: {digest}");

    public static Finding LeftBehind(Located<string> written, Stage original, ImmutableArray<string>? changed, string digest) => LeftBehindCode.At(written.At,
        changed is { } texts
            ? $"Since this was translated, {original.File.Path} has changed: {Words.List(texts)}."
            : $"“{written.Value}” is no digest of the texts of {original.File.Path}.",
        $"Bring the translation up to date, then write instead: translates: {digest}",
        new Related(original.Title.At, "This is the original."));

    public static Finding TranslatesNothing(Located<string> written) => TranslatesNothingCode.At(written.At,
        "“translates” belongs to a translation, but this is the stage in the book's own language.",
        "Take the line out here.");
}
