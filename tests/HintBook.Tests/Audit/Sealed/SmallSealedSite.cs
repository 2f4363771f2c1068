using System.Text;
using HintBook.Audit;
using HintBook.Audit.Sealed;
using HintBook.Checking;
using HintBook.Publishing;
using HintBook.Sealing;
using HintBook.Starting.Edition;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Audit.Sealed;

/// <summary>The practice book sealed for two copies and published once for all tests of a class, with cards of every kind.</summary>
public sealed class SmallSealedSite : IDisposable
{
    internal const string Id = "the-practice-box";

    private readonly BookAndOutput desk = new();

    public SmallSealedSite()
    {
        var yaml = Path.Combine(desk.Book, "book.yaml");
        string[] others = ["id:", "address:"];
        var lines = File.ReadAllLines(yaml).Where(line => !others.Any(key => line.StartsWith(key, StringComparison.Ordinal)));
        File.WriteAllText(yaml, string.Join('\n', lines) + $"\nid: {Id}\nsealed: true\naddress: https://made.home.arpa/\n");
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n  \"001\": { sold: true }\n  \"002\": { sold: false }\n");
        Assert.Null(new SealedEdition(desk.Book, Id).Complete(["001", "002"], () => Secret, new Random(7).Next).Why);
        var published = desk.Published();
        (Report, Book) = (published.Report, published.Book ?? throw new InvalidOperationException("A book was published."));
    }

    internal Report Report { get; }

    internal Examined Book { get; }

    internal SealedCards Cards => SealedCardTable.Of(Book) ?? throw new InvalidOperationException("The book is sealed.");

    internal AuditTable Table =>
        AuditTables.Build(Book.Book, Book.MayBeSaid, Book.Addresses, Book.Theme, Book.Media.Photos, Book.Site.Where);

    /// <summary>The pages of the stages, by their names.</summary>
    internal string[] Stages => [.. Book.Addresses.Names.Values.Select(names => names[0])];

    internal EpochKeys Epoch => new BookKeys(Secret, Id).Epoch(1);

    internal static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    /// <summary>Audits a copy of the site in which something was changed.</summary>
    /// <param name="change">Is given the folder.</param>
    /// <param name="cards">Other cards than the book's.</param>
    internal AuditReport Changed(Action<string> change, SealedCards? cards = null)
    {
        var copy = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;
        try
        {
            foreach (var file in Directory.EnumerateFiles(desk.Site, "*", SearchOption.AllDirectories))
            {
                var to = Path.Combine(copy, Path.GetRelativePath(desk.Site, file));
                Directory.CreateDirectory(Path.GetDirectoryName(to) ?? copy);
                File.Copy(file, to);
            }

            change(copy);
            return SealedAudit.Run(copy, Table, cards ?? Cards);
        }
        finally
        {
            Directory.Delete(copy, recursive: true);
        }
    }

    /// <summary>Seals a page anew, with another nudge.</summary>
    internal void WriteNudge(string site, string page, string nudge) => Write(site, page, nudge, Epoch.PageKey(page));

    /// <summary>Seals a page anew, with the key of another.</summary>
    internal void SealWith(string site, string page, byte[] key) => Write(site, page, null, key);

    private void Write(string site, string page, string? nudge, byte[] key)
    {
        var file = Path.Combine(site, page + ".html");
        var shell = SealedShell.Read(page + ".html", File.ReadAllText(file)) ?? throw new InvalidOperationException("The page is sealed.");
        var texts = OpenedPage.Of(shell, Epoch.BoxKey, GateKeys.None).Texts ?? [];
        var pieces = shell.Pieces.Zip(texts).Select(piece => new Piece(
            piece.First.Name,
            Padding.Pad(nudge is not null && piece.First.Name == "nudge" ? nudge : piece.Second, piece.First.Closed.Length - 28),
            key));
        var made = SealedPage.Of(Epoch, shell.Language, page, [.. pieces]);
        var html = new StringBuilder(shell.Text).Replace(Convert.ToHexStringLower(shell.Version), Convert.ToHexStringLower(made.Version));
        foreach (var (before, after) in shell.Pieces.Zip(made.Pieces))
            html.Replace(Convert.ToBase64String(before.Closed), Convert.ToBase64String(after.Sealed));
        File.WriteAllText(file, html.ToString());
    }

    public void Dispose() => desk.Dispose();
}
