using System.Globalization;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads which part of a film belongs to a stage.</summary>
internal static class Clips
{
    public static Clip? Read(BookFolder folder, YamlMap keys, List<Finding> findings)
    {
        if (keys.Text("file") is not { } file || keys.Text("from") is not { } from)
            return null;
        var start = TimeIn(from.Value);
        var to = keys.Text("to");
        var end = to is null ? null : TimeIn(to.Value.Value);
        if (end <= start)
            findings.Add(StageFindings.ClipBackwards(to!.Value.At));
        return start is { } began && folder.Find("clips", file, findings) is { } path
            ? new Clip(file.With(path), began, end, keys.At)
            : null;
    }

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
