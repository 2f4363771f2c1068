using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads which photos stand where; only those whose file is there are kept.</summary>
internal static class Pictures
{
    private static readonly (string Key, Place Place)[] Places =
    [
        ("sign", Place.Sign),
        ("nudge", Place.Nudge),
        ("clue", Place.Clue),
        ("answer", Place.Answer),
        ("reset", Place.Reset),
    ];

    public static ImmutableArray<Photo> OfStage(BookFolder folder, YamlMap stage, List<Finding> findings) =>
        stage["photos"] is YamlMap photos
            ? [.. Places.SelectMany(place => At(folder, photos[place.Key], place.Place, findings))]
            : [];

    public static ImmutableArray<Photo> OfBook(BookFolder folder, YamlMap book, List<Finding> findings) =>
        [.. At(folder, book["photo"], Place.Front, findings)];

    /// <summary>The maker's mark, or null. What it shows is the maker's name.</summary>
    public static Photo? LogoOf(BookFolder folder, YamlMap maker, List<Finding> findings) =>
        At(folder, maker["logo"] as YamlScalar, Place.Logo, findings).Select(photo => photo with { Alt = maker.Text("name") }).FirstOrDefault();

    /// <summary>The photo of a position of a part, or null.</summary>
    public static Photo? OfPosition(BookFolder folder, YamlMap position, List<Finding> findings) =>
        At(folder, position["photo"], Place.Position, findings).FirstOrDefault();

    private static IEnumerable<Photo> At(BookFolder folder, YamlNode? node, Place place, List<Finding> findings) =>
        from item in node is YamlList list ? list.Items : node is null ? [] : [node]
        let file = item is YamlMap keys ? keys.Text("file") : (item as YamlScalar)?.Located
        where file is not null
        let path = folder.Find("photos", file.Value, findings)
        where path is not null
        select Read(item as YamlMap, file.Value.With(path), place);

    private static Photo Read(YamlMap? keys, Located<string> file, Place place) => new()
    {
        File = file,
        Place = place,
        Alt = keys?.Text("alt"),
        Shows = keys?.Texts("shows") ?? [],
        Marks = keys is null ? [] : [.. keys.Maps("marks").Select(Mark).OfType<Mark>()],
    };

    private static Mark? Mark(YamlMap keys) =>
        keys.Text("says") is { } says && keys.Items("at").Select(Keys.NumberIn).ToArray() is [{ } x, { } y]
            ? new Mark(x, y, says)
            : null;
}
