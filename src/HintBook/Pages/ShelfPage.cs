using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Photos;
using HintBook.Text;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>A book as it stands on a shelf.</summary>
/// <param name="Folder">Its folder in the site, such as <c>beekeeper/</c>.</param>
/// <param name="Book">The book.</param>
/// <param name="Pictures">Its published pictures, by file.</param>
public sealed record ShelvedBook(string Folder, Book Book, IReadOnlyDictionary<string, Picture> Pictures);

/// <summary>The front page of several books: what anyone sees on the closed boxes, and a way to each.</summary>
public static class ShelfPage
{
    private const string Template = "shelf.html";

    /// <summary>The page with the files of the theme that it needs.</summary>
    /// <param name="books">The books in the order of the shelf, at least one.</param>
    /// <param name="theme">How it looks.</param>
    public static IReadOnlyCollection<MadeFile> Build(IReadOnlyList<ShelvedBook> books, Theme theme)
    {
        var renderer = new TemplateRenderer(theme);
        return
        [
            .. theme.Assets.Where(asset => !Theme.IsOpener(asset.Key)).Select(asset => new MadeFile(asset.Value.Path, () => asset.Value.Content)),
            new MadeFile("index.html", () => renderer.Print(Template, Names(books, theme))),
        ];
    }

    /// <summary>The languages that the books ask for with <c>shelf: { language: … }</c>, in the order of the shelf; the first is taken.</summary>
    public static ImmutableArray<Located<string>> AskedFor(IEnumerable<ShelvedBook> books) =>
        [.. books.Select(shelved => shelved.Book.Shelf?.Language).OfType<Located<string>>()];

    /// <summary>
    /// The language of the page: what a book asks for, else the one in which most books are written, of equals the one that comes first.
    /// </summary>
    /// <param name="books">The books in the order of the shelf, at least one.</param>
    public static Located<string> LanguageOf(IReadOnlyList<ShelvedBook> books) => AskedFor(books) is [var asked, ..]
        ? asked
        : books.Select(shelved => shelved.Book.Language).GroupBy(language => language.Value, StringComparer.Ordinal).MaxBy(same => same.Count())!.First();

    private static ScriptObject Names(IReadOnlyList<ShelvedBook> books, Theme theme)
    {
        var (words, _) = theme.WordsIn(LanguageOf(books));
        var title = TitleOf(books, words);
        var isOneMakers = MakersOf(books) is [{ }];
        return View.Of(
            ("site", View.Of(
                ("title", title),
                ("language", words.Language),
                ("dir", TextDirection.Of(words.Language)),
                ("key", null),
                ("root", ""),
                ("seal", null),
                ("policy", LanguageSite.Policy),
                ("preview", title),
                ("preview_image", null),
                ("maker", null),
                ("logo", isOneMakers ? books.Select(LogoOf).FirstOrDefault(logo => logo is not null) : null))),
            ("page", View.Of(
                ("kind", "shelf"), ("title", title), ("name", null), ("canonical", null), ("indexed", true), ("help", null), ("languages", null))),
            ("words", View.Words(words)),
            ("assets", View.Assets(theme, root: "")),
            ("boxes", View.List(books.Select(Box))));

        ScriptObject Box(ShelvedBook shelved) => View.Of(
            ("title", shelved.Book.Title.Value),
            ("line", shelved.Book.Shelf?.Line?.Value),
            ("maker", isOneMakers ? null : shelved.Book.Maker?.Name.Value),
            ("language", shelved.Book.Language.Value),
            ("dir", TextDirection.Of(shelved.Book.Language.Value)),
            ("href", $"{shelved.Folder}index.html"),
            ("photo", PhotoOf(shelved)));
    }

    private static ScriptObject? LogoOf(ShelvedBook shelved) => LogoView.Of(shelved.Book.Maker, shelved.Pictures, shelved.Folder);

    private static ScriptObject? PhotoOf(ShelvedBook shelved) =>
        shelved.Book.Photos.FirstOrDefault(photo => photo.Place == Place.Front) is { } photo
        && shelved.Pictures.TryGetValue(photo.File.Value, out var picture)
            ? View.Of(
                ("src", shelved.Folder + picture.Files[0].Path),
                ("srcset", string.Join(", ", picture.Files.Select(file => $"{shelved.Folder}{file.Path} {file.Width}w"))),
                ("width", picture.Largest.Width),
                ("height", picture.Largest.Height))
            : null;

    private static ImmutableArray<string?> MakersOf(IEnumerable<ShelvedBook> books) =>
        [.. books.Select(shelved => shelved.Book.Maker?.Name.Value).Distinct(StringComparer.Ordinal)];

    private static string TitleOf(IReadOnlyList<ShelvedBook> books, ThemeWords words) =>
        MakersOf(books) is [{ } maker] ? words.Say("shelf_by", ("maker", maker)) : words["shelf"];
}
