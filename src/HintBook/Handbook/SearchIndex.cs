using System.Collections.Immutable;
using System.Text.Json;
using System.Text.RegularExpressions;
using HintBook.Spoilers.ReadingLevels;

namespace HintBook.Handbook;

/// <summary>What can be found in the handbook: for the script the text of each section, without a script the words of all headings from A to Z.</summary>
/// <param name="Places">Every section, in reading order.</param>
internal sealed partial record SearchIndex(ImmutableArray<Place> Places)
{
    private const int ShortestWord = 3;

    // A heading that so many pages have leads nowhere: each finding's page has “A book that has it”.
    private const int MostAlike = 5;

    private static readonly HashSet<string> NotLookedFor = new(
        [
            "and", "are", "but", "can", "does", "for", "from", "has", "how", "its", "look", "not", "one", "that", "the", "their", "them", "then", "there",
            "they", "this", "two", "was", "what", "when", "where", "which", "who", "why", "will", "with", "without", "you", "your",
        ],
        StringComparer.Ordinal);

    /// <summary>The sections as JSON that may stand in a page: <c>[["title","address","text"]]</c>.</summary>
    public string Json => JsonSerializer.Serialize(Places.Select(place => new[] { place.Title, place.Address, place.Text }));

    /// <summary>The words of headings, each with the places whose own headings have it.</summary>
    public IEnumerable<(string Word, ImmutableArray<Place> Places)> Words =>
        from place in Places.GroupBy(place => place.Heading, StringComparer.Ordinal).Where(alike => alike.Count() < MostAlike).SelectMany(alike => alike)
        from word in Word().Matches(place.Heading).Select(found => found.Value.ToLowerInvariant()).Distinct(StringComparer.Ordinal)
        where word.Length >= ShortestWord && !NotLookedFor.Contains(word)
        group place by word into found
        orderby found.Key
        select (found.Key, found.ToImmutableArray());

    public static IEnumerable<Place> PlacesOf(HandbookPage page) =>
        from section in page.Sections
        select new Place(
            section.Title is null ? page.Title : $"{page.Title}: {section.Title}",
            section.Anchor is null ? page.File : $"{page.File}#{section.Anchor}",
            string.Join(' ', PlainText.Blocks(section.Markdown)))
        {
            Heading = section.Title ?? page.Title,
        };

    [GeneratedRegex(@"\p{L}[\p{L}\p{N}-]*")]
    private static partial Regex Word();
}

/// <summary>A place that a search can lead to.</summary>
/// <param name="Title">What it is about.</param>
/// <param name="Address">Its page, and the place on it.</param>
/// <param name="Text">What is read there.</param>
internal sealed record Place(string Title, string Address, string Text)
{
    /// <summary>The heading that stands there, without the page's own.</summary>
    public string Heading { get; init; } = Title;
}
