using System.Collections;
using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Audit;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Print.Booklets;
using HintBook.Print.Flow;
using HintBook.Tests.Cards;
using HintBook.Tests.Publishing;
using UglyToad.PdfPig;

namespace HintBook.Tests.Print;

/// <summary>The booklet of hints, read from its finished file as its reader does: by the large numbers, and by what an entry says of others.</summary>
public partial class BookletTests
{
    private static readonly Lazy<byte[]> Pdf = new(() => PaperPdf.Write("Hints", "en", Booklet.Set(PrintedBooks.Example, large: false, Veil.Upright).Pages));

    // ISO 216: A6 is 105 × 148 mm, A5 148 × 210 mm.
    [Theory]
    [InlineData(false, 105, 148)]
    [InlineData(true, 148, 210)]
    public void Its_pages_are_of_the_size_that_was_asked_for(bool large, double width, double height)
    {
        var pdf = PaperPdf.Write("Hints", "en", Booklet.Set(PrintedBooks.Example, large, Veil.Upright).Pages);
        using var document = PdfDocument.Open(pdf);

        Assert.Equal(0, document.NumberOfPages % 4);
        Assert.All(document.GetPages().Select(PdfMeasure.Size), size =>
            Assert.True(Math.Abs(size.Width - width) < 0.1 && Math.Abs(size.Height - height) < 0.1));
    }

    [Fact]
    public void From_the_first_question_every_entry_is_found_by_following_numbers()
    {
        var entries = Entries();
        var (found, open) = (new HashSet<int> { 1 }, new Queue<int>([1]));
        while (open.TryDequeue(out var number))
        {
            foreach (var next in Numbers(entries[number].Text).Where(found.Add))
                open.Enqueue(next);
        }

        Assert.Empty(entries.Keys.Except(found));
    }

    [Fact]
    public void No_entry_is_seen_with_one_of_its_own_stage_or_of_a_stage_beside_it()
    {
        var (entries, stages) = (Entries(), StageOfEntries());
        Assert.Equal(3 * PrintedBooks.Examined.Book.Stages.Length, stages.Count);
        var survey = PrintedBooks.Examined.Survey;
        var seen =
            from one in stages
            from other in stages
            where one.Key != other.Key && entries[one.Key].Pages.Any(page => entries[other.Key].Pages.Any(another => Math.Abs(page - another) <= 1))
            where one.Value == other.Value || survey.Stages[one.Value].OpensAfter.Any(each => each.Contains(other.Value))
            select (one, other);
        Assert.Empty(seen);
    }

    [Fact]
    public void A_number_that_opens_a_lock_is_given_to_no_entry()
    {
        Assert.Contains(PrintedBooks.Examined.Book.Box.Codes, code => code.Answer.Value == "14");
        Assert.DoesNotContain(14, Entries().Keys);
        // Beside a text that speaks of backwards it would be read from its end.
        Assert.DoesNotContain(41, Entries().Keys);
    }

    // The booklet is turned once, and no step is parted from its picture.
    [Fact]
    public void An_answer_with_its_photos_stands_on_one_page()
    {
        var turned = WithPhotos().SelectMany(page => page.Pieces.SelectMany(placed => placed.Piece.Things.OfType<HintBook.Cards.PrintedTurned>())).ToArray();

        Assert.Contains(turned, answer => answer.Things.OfType<PrintedPhoto>().Any());
        Assert.Equal(PrintedBooks.Examined.Book.Stages.Length, turned.Length);
    }

    // The clue of the five wheels has two photos and a long text.
    [Fact]
    public void Two_photos_stand_beside_each_other_where_the_entry_fits_its_page_then()
    {
        var row = Assert.Single(
            WithPhotos().SelectMany(page => page.Pieces).Select(placed => placed.Piece.Things.OfType<PrintedPhoto>().ToArray()),
            photos => photos.Length > 1);

        Assert.Equal(row[0].Place.Height, row[1].Place.Height);
        Assert.True(row[0].Place.Right < row[1].Place.X);
        Assert.InRange(row[1].Place.Right, 0, 85);
        Assert.True(row[0].Place.Height >= 31);
    }

