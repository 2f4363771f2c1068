using System.Globalization;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads which part of a film belongs to a stage, and where a film lives that is elsewhere.</summary>
internal static class Clips
{
    public static Clip? Read(BookFolder folder, YamlMap keys, List<Finding> findings)
    {
        if (keys.Text("from") is not { } from)
            return null;
        var start = TimeIn(from.Value);
        var to = keys.Text("to");
        var end = to is null ? null : TimeIn(to.Value.Value);
        if (end <= start)
            findings.Add(StageFindings.ClipBackwards(to!.Value.At));
        if (start is not { } began)
            return null;
        if (keys.Text("file") is not { } file)
            return keys["file"] is null ? new Clip(null, began, end, keys.At) : null;
        return folder.Find("clips", file, findings) is { } path ? new Clip(file.With(path), began, end, keys.At) : null;
    }

    /// <summary>The address of the book's film, where it lies elsewhere.</summary>
    public static Located<string>? AddressOf(YamlMap book) => (book["film"] as YamlMap)?.Text("address");

    /// <summary>Clips that name no film, in a book that has none elsewhere.</summary>
    /// <param name="book">The book, in all its languages.</param>
    public static IEnumerable<Finding> WithoutFilm(Book book) =>
        book.Translations.Prepend(book)
            .Where(each => each.FilmAddress is null)
            .SelectMany(each => each.Stages)
            .Select(stage => stage.Clip)
            .OfType<Clip>()
            .Where(clip => clip.File is null)
            .Select(clip => clip.At)
            .Distinct()
            .Select(StageFindings.ClipWithoutFilm);

    /// <summary>Addresses of films elsewhere that have no place for the moment, though clips begin at one.</summary>
    /// <param name="book">The book, in all its languages.</param>
    public static IEnumerable<Finding> WithoutMoment(Book book) =>
        book.Translations.Prepend(book)
            .Where(each => each.Stages.Any(stage => stage.Clip is { File: null } clip && clip.From > TimeSpan.Zero))
            .Select(each => each.FilmAddress)
            .OfType<Located<string>>()
            .Where(address => !Clip.HasMoment(address.Value))
            .DistinctBy(address => address.At)
            .Select(StageFindings.FilmWithoutMoment);

    /// <summary>Reads <c>1:02:16.5</c>, <c>2:16</c>, <c>136</c> or <c>136 s</c>; null for anything else.</summary>
    internal static TimeSpan? TimeIn(string written)
    {
        var parts = written.TrimEnd('s', ' ').Split(':');
        var seconds = 0.0;
        foreach (var part in parts)
        {
            if (!double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
                return null;
            seconds = (seconds * 60) + value;
        }

        return seconds < 1e7 ? TimeSpan.FromMilliseconds(Math.Round(seconds * 1000)) : null;
    }
}
