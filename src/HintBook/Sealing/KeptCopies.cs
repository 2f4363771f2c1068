using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Text;

namespace HintBook.Sealing;

/// <summary>What is kept of one copy, so that its card opens every later publish.</summary>
/// <param name="Serial">Its serial.</param>
/// <param name="Number">Its slot, 0 to 32,767. Drawn by chance: it says neither serial nor order.</param>
/// <param name="Issue">The how-manieth card of the copy it is, from 1.</param>
/// <param name="Retired">Whether it opens nothing any more. Its number isn't given to another copy.</param>
public sealed record KeptCopy(string Serial, int Number, int Issue, bool Retired = false);

/// <summary>
/// What a sealed book keeps of its copies beside their own file. No keys stand in it. Chance is asked by <see cref="With"/> alone, so that a publish of the
/// same files gives the same bytes.
/// </summary>
public sealed record KeptCopies
{
    /// <summary>Its file in the book's folder.</summary>
    public const string FileName = "kept-copies.txt";

    /// <summary>The most copies that a book can have.</summary>
    public const int Most = CardCode.LargestNumber + 1;

    private const string Heading =
        """
        # Kept by HintBook. Keep this file with the book: printed cards open the help by what stands here. It holds no keys.
        # A copy has the number of its slot, the issue of its card, and its serial.

        """;

    /// <summary>What names the book in the open, 16 hexadecimal digits.</summary>
    public required string Tag { get; init; }

    /// <summary>From 1; one more whenever a card is to open nothing that is published afterwards.</summary>
    public int Epoch { get; init; } = 1;

    /// <summary>Slots in a table; it only grows, so that a number never loses its place.</summary>
    public int Room { get; init; } = Slots.RoomFor(0);

    /// <summary>The copies in the order of their serials' coming.</summary>
    public ImmutableArray<KeptCopy> Copies { get; init; } = [];

    /// <summary>The copy with a serial; null for one without a number.</summary>
    public KeptCopy? this[string serial] => Copies.FirstOrDefault(copy => copy.Serial == serial);

    /// <summary>Gives a free number to each of these serials that has none.</summary>
    /// <param name="serials">The serials.</param>
    /// <param name="below">Gives a random number from 0, below the number it is given.</param>
    /// <exception cref="ArgumentException">That would be more than <see cref="Most"/>.</exception>
    public KeptCopies With(IEnumerable<string> serials, Func<int, int> below)
    {
        var known = Copies.Select(copy => copy.Serial).ToHashSet(StringComparer.Ordinal);
        var fresh = serials.Where(known.Add).ToArray();
        if (Copies.Length + fresh.Length > Most)
            throw new ArgumentException($"A book can have {Most} copies.", nameof(serials));
        var room = Math.Max(Room, Slots.RoomFor(Copies.Length + fresh.Length));
        var free = Enumerable.Range(0, room).Except(Copies.Select(copy => copy.Number)).ToList();
        var added = ImmutableArray.CreateBuilder<KeptCopy>(fresh.Length);
        foreach (var serial in fresh)
        {
            var drawn = below(free.Count);
            added.Add(new(serial, free[drawn], 1));
            free.RemoveAt(drawn);
        }

        return this with { Room = room, Copies = [.. Copies, .. added] };
    }

    /// <summary>A copy opens nothing that is published from now on; all other cards work on.</summary>
    public KeptCopies Retire(string serial) => Changed(serial, copy => copy with { Retired = true });

    /// <summary>A copy gets another card, and the one before opens nothing that is published from now on.</summary>
    public KeptCopies Reissue(string serial) => Changed(serial, copy => copy with { Issue = copy.Issue + 1 });

    /// <summary>What was remembered or saved of the help opens nothing that is published from now on; all cards work on.</summary>
    public KeptCopies Rotate() => this with { Epoch = Epoch + 1 };

    /// <summary>The text of the file.</summary>
    public string ToText()
    {
        var text = new StringBuilder(Heading);
        text.Append(CultureInfo.InvariantCulture, $"book {Tag}\nepoch {Epoch}\nroom {Room}\n");
        foreach (var copy in Copies)
            text.Append(CultureInfo.InvariantCulture, $"{(copy.Retired ? "retired" : "copy")} {copy.Number} {copy.Issue} {copy.Serial}\n");
        return text.ToString();
    }

    /// <summary>Reads the file.</summary>
    /// <param name="file">Its text.</param>
    /// <param name="findings">Where a line is told that can't be read, or that contradicts another.</param>
    /// <returns>Null where the file isn't whole: then nothing may be published, lest a printed card fails.</returns>
    public static KeptCopies? Read(SourceFile file, List<Finding> findings)
    {
        var kept = new KeptCopies { Tag = "" };
        var before = findings.Count;
        foreach (var line in KeptLines.In(file))
        {
            if (Read(line, kept) is { } more)
                kept = more;
            else
                findings.Add(SealingFindings.KeptLine(line));
        }

        if (findings.Count == before && kept.Tag.Length == 0)
            findings.Add(SealingFindings.KeptIsCut(file));
        return findings.Count == before ? kept : null;
    }

    private static KeptCopies? Read(KeptLine line, KeptCopies kept) => line.Word switch
    {
        "book" when line.Rest.Length == 16 && line.Rest.All(char.IsAsciiHexDigitLower) => kept with { Tag = line.Rest },
        "epoch" when Number(line.Rest) is { } epoch and > 0 => kept with { Epoch = epoch },
        "room" when Number(line.Rest) is { } room and > 0 && Slots.RoomFor(room) == room => kept with { Room = room },
        "copy" or "retired" when CopyIn(line) is { } copy && Fits(copy, kept) => kept with { Copies = kept.Copies.Add(copy) },
        _ => null,
    };

    private static KeptCopy? CopyIn(KeptLine line) =>
        line.Rest.Split(' ', 3) is [var number, var issue, { Length: > 0 } serial] && Number(number) is { } slot && Number(issue) is { } card and > 0
            ? new(serial, slot, card, line.Word == "retired")
            : null;

    private static bool Fits(KeptCopy copy, KeptCopies kept) =>
        copy.Number < kept.Room && kept.Copies.All(other => other.Number != copy.Number && other.Serial != copy.Serial);

    private static int? Number(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private KeptCopies Changed(string serial, Func<KeptCopy, KeptCopy> change) =>
        Rotate() with { Copies = [.. Copies.Select(copy => copy.Serial == serial ? change(copy) : copy)] };
}
