using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads what is told of the positions of a part: their words, whether they show on the closed box, and their photos.</summary>
internal static class PositionWords
{
    /// <summary>What a part's keys tell of its positions, by their ids; nothing where they are a list or a range.</summary>
    /// <param name="folder">The book's folder, for the photos.</param>
    /// <param name="part">The keys of the part, or of its translation.</param>
    /// <param name="findings">Where findings go.</param>
    public static ImmutableDictionary<string, PositionDetails> In(BookFolder folder, YamlMap? part, List<Finding> findings) =>
        part?["positions"] is YamlMap map && !DialPositions.IsRange(map)
            ? map.Entries.DistinctBy(entry => entry.Key.Value)
                .ToImmutableDictionary(entry => entry.Key.Value, entry => Details(folder, entry.Value, part.Flag("seen"), findings))
            : ImmutableDictionary<string, PositionDetails>.Empty;

    /// <summary>The same in another language: what isn't translated stays.</summary>
    public static ImmutableDictionary<string, PositionDetails> Translated(
        Part part, ImmutableDictionary<string, PositionDetails> texts) => part.Details.SetItems(
            from text in texts
            where part.Positions.Contains(text.Key)
            let own = part.Details.GetValueOrDefault(text.Key) ?? new PositionDetails { Seen = part.Seen }
            select KeyValuePair.Create(text.Key, own with { Says = text.Value.Says ?? own.Says, Photo = text.Value.Photo ?? own.Photo }));

    private static PositionDetails Details(BookFolder folder, YamlNode written, bool seen, List<Finding> findings) => written switch
    {
        YamlMap keys => new()
        {
            Says = keys.Text("says"),
            Seen = keys["seen"] is null ? seen : keys.Flag("seen"),
            Photo = Pictures.OfPosition(folder, keys, findings),
        },
        YamlScalar { Value.Length: > 0 } says => new() { Says = says.Located, Seen = seen },
        _ => new() { Seen = seen },
    };
}
