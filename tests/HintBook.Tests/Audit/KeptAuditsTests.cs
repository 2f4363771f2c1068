using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Cards.Codes;

namespace HintBook.Tests.Audit;

/// <summary>What an earlier audit read counts for the very bytes and the very table that it was read with, and for nothing else.</summary>
public class KeptAuditsTests
{
    private const string Box = "https://alder-row.example/beekeeper/";

    private static readonly AuditTable Secrets = Table.Of(Table.Name("queen clip"), Table.Code("5173")) with
    {
        PrintedPages = ImmutableDictionary<string, int>.Empty.Add("cards.pdf", 2),
        Booklets =
        [
            new()
            {
                File = "booklet.pdf",
                Language = "en",
                FirstPage = 2,
                NumberSize = 20,
                SaidOfEmpty = "Nothing",
                Entries = ImmutableDictionary<int, AuditEntry>.Empty.Add(3, new(Table.Set(2, 0), null)),
                Apart = [(3, 4), (1, 2)],
            },
        ],
    };

    private readonly Dictionary<string, byte[]> cache = new(StringComparer.Ordinal);

    [Fact]
    public void The_same_file_is_read_once()
    {
        Assert.Equal(0, Audit(Secrets, Code(Box)).Kept);
        Assert.Equal(1, Audit(Secrets, Code(Box)).Kept);
    }

    [Fact]
    public void A_file_with_other_bytes_is_read_and_its_faults_are_found()
    {
        Audit(Secrets, Code(Box));
        var changed = Audit(Secrets, Code("https://alder-row.example/beekeeper/?queen-clip"));
        Assert.Equal(0, changed.Kept);
        Assert.NotEmpty(changed.Faults);
    }

    [Fact]
    public void A_fault_is_found_each_time()
    {
        var faults = Audit(Secrets, Code("The queen clip")).Faults;
        Assert.NotEmpty(faults);
        var again = Audit(Secrets, Code("The queen clip"));
        Assert.Equal(0, again.Kept);
        Assert.Equal(faults, again.Faults);
    }

    // Where a code leads depends on the site and on the table's own list, not on the file.
    [Fact]
    public void A_kept_code_that_leads_nowhere_any_more_is_a_fault()
    {
        var tray = Box + "a7k2.html";
        Assert.Empty(Audit(Secrets, Code(tray)).Faults);
        var gone = Audit(Secrets, Code(tray), site: "elsewhere");
        Assert.Equal(1, gone.Kept);
        Assert.Contains("no page of the site", Assert.Single(gone.Faults).Message, StringComparison.Ordinal);
    }

    private static ImmutableDictionary<int, AuditEntry> OtherEntries => Secrets.Booklets[0].Entries.SetItem(3, new(Table.Set(2), null));

    public static TheoryData<string, AuditTable> OtherTables => new()
    {
        { "a secret more", Secrets with { Secrets = Secrets.Secrets.Add(Table.Name("hive")) } },
        { "another spelling", Secrets with { Secrets = Secrets.Secrets.SetItem(0, Table.Name("queen clip", "clip")) } },
        { "a spelling of a language", Secrets with { Secrets = Secrets.Secrets.SetItem(1, new("5173", [new("5173") { Language = "de" }])) } },
        { "what anyone may know", Secrets with { Outside = Table.Set(2, 1) } },
        { "what a page may say", Secrets with { Pages = [Secrets.Pages[0] with { Shown = Table.Set(2, 1) }] } },
        { "a fold", Secrets with { Pages = [Secrets.Pages[0] with { Folds = Secrets.Pages[0].Folds.SetItem("nudge", Table.Set(2, 1)) }] } },
        { "the address", Secrets with { Address = "https://elsewhere.example/" } },
        { "the language", Secrets with { Language = "de" } },
        { "what an entry may say", Secrets with { Booklets = [Secrets.Booklets[0] with { Entries = OtherEntries }] } },
        { "two entries apart", Secrets with { Booklets = [Secrets.Booklets[0] with { Apart = Secrets.Booklets[0].Apart.Add((5, 6)) }] } },
        { "a length", Secrets with { Booklets = [Secrets.Booklets[0] with { NumberSize = 20.5 }] } },
        { "a clue", Secrets with { Clues = [new("clues/x.pdf", "x", 0, false)] } },
        { "a code", Secrets with { PrintedCodes = Secrets.PrintedCodes.Add("qr/box.png", [Box]) } },
    };

    [Theory]
    [MemberData(nameof(OtherTables))]
    public void With_another_table_it_is_read_again(string what, AuditTable other)
    {
        Audit(Secrets, Code(Box));
        Assert.True(Audit(other, Code(Box)).Kept == 0, what);
    }

    // A digest can't depend on the order in which a dictionary was filled.
    [Fact]
    public void An_equal_table_put_together_in_another_order_has_the_same_digest()
    {
        var words = Enumerable.Range(0, 50).Select(i => $"word{i}").ToArray();
        Assert.Equal(
            TableDigest.Of(Secrets with { Digests = words.ToImmutableDictionary(word => word, word => word) }),
            TableDigest.Of(Secrets with { Digests = words.Reverse().ToImmutableDictionary(word => word, word => word) }));
    }

    private static byte[] Code(string says) => QrImages.Png(QrMatrix.Encode(says)!, 0.5);

    private PrintReport Audit(AuditTable table, byte[] png, string? site = null)
    {
        using var good = Site.Good();
        var print = Path.Combine(good.Folder, "print");
        Directory.CreateDirectory(Path.Combine(print, "qr"));
        File.WriteAllBytes(Path.Combine(print, "qr", "box.png"), png);
        return PrintAudit.Run(print, site ?? good.Folder, table, new(key => cache.GetValueOrDefault(key), (key, content) => cache[key] = content));
    }
}
