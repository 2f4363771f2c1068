using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>The front page of several books: what anyone sees on the closed boxes, and a way to each.</summary>
public static class ShelfPage
{
    private const string Template = "shelf.html";

    /// <summary>The page, one more for each box that has several editions, and the files of the theme that they need.</summary>
    /// <param name="books">The books in the order of the shelf, at least one.</param>
    /// <param name="theme">How it looks.</param>
    public static IReadOnlyCollection<MadeFile> Build(IReadOnlyList<ShelvedBook> books, Theme theme)
    {
        var renderer = new TemplateRenderer(theme);
        var (words, _) = theme.WordsIn(LanguageOf(books));
        var boxes = Editions.Of(books);
        return
        [
            .. theme.Assets.Where(asset => !Theme.IsOpener(asset.Key)).Select(asset => new MadeFile(asset.Value.Path, () => asset.Value.Content)),
            new MadeFile("index.html", () => renderer.Print(Template, All(boxes, books, theme, words))),
            .. from box in boxes
               where box.Books.Length > 1
               select new MadeFile(box.Page, () => renderer.Print(Template, Asking(box, books, theme, words))),
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

    private static ScriptObject Names(
        IReadOnlyList<ShelvedBook> books, Theme theme, ThemeWords words, string title, IEnumerable<ScriptObject> boxes, ScriptObject? asks = null)
    {
        var site = TitleOf(books, words);
        return View.Of(
            ("site", View.Of(
                ("title", site),
                ("language", words.Language),
                ("dir", TextDirection.Of(words.Language)),
                ("key", null),
                ("root", ""),
                ("seal", null),
                ("policy", LanguageSite.Policy),
                ("preview", site),
                ("preview_image", null),
                ("maker", null),
                ("logo", IsOneMakers(books) ? books.Select(LogoOf).FirstOrDefault(logo => logo is not null) : null))),
            ("page", View.Of(
                ("kind", "shelf"), ("title", title), ("name", null), ("canonical", null), ("way", null), ("indexed", true), ("help", null),
                ("languages", null))),
            ("words", View.Words(words)),
            ("assets", View.Assets(theme, root: "")),
            ("asks", asks),
            ("boxes", View.List(boxes)));
    }

    private static ScriptObject All(IEnumerable<EditionsOfBox> boxes, IReadOnlyList<ShelvedBook> books, Theme theme, ThemeWords words) =>
        Names(books, theme, words, TitleOf(books, words), boxes.Select(box => Way(box, books, words)));

    // Which of a box's editions is it? Anyone may ask: only what shows on the closed boxes stands here.
    private static ScriptObject Asking(EditionsOfBox box, IReadOnlyList<ShelvedBook> books, Theme theme, ThemeWords words) => Names(
        books,
        theme,
        words,
        words["which_box"],
        box.Books.Select(shelved => Box(shelved, books)),
        View.Of(("by_serial", box.Books.Any(shelved => Editions.SerialsOf(shelved.Book) is not []))));

    private static ScriptObject Way(EditionsOfBox box, IReadOnlyList<ShelvedBook> books, ThemeWords words)
    {
        var view = Box(box.Books[0], books);
        if (box.Books.Length == 1)
            return view;
        view["href"] = box.Page;
        view["line"] = words["which_box"];
        view["serials"] = null;
        return view;
    }

    private static ScriptObject Box(ShelvedBook shelved, IReadOnlyList<ShelvedBook> books) => View.Of(
        ("title", shelved.Book.Title.Value),
        ("line", shelved.Book.Shelf?.Line?.Value),
        ("maker", IsOneMakers(books) ? null : shelved.Book.Maker?.Name.Value),
        ("language", shelved.Book.Language.Value),
        ("dir", TextDirection.Of(shelved.Book.Language.Value)),
        ("href", $"{shelved.Folder}index.html"),
        ("serials", Editions.SerialsOf(shelved.Book) is { Length: > 0 } serials ? string.Join(' ', serials.Select(SerialDigest.Of)) : null),
        ("photo", PhotoOf(shelved)));

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

    private static bool IsOneMakers(IReadOnlyList<ShelvedBook> books) => MakersOf(books) is [{ }];

    private static ImmutableArray<string?> MakersOf(IEnumerable<ShelvedBook> books) =>
        [.. books.Select(shelved => shelved.Book.Maker?.Name.Value).Distinct(StringComparer.Ordinal)];

    private static string TitleOf(IReadOnlyList<ShelvedBook> books, ThemeWords words) =>
        MakersOf(books) is [{ } maker] ? words.Say("shelf_by", ("maker", maker)) : words["shelf"];
}
