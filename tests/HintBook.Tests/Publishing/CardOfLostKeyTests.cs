using HintBook.Cli;
using HintBook.Publishing;
using HintBook.Sealing;
using HintBook.Starting.Edition;
using HintBook.Tests.Cli;

namespace HintBook.Tests.Publishing;

/// <summary>The key of a sealed book is lost: with the card of one of its boxes its texts can be corrected, and nothing else can be changed.</summary>
public sealed class CardOfLostKeyTests : IDisposable
{
    private const string Id = "the-practice-box";
    private const string Corrected = "Corrected: look more closely.";

    private readonly BookAndOutput desk = new();
    private readonly KeptCopies kept;
    private readonly CopyCodes codes;
    private readonly string[] pages;

    public CardOfLostKeyTests()
    {
        var yaml = Path.Combine(desk.Book, "book.yaml");
        string[] others = ["id:", "address:"];
        var lines = File.ReadAllLines(yaml).Where(line => !others.Any(key => line.StartsWith(key, StringComparison.Ordinal)));
        File.WriteAllText(yaml, string.Join('\n', lines) + $"\nid: {Id}\nsealed: true\naddress: https://made.home.arpa/\n");
        Copies("  \"001\": { sold: true }\n  \"002\": { sold: false }\n");
        var edition = new SealedEdition(desk.Book, Id);
        Assert.Null(edition.Complete(["001", "002"], () => Secret, new Random(7).Next).Why);
        (kept, codes) = (edition.Read().Kept!, edition.Codes!);
        pages = [.. desk.Published().Book!.Addresses.Names.Values.Select(names => names[0])];
    }

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_text_is_corrected_every_card_opens_it_and_tables_and_print_stay_as_they_were()
    {
        var (tables, print) = (BookAndOutput.Tree(Path.Combine(desk.Site, "k")), BookAndOutput.Tree(Path.Combine(desk.Output, "print")));
        Lose();
        Correct();

        var report = desk.Published(With(codes.OfBox(kept["001"]!))).Report;

        Assert.Equal(tables, BookAndOutput.Tree(Path.Combine(desk.Site, "k")));
        Assert.Equal(print, BookAndOutput.Tree(Path.Combine(desk.Output, "print")));
        Assert.Equal(1, report.Audit.Cards);
        Assert.True(report.Audit.Opened >= pages.Length);
        CardCode[] boxes = [codes.OfBox(kept["001"]!), codes.OfBox(kept["002"]!)];
        Assert.All(boxes, card => Assert.Contains(pages, page => new CardInHand(desk.Site, card).Piece(page, "nudge")!.Contains(Corrected)));
        Assert.All(pages, page => Assert.NotNull(new CardInHand(desk.Site, codes.OfPage(kept["002"]!, page)).Piece(page, "nudge")));
        Assert.False(File.Exists(Path.Combine(desk.Book, KeyFile.FileName)));
    }

    [Fact]
    public void What_is_published_with_a_card_is_what_the_key_would_publish()
    {
        Correct();
        desk.Published();
        var withKey = BookAndOutput.Tree(desk.Site);
        Lose();

        desk.Published(With(codes.OfBox(kept["002"]!)));

        Assert.Equal(withKey, BookAndOutput.Tree(desk.Site));
    }

    [Fact]
    public void A_file_of_copies_that_is_lost_as_well_keeps_no_text_from_being_corrected()
    {
        Lose();
        File.Delete(Path.Combine(desk.Book, KeptCopies.FileName));
        Correct();

        desk.Published(With(codes.OfBox(kept["001"]!)));

        Assert.Contains(pages, page => new CardInHand(desk.Site, codes.OfBox(kept["002"]!)).Piece(page, "nudge")!.Contains(Corrected));
    }

