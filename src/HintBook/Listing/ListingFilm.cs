using HintBook.Pages;
using HintBook.Photos.Films;

namespace HintBook.Listing;

/// <summary>The words below a film of the whole solution: the warning first, where help without the rest is, then the chapters.</summary>
internal static class ListingFilm
{
    /// <summary>The text for each film in one language, by a name for its file.</summary>
    /// <param name="plan">The book in that language.</param>
    /// <param name="words">The words of that language.</param>
    public static IEnumerable<(string Name, string Text)> Of(SitePlan plan, ThemeWords words)
    {
        var files = plan.Book.Stages.Select(stage => stage.Clip?.File?.Value).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        var films = files.Select(file => (string?)file).Concat(plan.Book.FilmAddress is null ? [] : new string?[] { null })
            .Select(film => (Film: film, Chapters: Chapters.List(plan.Book, film, null)))
            .Where(film => !film.Chapters.IsEmpty)
            .ToArray();
        return films.Select((film, i) => (
            films.Length == 1 ? "film" : $"film-{i + 1}",
            string.Join("\n\n", Paragraphs(plan, words)) + "\n\n" + Chapters.Plain(film.Chapters)));
    }

    private static IEnumerable<string> Paragraphs(SitePlan plan, ThemeWords words)
    {
        yield return words["listing_film"];
        yield return plan.Book.Title.Value;
        if (plan.Addresses.Base is { } address)
            yield return $"{words["solution_instead"]}\n{address}";
        yield return words["film_chapters"];
    }
}
