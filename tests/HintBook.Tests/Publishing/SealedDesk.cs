using HintBook.Audit.Sealed;
using HintBook.Checking;
using HintBook.Sealing;
using HintBook.Starting.Edition;
using HintBook.Text;

namespace HintBook.Tests.Publishing;

/// <summary>A desk with the practice book, sealed for some copies.</summary>
internal sealed class SealedDesk : IDisposable
{
    public const string Id = "the-practice-box";

    /// <summary>Seals the book.</summary>
    /// <param name="copies">The copies as they stand in <c>copies.yaml</c>: their serials, and what is their own.</param>
    public SealedDesk(params (string Serial, string Keys)[] copies)
    {
        var yaml = Path.Combine(Desk.Book, "book.yaml");
        string[] others = ["id:", "address:"];
        var lines = File.ReadAllLines(yaml).Where(line => !others.Any(key => line.StartsWith(key, StringComparison.Ordinal)));
        File.WriteAllText(yaml, string.Join('\n', lines) + $"\nid: {Id}\nsealed: true\naddress: https://made.home.arpa/\n");
        (string Serial, string Keys)[] all = copies.Length > 0 ? copies : [("001", "sold: true"), ("002", "sold: false")];
        File.WriteAllText(
            Path.Combine(Desk.Book, "copies.yaml"), "copies:\n" + string.Concat(all.Select(copy => $"  \"{copy.Serial}\": {{ {copy.Keys} }}\n")));
        Assert.Null(Edition.Complete(all.Select(copy => copy.Serial), () => Secret, new Random(7).Next).Why);
    }

    public static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    public BookAndOutput Desk { get; } = new();

    public string Site => Desk.Site;

    public SealedEdition Edition => new(Desk.Book, Id);

    public static EpochKeys Epoch => new BookKeys(Secret, Id).Epoch(1);

    /// <summary>Each copy has a number of the lid of its own, with a clue for it.</summary>
    public static (string Serial, string Keys)[] Numbered { get; } =
    [
        ("001", "own: { number: \"2846\", verse: \"two fish, eight crows, four cats, six dogs\" }"),
        ("002", "own: { number: \"5173\", verse: \"five fish, one crow, seven cats, three dogs\" }"),
    ];

    /// <summary>The book whose copies are <see cref="Numbered"/>.</summary>
    /// <param name="copies">Others in their place.</param>
    public static SealedDesk OfNumbered((string Serial, string Keys)[]? copies = null)
    {
        var desk = new SealedDesk(copies ?? Numbered);
        desk.Desk.Change("book.yaml", "answer: \"0420\"", "answer: { copy: number }");
        desk.Desk.Change("book.yaml", "clue: \"zero fish, four crows, two cats, zero dogs\"", "clue: { copy: verse }");
        desk.Desk.Change("stages/02-the-number.md", "*zero fish, four crows, two cats, zero dogs*", "a verse about animals");
        desk.Desk.Change(
            "stages/02-the-number.md", "Zero fish, four crows, two cats, zero dogs. The number is **0420**.", "The number is **{{ copy: number }}**.");
        desk.Desk.Change("stages/03-the-lid.md", "Set **0420** on", "Set your number on");
        return desk;
    }

    /// <summary>Puts a gate before a stage.</summary>
    public SealedDesk With(string gate, string stage = "03-the-lid")
    {
        Desk.Change($"stages/{stage}.md", "\nminutes:", $"\ngate: {gate}\nminutes:");
        return this;
    }

    /// <summary>What is found of gates.</summary>
    public Finding[] Found() =>
        [.. Check.Run(Desk.Book).Findings.All.Where(finding => finding.Code.Id.CompareTo("HB8230") > 0 && finding.Code.Id.CompareTo("HB8239") < 0)];

    /// <summary>The card of a copy for the whole box.</summary>
    public CardInHand BoxCard(string serial = "001") => new(Site, Edition.Codes!.OfBox(Edition.Read().Kept![serial]!));

    /// <summary>The card of a copy for one stage.</summary>
    public CardInHand StageCard(string page, string serial = "001") => new(Site, Edition.Codes!.OfPage(Edition.Read().Kept![serial]!, page));

    /// <summary>Seals a piece of the finished site anew: the same text with another key. All other pieces stay as they are.</summary>
    /// <param name="page">The page on which it stands.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="text">What it says, from <see cref="CardInHand.Piece"/>.</param>
    /// <param name="parent">The key.</param>
    public void Reseal(string page, string piece, string text, byte[] parent)
    {
        var file = Path.Combine(Site, page + ".html");
        var html = File.ReadAllText(file);
        var shell = SealedShell.Read(page + ".html", html)!;
        var closed = shell.Pieces.Single(each => each.Name == piece).Closed;
        var sealedAnew = Seal.Close(parent, shell.ContextOf(new(piece, closed)), Padding.Pad(text, closed.Length - Seal.Overhead));
        File.WriteAllText(file, html.Replace(Convert.ToBase64String(closed), Convert.ToBase64String(sealedAnew), StringComparison.Ordinal));
    }

    /// <summary>Publishes, and gives the pages of the stages by the stages' ids.</summary>
    public Dictionary<string, string> PublishedPages() =>
        Desk.Published().Book!.Addresses.Names.ToDictionary(names => names.Key, names => names.Value[0]);

    public void Dispose() => Desk.Dispose();
}
