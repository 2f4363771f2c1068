using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Pages;

namespace HintBook.Publishing;

/// <summary>The pages for every place where the site was before.</summary>
internal static class MovedPages
{
    /// <summary>The folder below <c>moved/</c> for each old address; none where the book has no address that could be led to.</summary>
    public static ImmutableSortedDictionary<string, string> FoldersOf(Examined book) =>
        book.Addresses.Base is not { } now || ExampleHosts.IsExample(now)
            ? ImmutableSortedDictionary<string, string>.Empty
            : book.Kept.Sites.Concat(book.Book.MovedFrom)
                .Select(site => site.Value)
                .Where(site => site != now && !ExampleHosts.IsExample(site))
                .Distinct(StringComparer.Ordinal)
                .ToImmutableSortedDictionary(site => site, MovedSite.FolderOf, StringComparer.Ordinal);

    /// <summary>All of them, relative to <c>moved/</c>.</summary>
    public static ImmutableArray<MadeFile> Build(Examined book)
    {
        var (words, _) = book.Theme.WordsIn(book.Book.Language);
        string[] pages = [.. book.Site.Files.Select(file => file.Path).Where(path => path.EndsWith(".html", StringComparison.Ordinal))];
        var folders = FoldersOf(book).Values.Distinct(StringComparer.Ordinal);
        return [.. folders.SelectMany(folder => MovedSite.Build(folder, book.Addresses.Base!, pages, words, withKeys: book.Sealing is not null))];
    }
}
