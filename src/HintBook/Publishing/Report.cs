using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json.Serialization;
using HintBook.Audit;
using HintBook.Cards.ReadingBack;
using HintBook.Mechanism;
using HintBook.Print;
using HintBook.Print.Flow;
using HintBook.Publishing.Unchanged;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>Clips that a program cut out of their films.</summary>
/// <param name="All">How many there are.</param>
/// <param name="Now">How many of them were cut now; the others came from the cache.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct CutClips(int All, int Now);

/// <summary>What a publish made and what it checked: each number comes from the work or the check that it names.</summary>
public sealed record Report
{
    /// <summary>The box's title.</summary>
    public required string Book { get; init; }

    /// <summary>The output folder's full path.</summary>
    public required string Folder { get; init; }

    /// <summary>How many books stand on the shelf; 1 for a book by itself.</summary>
    public int Books { get; init; } = 1;

    /// <summary>Whether it is of a shelf, be it of one book: there each book has its cards in a folder of its own.</summary>
    public bool IsShelf { get; init; }

    /// <summary>Whether the book has an address, without which there are no cards.</summary>
    public bool HasAddress { get; init; }

    /// <summary>Whether the cards are proofs, since the address is one for examples.</summary>
    public bool CardsAreProofs { get; init; }

    /// <summary>Whether a card stood in for the key of a sealed book, so that nothing was printed.</summary>
    public bool IsWithCard { get; init; }

    /// <summary>How many stages have a card and no page yet: the site that was published last is older than the cards.</summary>
    public int CardsBeforePages { get; init; }

    /// <summary>
    /// What was compared, where nothing had changed since the last publish: then nothing was made or checked now, and all else is what that publish told.
    /// Null where everything was made and checked now.
    /// </summary>
    [JsonIgnore]
    public Compared? Unchanged { get; init; }

    /// <summary>The folders with pages that lead from an old address to the new one, by the address.</summary>
    public ImmutableSortedDictionary<string, string> Moved { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>How many HTML pages the site has.</summary>
    public required int Pages { get; init; }

    /// <summary>How many photos are in it.</summary>
    public required int Photos { get; init; }

    /// <summary>How many of them had to be developed; the others came from the cache.</summary>
    public required int Developed { get; init; }

    /// <summary>
    /// The clips that ffmpeg cut out of their films. They alone may have other bytes when the same book is published elsewhere, with another
    /// ffmpeg.
    /// </summary>
    public CutClips Clips { get; init; }

    /// <summary>The size of the site, in bytes.</summary>
    public required long SiteBytes { get; init; }

    /// <summary>The cards and how many codes were read back.</summary>
    public required ReadBack Cards { get; init; }

    /// <summary>The files with the sheets of cards, relative to the print folder.</summary>
    public ImmutableArray<string> CardSheets { get; init; } = ["cards.pdf"];

    /// <summary>The papers beside the cards, relative to the folder <c>print</c>.</summary>
    public ImmutableArray<string> Papers { get; init; } = [];

    /// <summary>How many codes on those papers were read back.</summary>
    public PaperReadBack PaperCodes { get; init; } = PaperReadBack.None;

    /// <summary>How well answers under a red filter are seen; null where no booklet with such answers was printed.</summary>
    public FilterContrast? Filter { get; init; }

    /// <summary>What the audit read of the printed files.</summary>
    public PrintReport Print { get; init; } = new(0, 0, []);

    /// <summary>What the audit read.</summary>
    public required AuditReport Audit { get; init; }

    /// <summary>What is claimed of the book, each claim from the pass that looked into it.</summary>
    public required ImmutableArray<BookVerdict> Claims { get; init; }

    /// <summary>Warnings and notes.</summary>
    public required Findings Findings { get; init; }

    /// <summary>
    /// The report as it stands in <c>report.json</c>: nothing of the machine, the folder or the time, so that the same book gives the same
    /// bytes.
    /// </summary>
    internal ReadOnlyMemory<byte> ToJson() => Encoding.UTF8.GetBytes(JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("book", JsonText.Whole(Book));
        json.WriteStartObject("made");
        json.WriteNumber("pages", Pages);
        json.WriteNumber("photos", Photos);
        json.WriteNumber("clipsCut", Clips.All);
        json.WriteNumber("siteBytes", SiteBytes);
        json.WriteNumber("cards", Cards.Cards);
        json.WriteEndObject();
        json.WriteStartObject("checked");
        json.WriteNumber("pagesRead", Audit.Pages);
        json.WriteNumber("linksFollowed", Audit.Links);
        if (Audit.Cards > 0)
        {
            json.WriteNumber("pagesOpened", Audit.Opened);
            json.WriteNumber("cardsOpening", Audit.Cards);
        }

        json.WriteNumber("codesReadFromPictures", Cards.FromPictures);
        json.WriteNumber("codesReadFromPdf", Cards.FromPdf);
        json.WriteEndObject();
        json.WriteStartObject("findings");
        json.WriteNumber("warnings", Findings.Count(Severity.Warning));
        json.WriteNumber("notes", Findings.Count(Severity.Note));
        json.WriteEndObject();
        json.WriteEndObject();
    }));
}
