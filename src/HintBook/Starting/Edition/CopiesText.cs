using System.Collections.Immutable;
using System.Text;
using HintBook.Books;
using HintBook.Reading;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Starting.Edition;

/// <summary>Changes the text of <c>copies.yaml</c> and leaves everything else in it as it is: remarks, order, line ends.</summary>
public static class CopiesText
{
    private const string Heading =
        "# yaml-language-server: $schema=./schemas/copies.schema.json\n#\n"
        + "# The boxes of this edition by their serials. “hintbook copies” adds to it; you may write in it as well.\n"
        + "# What stands under “own” opens that box: keep this file to yourself.\ncopies:\n";

    /// <summary>The text with more copies at its end.</summary>
    /// <param name="text">The text as it is; null where there is no file yet.</param>
    /// <param name="copies">What comes to it.</param>
    /// <returns>The new text; null where it isn't written line by line, so that nothing can be put behind it.</returns>
    public static string? With(string? text, IEnumerable<NewCopy> copies)
    {
        var added = new StringBuilder(text ?? Heading);
        if (added[^1] != '\n')
            added.Append('\n');
        foreach (var copy in copies)
            added.Append(Written(copy));
        var changed = LikeIn(text, added.ToString());
        return IsTextWith(changed, text, copies) ? changed : null;
    }

    /// <summary>The text with a copy marked as retired.</summary>
    /// <returns>The new text; null where the place for it can't be found.</returns>
    public static string? Retired(string text, string serial)
    {
        var file = new SourceFile(Copies.FileName, text);
        if (Copies.KeysOf(file, serial) is not var (at, inBraces))
            return null;
        var indent = new string(' ', file.PlaceOf(at).Column - 1);
        var changed = LikeIn(text, text.Insert(at, inBraces ? " retired: true," : $"retired: true\n{indent}"));
        return Read(text) is { } before
            && Read(changed) is { } after
            && before.Select(copy => copy.Serial.Value == serial ? copy with { Retired = true } : copy).Select(Said).SequenceEqual(after.Select(Said))
                ? changed
                : null;
    }

    /// <summary>The lines of a copy, as they stand in the file.</summary>
    public static string Written(NewCopy copy)
    {
        var text = new StringBuilder($"  \"{copy.Serial}\":");
        if (copy.Own.IsEmpty)
            return text.Append(" { sold: false }\n").ToString();
        text.Append("\n    own:\n");
        foreach (var (name, value) in copy.Own)
            text.Append($"      {name}: {Quoting.Escaped(value)}\n");
        return text.ToString();
    }

    private static string LikeIn(string? text, string changed) => text?.Contains("\r\n", StringComparison.Ordinal) == true
        ? changed.ReplaceLineEndings("\r\n")
        : changed;

    private static bool IsTextWith(string changed, string? text, IEnumerable<NewCopy> copies)
    {
        return (text is null ? [] : Read(text)) is { } before
            && Read(changed) is { } after
            && before.Select(Said).Concat(copies.Select(Said)).SequenceEqual(after.Select(Said));
    }

    private static ImmutableArray<Copy>? Read(string text)
    {
        var findings = new List<Finding>();
        var copies = Copies.In(new SourceFile(Copies.FileName, text), findings);
        return findings.Exists(finding => finding.IsError) ? null : copies;
    }

    private static string Said(NewCopy copy) => Said(copy.Serial, false, false, copy.Own);

    private static string Said(Copy copy) =>
        Said(copy.Serial.Value, copy.Sold, copy.Retired, copy.Values.Select(value => (value.Name.Value, value.Value.Value))) + copy.Language + copy.Note;

    private static string Said(string serial, bool sold, bool retired, IEnumerable<(string Name, string Value)> own) =>
        $"{serial} {sold} {retired} {string.Join('\u0001', own.Select(one => $"{one.Name}\u0002{one.Value}"))}";
}
