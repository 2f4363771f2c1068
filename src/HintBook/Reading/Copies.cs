using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Shapes;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads the copies of an edition, and where a code differs by copy.</summary>
public static class Copies
{
    /// <summary>The file that holds them.</summary>
    public const string FileName = "copies.yaml";

    private const string Key = "copies";

    /// <summary>The copy with a serial; null for none.</summary>
    public static Copy? WithSerial(Book book, string serial) => book.Copies.FirstOrDefault(copy => copy.Serial.Value == serial);

    /// <summary>That no copy has a serial, with a near one.</summary>
    public static string Unknown(Book book, string serial)
    {
        var near = Nearest.To(serial, book.Copies.Select(copy => copy.Serial.Value));
        return $"No copy has the serial “{TerminalText.Shown(serial)}”." + (near is null ? "" : $" Did you mean “{TerminalText.Shown(near)}”?");
    }

    /// <summary>The name in <c>{ copy: name }</c>, or null for anything else.</summary>
    internal static Located<string>? NameIn(YamlNode? node) => (node as YamlMap)?.Text("copy");

    /// <summary>The copies in the author's order: of <c>copies.yaml</c>, or of the table in <c>book.yaml</c>, as books had it before.</summary>
    internal static ImmutableArray<Copy> In(BookFolder folder, YamlMap book, OwnWords own, List<Finding> findings)
    {
        var table = book.Entries.FirstOrDefault(entry => entry.Key.Value == Key)?.Key;
        if (folder.SizeOf(FileName) is null)
        {
            if (table is not null)
                findings.Add(CopyFindings.InTheBook(table.Located));
            return [.. book.Named(Key).Select(copy => new Copy(copy.Name, Values(copy.Keys)))];
        }

        if (table is not null)
            findings.Add(CopyFindings.InTwoPlaces(table.Located));
        return folder.ReadText(FileName, findings) is { } file ? In(file, own, findings) : [];
    }

    /// <summary>The copies in a text of that file.</summary>
    /// <param name="file">The text.</param>
    /// <param name="findings">Where findings go.</param>
    public static ImmutableArray<Copy> In(SourceFile file, List<Finding> findings) => In(file, OwnWords.Unknown, findings);

    /// <summary>
    /// Where the keys of a copy begin in a text of that file: right behind the brace of <c>{ … }</c>, or at the first key below its serial.
    /// Null where the copy has no keys or isn't there.
    /// </summary>
    public static (int At, bool InBraces)? KeysOf(SourceFile file, string serial)
    {
        if (YamlFile.Read(file.Whole, []) is not YamlMap map
            || map[Key] is not YamlMap copies
            || copies[serial] is not YamlMap { Entries: [var first, ..] } keys)
            return null;
        var inBraces = file.Text[keys.At.Start] == '{';
        return (inBraces ? keys.At.Start + 1 : first.Key.At.Start, inBraces);
    }

    private static ImmutableArray<Copy> In(SourceFile file, OwnWords own, List<Finding> findings)
    {
        if (YamlFile.Read(file.Whole, findings) is not { } node)
            return [];
        ShapeCheck.Fits(node, BookShapes.Copies, FileName, own, findings);
        if (node is not YamlMap map)
            return [];
        return
        [
            .. from copy in map.Named(Key)
               select new Copy(copy.Name, copy.Keys["own"] is YamlMap values ? Values(values) : [])
               {
                   Sold = copy.Keys.Flag("sold"),
                   Retired = copy.Keys.Flag("retired"),
                   Language = copy.Keys.Text("language"),
                   Note = copy.Keys.Text("note"),
               },
        ];
    }

    private static ImmutableArray<CopyValue> Values(YamlMap copy) =>
    [
        .. from entry in copy.Entries
           where entry.Value is YamlScalar { IsEmpty: false }
           select new CopyValue(entry.Key.Located, ((YamlScalar)entry.Value).Located),
    ];
}
