using HintBook.Cards.ReadingBack;
using HintBook.Publishing;
using HintBook.Tests.Photos;
using HintBook.Text;

namespace HintBook.Tests.Publishing;

/// <summary>Cards that haven't changed are neither made nor read again; what is taken instead was read from the same bytes.</summary>
public class CardCacheTests
{
    private static readonly Work[] OfCards = [Work.MakePdf, Work.MakePicture, Work.DevelopForPaper, Work.DecodePicture, Work.DecodePdf];

    [Fact]
    public void Of_an_unchanged_book_no_card_is_made_or_read_again_and_the_files_are_the_same()
    {
        using var desk = WithPhoto();
        var (first, did) = Publish(desk);
        var files = BookAndOutput.Tree(Print(desk));
        Assert.Equal(OfCards.Order(), did.Keys.Select(each => each.Work).Distinct().Order());
        Assert.Equal((0, 0), (first.KeptFromPictures, first.KeptFromPdf));

        var (second, didAgain) = Publish(desk);

        Assert.Empty(didAgain);
        Assert.Equal(first with { KeptFromPictures = first.Cards, KeptFromPdf = first.Cards }, second);
        Assert.Equal(files, BookAndOutput.Tree(Print(desk)));
    }

    [Fact]
    public void What_the_next_publish_takes_stays_there_for_the_one_after_it()
    {
        using var desk = WithPhoto();
        Publish(desk);
        desk.Change("book.yaml", "\ntitle:", "\ntitle: Another Name for");
        Publish(desk);
        Assert.Empty(Publish(desk).Did);
    }

    // A front has no code. The sheet of backs is the same, byte for byte.
    [Fact]
    public void A_changed_title_of_the_book_makes_the_sheets_and_reads_no_code()
    {
        using var desk = WithPhoto();
        Publish(desk);
        desk.Change("book.yaml", "\ntitle:", "\ntitle: Another Name for");

        var (readBack, did) = Publish(desk);

        Assert.Contains((Work.MakePdf, "cards.pdf"), did.Keys);
        Assert.DoesNotContain(did.Keys, each => each.Work is not Work.MakePdf);
        Assert.True(readBack.All);
        Assert.Equal(readBack.Cards, readBack.KeptFromPdf);
    }

    [Fact]
    public void A_stage_under_another_name_has_its_card_alone_made_and_read()
    {
        using var desk = new BookAndOutput();
        Publish(desk);
        File.Delete(Path.Combine(desk.Book, AddressListFile));
        File.Delete(Path.Combine(desk.Output, AddressListFile));
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-the-figures.md"));

        var (readBack, did) = Publish(desk);

        Assert.True(readBack.All);
        Assert.Single(did.Keys, each => each.Work == Work.MakePicture);
        Assert.Single(did.Keys, each => each.Work == Work.DecodePicture);
        Assert.Single(did.Keys, each => each.Work == Work.DecodePdf);
        Assert.Equal((readBack.Cards - 1, readBack.Cards - 1), (readBack.KeptFromPictures, readBack.KeptFromPdf));
    }

    [Fact]
    public void The_cards_alone_are_taken_too()
    {
        using var desk = new BookAndOutput();
        Publish(desk);
        var log = new WorkLog();
        Assert.IsType<Published>(Pipeline.PrintCards(desk.Book, desk.Options with { Work = log }));
        Assert.Empty(OfCardsIn(log));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void A_damaged_file_in_the_cache_is_noticed_and_every_code_read_again(double at)
    {
        using var desk = new BookAndOutput();
        Publish(desk);
        var files = BookAndOutput.Tree(Print(desk));
        var kept = Path.Combine(desk.Output, ".hintbook", "cache", "cards.kept");
        var bytes = File.ReadAllBytes(kept);
        bytes[(int)(at * (bytes.Length - 1))] ^= 1;
        File.WriteAllBytes(kept, bytes);

        var (readBack, _) = Publish(desk);

        Assert.Equal((0, 0), (readBack.KeptFromPictures, readBack.KeptFromPdf));
        Assert.True(readBack.All);
        Assert.Equal(files, BookAndOutput.Tree(Print(desk)));
    }

    private const string AddressListFile = "kept-addresses.txt";

    private static (ReadBack ReadBack, Dictionary<(Work Work, string What), int> Did) Publish(BookAndOutput desk)
    {
        desk.ForgetLastPublish();
        var log = new WorkLog();
        return (desk.Published(desk.Options with { Work = log }).Report.Cards, OfCardsIn(log));
    }

    private static Dictionary<(Work Work, string What), int> OfCardsIn(WorkLog log) =>
        log.Times.Where(did => OfCards.Contains(did.Key.Work)).ToDictionary();

    private static string Print(BookAndOutput desk) => Path.Combine(desk.Output, "print");

    private static BookAndOutput WithPhoto()
    {
        var desk = new BookAndOutput();
        Directory.CreateDirectory(Path.Combine(desk.Book, "photos"));
        File.WriteAllBytes(Path.Combine(desk.Book, "photos", "box.jpg"), Shots.Jpeg(900, 600));
        desk.Change("book.yaml", "\ntitle:", "\nphoto: { file: box.jpg, alt: The box }\ntitle:");
        return desk;
    }
}
