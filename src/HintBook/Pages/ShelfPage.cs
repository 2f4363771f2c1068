using HintBook.Books;
using HintBook.Photos;
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
    /// <param name="books">The books in the order of the shelf, at least one; the first says which language the page speaks.</param>
    /// <param name="theme">How it looks.</param>
    public static IReadOnlyCollection<MadeFile> Build(IReadOnlyList<ShelvedBook> books, Theme theme)
    {
        var renderer = new TemplateRenderer(theme);
        return
        [
            .. theme.Assets.Values.Select(asset => new MadeFile(asset.Path, () => asset.Content)),
            new MadeFile("index.html", () => renderer.Print(Template, Names(books, theme))),
        ];
    }

    private static ScriptObject Names(IReadOnlyList<ShelvedBook> books, Theme theme)
    {
        var (words, _) = theme.WordsIn(books[0].Book.Language);
        var title = TitleOf(books, words);
        return View.Of(
            ("site", View.Of(
                ("title", title),
                ("language", words.Language),
                ("dir", TextDirection.Of(words.Language)),
                ("key", null),
                ("root", ""),
                ("policy", LanguageSite.Policy),
                ("preview", title),
                ("preview_image", null),
                ("maker", null))),
            ("page", View.Of(
                ("kind", "shelf"), ("title", title), ("name", null), ("canonical", null), ("indexed", true), ("help", null), ("languages", null))),
            ("words", View.Words(words)),
            ("assets", View.Assets(theme, root: "")),
            ("boxes", View.List(books.Select(Box))));

        ScriptObject Box(ShelvedBook shelved) => View.Of(
            ("title", shelved.Book.Title.Value),
            ("language", shelved.Book.Language.Value),
            ("href", $"{shelved.Folder}index.html"),
            ("photo", shelved.Book.Photos.FirstOrDefault(photo => photo.Place == Place.Front) is { } photo
                && shelved.Pictures.TryGetValue(photo.File.Value, out var picture)
                ? View.Of(
                    ("src", shelved.Folder + picture.Files[0].Path),
                    ("width", picture.Files[0].Width),
                    ("height", picture.Files[0].Height),
                    ("alt", photo.Alt?.Value ?? words["photo_without_alt"]))
                : null));
    }

    private static string TitleOf(IReadOnlyList<ShelvedBook> books, ThemeWords words) =>
        books.Select(shelved => shelved.Book.Maker?.Name.Value).Distinct(StringComparer.Ordinal).ToArray() is [{ } maker]
            ? words.Say("shelf_by", ("maker", maker))
            : words["shelf"];
}