    private static System.Collections.Immutable.ImmutableArray<PaperPage> WithPhotos() =>
        Booklet.Set(PrintedBooks.Example with { Picture = _ => [0] }, large: false, Veil.UpsideDown).Pages;

    [Fact]
    public void The_dangers_of_a_stage_stand_before_the_entry_that_leads_to_them_and_in_it()
    {
        var (entries, words) = (Entries(), PrintedBooks.Example.Words);
        foreach (var stage in PrintedBooks.Examined.Book.Stages.Where(stage => !stage.Cautions.IsEmpty))
        {
            var nudge = entries.Values.Single(entry =>
                entry.Text.Contains(Bare(stage.Sign.Value), StringComparison.Ordinal) && !entry.Text.Contains('→', StringComparison.Ordinal));
            var answer = entries[Numbers(entries[Numbers(nudge.Text)[0]].Text)[0]];
            Assert.All(stage.Cautions, caution => Assert.Contains(Bare(words.NameOf(caution.Kind)), nudge.Text, StringComparison.Ordinal));
            Assert.All(stage.Cautions, caution => Assert.StartsWith(Bare(words.NameOf(stage.Cautions[0].Kind)), answer.Text, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData(nameof(Veil.Mirrored))]
    [InlineData(nameof(Veil.UpsideDown))]
    public void Veiled_answers_run_the_other_way(string name)
    {
        var veil = Enum.Parse<Veil>(name);
        using var document = PdfDocument.Open(PaperPdf.Write("Hints", "en", Booklet.Set(PrintedBooks.Example, large: false, veil).Pages));
        var letters = document.GetPages().SelectMany(page => page.Letters).Where(letter => letter.EndBaseLine.X < letter.StartBaseLine.X - 0.1).ToArray();
        var text = string.Concat(letters.Select(letter => letter.Value));

        // The word for the drawer stands in an answer, and among the words that run the other way.
        Assert.Contains("CLOVER", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Formore", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_book_gives_the_same_bytes() =>
        Assert.Equal(Pdf.Value, PaperPdf.Write("Hints", "en", Booklet.Set(PrintedBooks.Example, large: false, Veil.Upright).Pages));

    [Fact]
    public void A_book_of_one_stage_has_pages_that_are_left_empty_and_nothing_is_seen_together()
    {
        using var desk = new BookAndOutput();
        foreach (var stage in Directory.EnumerateFiles(Path.Combine(desk.Book, "stages")).Order().Skip(1))
            File.Delete(stage);
        var book = Check.Run(desk.Book) switch
        {
            Sound sound => sound.Examined,
            Faulty { Examined: { } examined } => examined,
            _ => throw new InvalidOperationException("nothing is known of the book"),
        };

        var booklet = Booklet.Set(PrintedBooks.Of(book));

        Assert.True(booklet.LeftEmpty >= 2);
    }

    [Fact]
    public void The_audit_finds_entries_that_stand_beside_each_other_after_all()
    {
        var booklet = PrintedBooks.Hints;
        // Every second page taken out: what stood apart now stands side by side.
        var first = booklet.FirstPage - 1;
        var closer = booklet.Pages.Where((_, i) => i < first || (i - first) % 2 == 0).Concat(booklet.Pages.Where((_, i) => i >= first && (i - first) % 2 == 1));

        Assert.Contains(Audit(booklet, closer), fault => fault.Message.Contains("who reads one sees the other", StringComparison.Ordinal));
        Assert.DoesNotContain(Audit(booklet, booklet.Pages), fault => fault.Message.Contains("who reads one sees the other", StringComparison.Ordinal));
    }

    [Fact]
    public void The_audit_finds_an_entry_that_is_missing() => Assert.Contains(
        Audit(PrintedBooks.Hints, PrintedBooks.Hints.Pages[..^8]),
        fault => fault.Message.Contains("isn't in the booklet", StringComparison.Ordinal));

    [Fact]
    public void The_audit_finds_what_an_entry_may_not_tell()
    {
        var booklet = PrintedBooks.Hints;
        var page = booklet.Pages[booklet.FirstPage];
        var told = page with { Pieces = page.Pieces.Add(new(12, 120, new Piece(4, [new PrintedText(0, 3, "A heron waits.", default, 3, Tone.Ink)]))) };

        var faults = Audit(booklet, booklet.Pages.SetItem(booklet.FirstPage, told));
        var fault = Assert.Single(faults, fault => fault.Secret is not null && fault.Message.Contains("entry", StringComparison.Ordinal));

        Assert.Contains("heron", fault.Message, StringComparison.Ordinal);
    }

    private static ImmutableArray<AuditFault> Audit(SetBooklet booklet, IEnumerable<PaperPage> pages)
    {
        var entries = booklet.Entries.Zip(booklet.Numbers).ToArray();
        var folder = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;
        try
        {
            File.WriteAllBytes(Path.Combine(folder, "booklet.pdf"), PaperPdf.Write("Hints", "en", pages));
            return PrintAudit.Run(folder, null, new()
            {
                Secrets = [new("heron", [new("heron")])],
                Outside = new BitArray(1),
                Booklets =
                [
                    new()
                    {
                        File = "booklet.pdf",
                        Language = "en",
                        FirstPage = booklet.FirstPage,
                        NumberSize = booklet.NumberSize * 72 / 25.4,
                        SaidOfEmpty = booklet.SaidOfEmpty,
                        Entries = entries.ToImmutableDictionary(each => each.Second, _ => new AuditEntry(new BitArray(1), null)),
                        Apart =
                        [
                            .. from one in entries
                               from other in entries
                               where one.Second < other.Second && !one.First.IsQuestion && one.First.Stages[0] == other.First.Stages.FirstOrDefault()
                               select (one.Second, other.Second),
                        ],
                    },
                ],
            }).Faults;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // By the sign of a stage its first entry is found, by “see” the others.
    private static Dictionary<int, string> StageOfEntries()
    {
        var entries = Entries();
        var of = new Dictionary<int, string>();
        foreach (var stage in PrintedBooks.Examined.Book.Stages)
        {
            var nudge = entries.Single(entry => entry.Value.Text.Contains(Bare(stage.Sign.Value), StringComparison.Ordinal)
                && !entry.Value.Text.Contains('→', StringComparison.Ordinal)).Key;
            var clue = Numbers(entries[nudge].Text)[0];
            foreach (var number in new[] { nudge, clue, Numbers(entries[clue].Text)[0] })
                of.Add(number, stage.Id.Value);
        }

        return of;
    }

    private static string Bare(string text) => Blanks().Replace(text, "");

    private static int[] Numbers(string text) =>
        [.. SeenNumber().Matches(text).SelectMany(match => match.Groups["number"].Captures).Select(number => int.Parse(number.Value))];

    // The number of an entry is set 1.75 times as large as the text, which is 2.9 mm: over 13 points, where nothing else in digits alone is.
    private static Dictionary<int, (string Text, List<int> Pages)> Entries()
    {
        using var document = PdfDocument.Open(Pdf.Value);
        var entries = new Dictionary<int, (string Text, List<int> Pages)>();
        var (number, started) = (0, PrintedBooks.Hints.FirstPage);
        foreach (var page in document.GetPages().Where(page => page.Number >= started))
        {
            var digits = "";
            foreach (var letter in page.Letters)
            {
                if (letter.PointSize > 13 && char.IsAsciiDigit(letter.Value[0]))
                {
                    digits += letter.Value;
                    continue;
                }

                if (digits.Length > 0)
                    (number, digits) = (int.Parse(digits), "");
                // What stands at the foot belongs to no entry.
                if (number == 0 || letter.StartBaseLine.Y < 25)
                    continue;
                var (text, pages) = entries.TryGetValue(number, out var before) ? before : ("", []);
                if (pages is not [.., var last] || last != page.Number)
                    pages.Add(page.Number);
                entries[number] = (string.IsNullOrWhiteSpace(letter.Value) ? text : text + letter.Value, pages);
            }
        }

        return entries;
    }

    [GeneratedRegex(@"\s")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"Formore,see(?<number>\d+)|Goonwith(?<number>\d+)((,|or)(?<number>\d+))*|→(?<number>\d+)", RegexOptions.ExplicitCapture)]
    private static partial Regex SeenNumber();
}
