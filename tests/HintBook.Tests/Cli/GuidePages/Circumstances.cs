using HintBook.Cards.Codes;
using HintBook.Publishing.Films;
using HintBook.Reading;
using HintBook.Tests.Cards;

namespace HintBook.Tests.Cli.GuidePages;

/// <summary>
/// What pages about findings may ask for that lies around the book and not in it:
/// a line of the table brings it about (see <see cref="Wording"/>).
/// </summary>
internal static class Circumstances
{
    private static readonly (string Line, Func<Wording, Circumstance> How)[] All =
    [
        ("there is no folder of the name that was given", _ => new() { Named = book => book + "-that-is-not-there" }),
        ("book.yaml was given instead of the folder", _ => new() { Named = book => Path.Combine(book, "book.yaml") }),
        ("the book's folder can't be written", _ => new() { After = KeepFromWriting }),
        ("the book was published before these changes", _ => new() { Before = (book, output) => Fine("publish", book, "--out", output) }),
        ("the book has its own copy of the theme …", told => new() { Before = (book, _) => Fine("theme", book, told.Text(0)) }),
        ("the line that begins with “…” stands # times in …",
            told => new() { After = book => Repeat(told.Text(0), told.Number(1), Path.Combine(book, told.Text(2))) }),
        // A check only asks whether it is there; a publish finds nothing to start.
        ("ffmpeg can be called from a terminal", _ => new() { FilmTools = new("/nowhere/ffmpeg", "/nowhere/ffprobe") }),
        ("ffmpeg can be called from a terminal, and reads no film", _ => new() { FilmTools = new("/nowhere/ffmpeg", "/nowhere/ffprobe") }),
        ("a card's code is damaged while it is made", _ => new() { Card = code => SpoiltCards.Flipped(code, every: 3) }),
        ("a card's code is made for another address", _ => new() { Card = _ => QrMatrix.Encode("https://other.example/")! }),
    ];

    public static Circumstance Of(string line)
    {
        foreach (var (asked, how) in All)
        {
            if (Wording.Of(line, asked) is { } told)
                return how(told);
        }

        throw new InvalidOperationException($"Nothing brings about “{line}”. There is: {string.Join("; ", All.Select(each => each.Line))}.");
    }

    private static void Fine(params string[] command) => Assert.Equal(0, Said.By(command).Exit);

    // A folder of that name can't be replaced by a file, whoever tries; rights on files don't keep everybody out.
    private static void KeepFromWriting(string book) => Directory.CreateDirectory(Path.Combine(book, AddressList.FileName, "in-the-way"));

    private static void Repeat(string beginning, int times, string path)
    {
        var lines = File.ReadAllLines(path)
            .SelectMany(line => Enumerable.Repeat(line, line.TrimStart().StartsWith(beginning, StringComparison.Ordinal) ? times : 1))
            .ToArray();
        Assert.True(lines.Length >= times, $"No line of {path} begins with “{beginning}”.");
        File.WriteAllLines(path, lines);
    }
}

/// <summary>Something around a book.</summary>
internal sealed record Circumstance
{
    /// <summary>Done with the shared book (its folder, and where it will be published) before the page's files are written over it.</summary>
    public Action<string, string> Before { get; init; } = (_, _) => { };

    /// <summary>Done with the page's book, in its folder.</summary>
    public Action<string> After { get; init; } = _ => { };

    /// <summary>What is typed as the book's name, from its folder.</summary>
    public Func<string, string> Named { get; init; } = book => book;

    /// <summary>The programs that cut films; null where there are none.</summary>
    public FilmTools? FilmTools { get; init; }

    /// <summary>What becomes of a card's code while the cards are printed; null where they are printed as they should be.</summary>
    public Func<QrMatrix, QrMatrix>? Card { get; init; }
}