    [Fact]
    public void What_lies_behind_a_gate_needs_the_key()
    {
        Lose();
        var stage = Directory.EnumerateFiles(Path.Combine(desk.Book, "stages")).First();
        File.WriteAllText(stage, "---\ngate: farmyard\n" + File.ReadAllText(stage)[4..]);

        var said = Said.By("publish", desk.Book, "--out", desk.Output, "--with-card", $"{codes.OfBox(kept["001"]!)}");

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("has a gate, and what lies behind a gate is sealed with the lost key", said.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    public static TheoryData<string, string> Cards => new()
    {
        { "of one stage", "one stage" },
        { "of another book", "doesn't open the site" },
        { "of another issue", "doesn't open the site" },
        { "with another number", "doesn't open the site" },
        { "mistyped", "isn't right" },
        { "too short", "31 letters, and a card has 32" },
    };

    [Theory]
    [MemberData(nameof(Cards))]
    public void A_card_that_does_not_do_is_told_without_its_letters_and_nothing_changes(string which, string says)
    {
        Lose();
        Correct();
        var before = BookAndOutput.Tree(desk.Output);
        var letters = LettersOf(which);

        var said = Said.By("publish", desk.Book, "--out", desk.Output, "--with-card", letters);

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains(says, said.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        AssertSilent(said, letters);
        Assert.Equal(before, BookAndOutput.Tree(desk.Output));
    }

    [Fact]
    public void The_letters_may_be_typed_in_groups_and_stand_neither_on_the_screen_nor_in_a_file()
    {
        Lose();
        Correct();
        var code = codes.OfBox(kept["001"]!);

        var said = Said.By(["publish", desk.Book, "--out", desk.Output, "--with-card", .. code.ToGroups().Split(' ')]);

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Contains("as it was", said.Out, StringComparison.Ordinal);
        AssertSilent(said, $"{code}");
        string[] files = [.. Directory.EnumerateFiles(desk.Site, "*", SearchOption.AllDirectories), Path.Combine(desk.Output, "report.json")];
        Assert.All(files, file => Assert.DoesNotContain($"{code}", File.ReadAllText(file), StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain($"{code}", $"{With(code)}", StringComparison.OrdinalIgnoreCase);
    }

    public static TheoryData<string, string> Changes => new()
    {
        { "a new copy", "Copy 003 in copies.yaml is new" },
        { "a retired copy", "Copy 002 in copies.yaml is to be retired" },
        { "a value of its own", "What copy 001 has of its own" },
        { "a new stage", "is new, and no card of it can be made" },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void What_needs_the_key_is_told_and_nothing_is_published(string change, string says)
    {
        Lose();
        var before = BookAndOutput.Tree(desk.Output);
        Change(change);

        var failed = Assert.IsType<Failed>(desk.Publish(With(codes.OfBox(kept["001"]!))));

        Assert.Equal(FailureKind.Usage, failed.Kind);
        Assert.Contains(says, failed.Message, StringComparison.Ordinal);
        Assert.Contains("--restore", failed.Help, StringComparison.Ordinal);
        Assert.Equal(before, BookAndOutput.Tree(desk.Output));
    }

    [Fact]
    public void All_that_needs_the_key_is_told_at_once()
    {
        Lose();
        Copies("  \"001\": { sold: true }\n  \"002\": { retired: true }\n  \"003\": { sold: false }\n");

        var failed = Assert.IsType<Failed>(desk.Publish(With(codes.OfBox(kept["001"]!))));

        Assert.Contains("Copy 002", failed.Message, StringComparison.Ordinal);
        Assert.Contains("Copy 003", failed.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_key_is_there_no_card_is_wanted()
    {
        var failed = Assert.IsType<Failed>(desk.Publish(With(codes.OfBox(kept["001"]!))));

        Assert.Contains("The book has its key", failed.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_site_was_published_there_is_nothing_to_open()
    {
        Lose();

        var failed = Assert.IsType<Failed>(desk.Publish(With(codes.OfBox(kept["001"]!)) with { Output = Path.Combine(desk.Root, "elsewhere") }));

        Assert.Contains("no sealed site", failed.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_that_is_found_again_publishes_as_before()
    {
        Lose();
        Correct();
        desk.Published(With(codes.OfBox(kept["001"]!)));

        Assert.Equal(ExitCode.Fine, Said.By("copies", desk.Book, "--restore", Secret.ToGroups()).Exit);

        Assert.Equal(2 * (pages.Length + 1), desk.Published().Report.Audit.Cards);
    }

    private static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    private PublishOptions With(CardCode code) => desk.Options with { WithCard = new($"{code}") };

    private void Lose() => File.Delete(Path.Combine(desk.Book, KeyFile.FileName));

    private void Correct() => desk.Change(Path.GetRelativePath(desk.Book, desk.StageFile), "# Nudge\n", $"# Nudge\n{Corrected}\n\n");

    private void Copies(string lines) => File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n" + lines);

    private void Change(string what)
    {
        if (what == "a new copy")
            Copies("  \"001\": { sold: true }\n  \"002\": { sold: false }\n  \"003\": { sold: false }\n");
        else if (what == "a retired copy")
            Copies("  \"001\": { sold: true }\n  \"002\": { retired: true }\n");
        else if (what == "a value of its own")
            Copies("  \"001\": { sold: true, own: { number: \"12345\" } }\n  \"002\": { sold: false, own: { number: \"54321\" } }\n");
        else
        {
            File.WriteAllLines(
                Path.Combine(desk.Book, "stages", "04-the-scratch.yaml"),
                [
                    "title: The scratch", "sign: You wonder about a scratch.", "red-herring: true",
                    "nudge: Has it changed?", "clue: It is old.", "answer: It is nothing.",
                ]);
        }
    }

    private string LettersOf(string which)
    {
        var copy = kept["001"]!;
        var code = codes.OfBox(copy);
        return which switch
        {
            "of one stage" => $"{codes.OfPage(copy, pages[0])}",
            "of another book" => $"{new CopyCodes(new(new byte[BookSecret.Length]), Id).OfBox(copy)}",
            "of another issue" => $"{codes.OfBox(copy with { Issue = 2 })}",
            "with another number" => $"{new CardCode(CardKind.WholeBox, copy.Number == 5 ? 6 : 5, code.Key)}",
            "mistyped" => $"{code}"[..9] + ($"{code}"[9] == '7' ? 'X' : '7') + $"{code}"[10..],
            _ => $"{code}"[1..],
        };
    }

    private static void AssertSilent(Said said, string letters)
    {
        foreach (var group in letters.Chunk(4).Where(group => group.Length == 4).Select(group => new string(group)))
            Assert.DoesNotContain(group, said.Out + said.Error, StringComparison.Ordinal);
    }
}
