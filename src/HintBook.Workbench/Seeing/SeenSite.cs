using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Pages;

namespace HintBook.Workbench.Seeing;

/// <summary>The reader's site of one state of a book, in any theme. A page is rendered when it is asked for. Thread-safe.</summary>
internal sealed class SeenSite
{
    private readonly Examined book;
    private readonly ConcurrentDictionary<string, Lazy<FrozenDictionary<string, MadeFile>>> themes = new();
    private readonly Lazy<FrozenDictionary<string, string>> media;

    public SeenSite(Examined book)
    {
        this.book = book;
        media = new(MediaFiles);
    }

    /// <summary>The state that is shown.</summary>
    public Examined Book => book;

    /// <summary>The names of the themes it can be seen in, the book's own first.</summary>
    public ImmutableArray<string> Themes => [book.Theme.Name, .. Theme.BuiltInNames.Except([book.Theme.Name])];

    /// <summary>A page, stylesheet or script in some theme; null if the site has none of that path.</summary>
    /// <param name="theme">One of <see cref="Themes"/>.</param>
    /// <param name="path">Relative to the site.</param>
    /// <exception cref="InvalidOperationException">The page's template is broken; the findings say how.</exception>
    public ReadOnlyMemory<byte>? Made(string theme, string path) =>
        Themes.Contains(theme) && themes.GetOrAdd(theme, name => new(() => FilesIn(name))).Value.TryGetValue(path, out var file)
            ? file.Content()
            : (ReadOnlyMemory<byte>?)null;

    /// <summary>
    /// The maker's own photo or film behind a picture or film of the site, as a full path; null if there is none. Browsers turn a photo by
    /// its orientation mark and scale it, so that nothing has to be developed before it is seen.
    /// </summary>
    /// <param name="path">Relative to the site.</param>
    public string? Original(string path) => media.Value.GetValueOrDefault(path);

    private FrozenDictionary<string, MadeFile> FilesIn(string theme)
    {
        var site = theme == book.Theme.Name ? book.Site : Site.Build(book.Site.Plan, Theme.BuiltIn(theme).Theme).Site;
        return site.Files.ToFrozenDictionary(file => file.Path, StringComparer.Ordinal);
    }

    private FrozenDictionary<string, string> MediaFiles()
    {
        var pictures = from photo in book.Media.Photos from picture in photo.Plan.Picture.Files select (picture.Path, photo.File.File.Value);
        var films = from film in book.Media.Films
                    from path in film.Published.Parts.Values.Select(part => part.Path).Append(film.Published.Path)
                    select (path, film.File.Value);
        return pictures.Concat(films)
            .DistinctBy(pair => pair.Item1)
            .ToFrozenDictionary(pair => pair.Item1, pair => Path.Combine(book.Folder.Root, pair.Item2), StringComparer.Ordinal);
    }
}
