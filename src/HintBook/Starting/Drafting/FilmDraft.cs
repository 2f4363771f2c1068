using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Books;

namespace HintBook.Starting.Drafting;

/// <summary>Drafts the stages of a book from what is said in its film.</summary>
public static partial class FilmDraft
{
    /// <summary>The stages, one for each step of the film, behind those that the book has.</summary>
    /// <param name="book">The book, as far as it could be read.</param>
    /// <param name="taken">The names of the files in its folder <c>stages</c>.</param>
    /// <param name="steps">The steps of the film.</param>
    /// <param name="film">The film's name in the folder <c>clips</c>; null where it isn't there.</param>
    public static (ImmutableArray<DraftedStage> Stages, ImmutableArray<NamedThing> Things) Of(
        Book book, IEnumerable<string> taken, ImmutableArray<FilmStep> steps, string? film) =>
        Of(book.Box.Names, book.Language.Value, taken, steps, film, filmIsElsewhere: film is null && book.FilmAddress is not null);

    /// <summary>The stages of a film, one for each of its steps.</summary>
    internal static (ImmutableArray<DraftedStage> Stages, ImmutableArray<NamedThing> Things) Of(
        IEnumerable<Named> declared, string language, IEnumerable<string> taken, ImmutableArray<FilmStep> steps, string? film, bool filmIsElsewhere)
    {
        var known = declared.Select(named => named.Id.Value).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var things = NamedThings.In(steps, language);
        var names = Numbered(taken.ToArray(), steps).ToArray();
        var stages = steps.Index().Select(step => new DraftedStage
        {
            Path = $"stages/{names[step.Index].File}",
            Step = step.Item,
            Film = film,
            FilmIsElsewhere = filmIsElsewhere,
            After = step.Index > 0 ? names[step.Index - 1].Id : null,
            Needs = [.. things.Where(thing => thing.Steps.Contains(step.Index) && thing.Steps[0] < step.Index)],
            Gives = [.. things.Where(thing => thing.Steps[0] == step.Index)],
        });
        return ([.. stages], [.. things.Where(thing => !known.Contains(thing.Id))]);
    }

    private static IEnumerable<(string File, string Id)> Numbered(string[] taken, ImmutableArray<FilmStep> steps)
    {
        var names = taken.Select(name => NumberedName().Match(name)).Where(name => name.Success).ToArray();
        var ids = names.Select(name => name.Groups["id"].Value).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var last = names.Select(name => int.Parse(name.Groups["number"].ValueSpan, CultureInfo.InvariantCulture)).DefaultIfEmpty(0).Max();
        var width = Math.Max(2, (last + steps.Length).ToString(CultureInfo.InvariantCulture).Length);
        foreach (var (index, step) in steps.Index())
        {
            var wanted = IdOf(step);
            var id = Enumerable.Range(1, int.MaxValue).Select(number => number == 1 ? wanted : $"{wanted}-{number}").First(ids.Add);
            yield return ($"{(last + index + 1).ToString(CultureInfo.InvariantCulture).PadLeft(width, '0')}-{id}.md", id);
        }
    }

    private static string IdOf(FilmStep step) =>
        TitleName.Of(step.Title) is { Length: > 0 } name ? name : $"film-{DraftedStage.Moment(step.From).Replace(':', '-')}";

    [GeneratedRegex(@"^(?<number>[0-9]{1,6})-(?<id>.+?)(\.[\p{L}\p{N}]+)+$", RegexOptions.ExplicitCapture)]
    private static partial Regex NumberedName();
}
