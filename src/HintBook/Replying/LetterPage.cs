using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Text;

namespace HintBook.Replying;

/// <summary>What a page that an owner names turns out to be.</summary>
public abstract partial record LetterPage
{
    // As Nearest allows, at most a third of the letters.
    private const int LettersForOneMistake = 3;
    private const int MostNear = 3;

    private LetterPage()
    {
    }

    /// <summary>The name of the page as the book has it, whatever it was called in the letter; null where there is none.</summary>
    public string? Name => this switch
    {
        OfStage stage => stage.Page,
        Gone gone => gone.Page,
        OfNoStage other => other.Page,
        _ => null,
    };

    /// <summary>The page of a stage.</summary>
    /// <param name="Page">The page's name that was found: one of the names of the stage, the one in use where the stage itself was named.</param>
    /// <param name="Id">The stage.</param>
    public sealed record OfStage(string Page, string Id) : LetterPage;

    /// <summary>The page of a stage that the book has no more.</summary>
    /// <param name="Page">The page's name.</param>
    public sealed record Gone(string Page) : LetterPage;

    /// <summary>A page that belongs to no stage, such as the front page.</summary>
    /// <param name="Page">The page's file name.</param>
    public sealed record OfNoStage(string Page) : LetterPage;

    /// <summary>No page and no stage was ever called that.</summary>
    /// <param name="Named">What was named.</param>
    /// <param name="Near">Names that may be meant, the nearest first, each with the title of its stage.</param>
    public sealed record Unknown(string Named, ImmutableArray<(string Name, string Title)> Near) : LetterPage
    {
        /// <summary>The same as a sentence.</summary>
        public string Says => $"No page of this book was ever called “{TerminalText.Shown(Named)}”."
            + (Near.IsEmpty
                ? " A page's name has eight letters and stands on its card; a stage's id or title will do as well."
                : $" Did you mean {Words.List(Near.Select(Called), "or")}?");

        private static string Called((string Name, string Title) near) =>
            TerminalText.Shown(near.Title.Length == 0 ? near.Name : $"{near.Name} (“{near.Title}”)");
    }

    /// <summary>
    /// Finds a page by its name, the newest or any that was ever published, in capitals or with letters that look alike; as a file or a whole
    /// address; or by its stage's id, file or title in any language of the book.
    /// </summary>
    /// <param name="named">What was named.</param>
    /// <param name="known">The book.</param>
    public static LetterPage Find(string named, Examined known)
    {
        var name = BareName(named);
        foreach (var spelled in new[] { name, Mended(name) })
        {
            if (known.Addresses.Names.FirstOrDefault(stage => stage.Value.Contains(spelled)) is { Key: { } id })
                return new OfStage(spelled, id);
            if (known.Addresses.Gone.Contains(spelled))
                return new Gone(spelled);
        }

        if (StageCalled(named.Trim(), known.Book) is { } stage)
            return new OfStage(known.Addresses.Names[stage][0], stage);
        if (known.Kept.Stages.TryGetValue(named.Trim(), out var gone) && gone is [var first, ..])
            return new Gone(first.Value);
        if (IsFront(named, known))
            return new OfNoStage("index.html");
        if (name.Length == 0)
            return named.Contains('/', StringComparison.Ordinal) ? new OfNoStage("index.html") : new Unknown(named.Trim(), []);
        return IsOther(name, known) ? new OfNoStage($"{name}.html") : new Unknown(named.Trim(), NearestTo(name, named.Trim(), known));
    }

    /// <summary>A page's name without what a mail program or a browser puts around it: capitals, a folder, an ending, a fragment.</summary>
    internal static string BareName(string named)
    {
        var path = Around().Replace(named, "").Split('#', '?')[0].TrimEnd('/');
        var last = path[(path.LastIndexOf('/') + 1)..].ToLowerInvariant();
        return last.EndsWith(".html", StringComparison.Ordinal) ? last[..^".html".Length] : last;
    }

    // Crockford's alphabet reads o as 0, and i and l as 1; hyphens stand for nothing (D. Crockford, Base 32, 2002; from memory).
    private static string Mended(string name) =>
        name.Replace("-", "", StringComparison.Ordinal).Replace('o', '0').Replace('i', '1').Replace('l', '1');

    private static string? StageCalled(string named, Book book)
    {
        var id = FileNumber().Replace(Path.GetFileNameWithoutExtension(named.Replace('\\', '/')), "");
        Book[] all = [book, .. book.Translations];
        return all.SelectMany(each => each.Stages)
            .FirstOrDefault(stage => Same(stage.Id.Value, named) || Same(stage.Id.Value, id) || Same(stage.Title.Value, named)
                || stage.Was.Any(was => Same(was.Value, named)))?.Id.Value;

        static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
    }

    private static bool IsOther(string name, Examined known) =>
        name is "index" or "solution" or "reset" or "care" || known.Site.Where.Pages.Any(page => page.File == $"{name}.html") || name == "where";

    // The site's own address, in any of its languages, as browsers and people write it: with or without https:// and the stroke at its end.
    private static bool IsFront(string named, Examined known)
    {
        if (known.Addresses.Base is not { } site)
            return false;
        var front = Bare(site);
        var folders = known.Site.Plan.Languages.Select(language => language.Folder).Append("");
        return folders.Any(folder => Bare(named).Equals($"{front}/{folder}".TrimEnd('/'), StringComparison.OrdinalIgnoreCase));

        static string Bare(string address) => Scheme().Replace(Around().Replace(address, "").Split('#', '?')[0], "").TrimEnd('/');
    }

    private static ImmutableArray<(string Name, string Title)> NearestTo(string name, string named, Examined known)
    {
        var titles = known.Book.Stages.ToDictionary(stage => stage.Id.Value, stage => stage.Title.Value);
        var pages = known.Addresses.Names.SelectMany(stage => stage.Value.Select(page => (Name: page, Title: titles.GetValueOrDefault(stage.Key, ""))));
        var gone = known.Addresses.Gone.Select(page => (Name: page, Title: ""));
        var ids = known.Book.Stages.Select(stage => (Name: stage.Id.Value, Title: stage.Title.Value));
        var near = pages.Concat(gone).Select(page => (page.Name, page.Title, Edits: Nearest.Edits(name, page.Name)))
            .Concat(ids.Select(id => (id.Name, id.Title, Edits: Math.Min(Nearest.Edits(named, id.Name), Nearest.Edits(named, id.Title)))))
            .Where(each => each.Edits <= Math.Max(1, name.Length / LettersForOneMistake))
            .OrderBy(each => each.Edits)
            .ThenBy(each => each.Name, StringComparer.Ordinal);
        return [.. near.Select(each => (each.Name, each.Title)).DistinctBy(each => each.Name).Take(MostNear)];
    }

    [GeneratedRegex(@"^[\s<>""'“”„«»(\[]+|[\s<>""'“”„«».,;:!?)\]]+$", RegexOptions.CultureInvariant)]
    private static partial Regex Around();

    [GeneratedRegex(@"^https?://", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Scheme();

    [GeneratedRegex(@"^\d+-", RegexOptions.CultureInvariant)]
    private static partial Regex FileNumber();
}
