using System.Collections.Immutable;
using System.Globalization;
using HintBook.Audit;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Audit.Elsewhere;

/// <summary>
/// A book of secrets and sentences by people who haven't read the audit. Its form: <c>= id | class | spelling; spelling</c> for each secret, a line of
/// three hyphens, then <c>classes | ids or a hyphen | text</c>, in which ⏎ breaks a line; the class is <c>riddle</c> where the author says that no word of the
/// secret stands in the text.
/// </summary>
/// <param name="Name">The file's.</param>
/// <param name="Language">The last part of its name.</param>
/// <param name="Secrets">What is hidden.</param>
/// <param name="Sentences">What a reader learns from each.</param>
internal sealed record BookOfSentences(
    string Name, string Language, ImmutableArray<Hidden> Secrets, ImmutableArray<(string[] Told, string Text, bool IsRiddle)> Sentences)
{
    /// <summary>The books of one half, those that the source is measured with as well first; none if no folder is there.</summary>
    public static ImmutableArray<BookOfSentences> Of(string half) => [.. In("Spoilers", half), .. In("Audit", half)];

    private static IEnumerable<BookOfSentences> In(string room, string half)
    {
        var folder = Path.Combine(Where.Tests, room, "Elsewhere", half);
        return Directory.Exists(folder) ? Directory.GetFiles(folder, "*.*.txt").Where(IsBook).Order(StringComparer.Ordinal).Select(Read) : [];
    }

    private static bool IsBook(string file) => !Path.GetFileName(file).StartsWith("fragments", StringComparison.Ordinal);

    private static BookOfSentences Read(string file)
    {
        var name = Path.GetFileNameWithoutExtension(file);
        var lines = File.ReadLines(file).Where(line => line.Length > 0 && line[0] != '#').ToArray();
        var cut = Array.IndexOf(lines, "---");
        return new(
            name,
            Path.GetExtension(name)[1..],
            [.. lines[..cut].Select(Hidden.Read)],
            [
                .. from line in lines[(cut + 1)..]
                   let cells = line.Split('|', 3, StringSplitOptions.TrimEntries)
                   select (cells[1] == "-" ? [] : cells[1].Split(", "), cells[2], cells[0] == "riddle"),
            ]);
    }

    /// <summary>The table of an audit in which nobody may know anything.</summary>
    public AuditTable Table =>
        HintBook.Tests.Audit.Table.Of([.. Secrets.Select(secret => secret.Sought)]) with { Language = Language, Pages = [], Free = [] };
}

/// <summary>A secret of such a book.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Kind">Its class: <c>name</c>, <c>everyday</c>, <c>figures</c>, <c>time</c> or <c>letters</c>.</param>
/// <param name="Spellings">How it is spelt.</param>
internal sealed record Hidden(string Id, string Kind, ImmutableArray<string> Spellings)
{
    /// <summary>Reads a line.</summary>
    public static Hidden Read(string line)
    {
        var cells = line[1..].Split('|', StringSplitOptions.TrimEntries);
        return new(cells[0], cells[1], [.. cells[2].Split("; ")]);
    }

    /// <summary>The secret as publishing hands it to the audit.</summary>
    public AuditSecret Sought => new(Id, [.. Spellings.SelectMany(Spelt)]);

    // A time that is spelt in words stands there in figures too.
    private IEnumerable<AuditSpelling> Spelt(string spelling) => Kind switch
    {
        "name" => [new(spelling)],
        "everyday" => [new(spelling, SpelledAs.Thing, Sure: false)],
        "time" => TimeOnly.TryParse(spelling, CultureInfo.InvariantCulture, out _) ? [new(spelling, SpelledAs.Time)] : [],
        "letters" => [new(spelling, SpelledAs.Symbols), new(spelling, SpelledAs.Letters)],
        _ => [new(spelling, SpelledAs.Symbols)],
    };
}
