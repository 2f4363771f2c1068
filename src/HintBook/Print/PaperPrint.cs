using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Kept;
using HintBook.Cards.Typesetting;
using HintBook.Ciphers.Making;
using HintBook.Pages;
using HintBook.Print.Booklets;
using HintBook.Print.Clues;
using HintBook.Print.Flow;
using HintBook.Print.Papers;
using HintBook.Text;

namespace HintBook.Print;

/// <summary>A booklet of hints as it was printed.</summary>
/// <param name="File">Its file, relative to the print folder.</param>
/// <param name="Language">Its language.</param>
/// <param name="Booklet">Its pages and entries.</param>
internal sealed record PrintedBooklet(string File, string Language, SetBooklet Booklet);

/// <summary>The papers of a book beside its cards.</summary>
/// <param name="Files">Relative to the print folder.</param>
/// <param name="Booklets">Its booklets of hints, one for each language of the book or none.</param>
/// <param name="Clues">Its clues that are made of paper.</param>
internal sealed record PrintedPapers(ImmutableArray<MadeFile> Files, ImmutableArray<PrintedBooklet> Booklets, ImmutableArray<PrintedClue> Clues)
{
    /// <summary>What was read of the codes on them.</summary>
    public PaperReadBack Codes { get; init; } = PaperReadBack.None;

    /// <summary>How well answers under a red filter are seen; null where there are none.</summary>
    public FilterContrast? Filter => Booklets.Any(booklet => booklet.Booklet.Veil == Veil.RedFilter) ? FilterInk.Contrasts : null;
}

/// <summary>A clue as it was printed.</summary>
/// <param name="File">Its file, relative to the print folder.</param>
/// <param name="Clue">What was made.</param>
/// <param name="Serial">The copy that it is for; null for one that all have.</param>
internal sealed record PrintedClue(string File, MadeClue Clue, string? Serial);

/// <summary>Makes the papers of a book beside its cards, in each language of the book.</summary>
internal static class PaperPrint
{
    /// <summary>The files, relative to the print folder. With an error among the findings they must not be written.</summary>
    /// <param name="kinds">Which papers; the cards are made elsewhere.</param>
    /// <param name="site">The book's site.</param>
    /// <param name="theme">Whose words the papers have.</param>
    /// <param name="paper">The sheets.</param>
    /// <param name="picture">Gives a developed picture by its path in the site; null where it isn't there.</param>
    /// <param name="kept">What earlier runs drew; null where nothing was kept.</param>
    /// <param name="work">Counts what is drawn.</param>
    /// <param name="copies">The copies of a sealed book, whose papers carry codes of their own; empty where all have the same.</param>
    /// <param name="only">The serials of those copies that papers are asked for; empty for all.</param>
    public static (PrintedPapers Papers, Findings Findings) Make(
        IReadOnlySet<PaperKind> kinds,
        Site site,
        Theme theme,
        Paper paper,
        Func<string, byte[]?> picture,
        KeptWork? kept = null,
        WorkLog? work = null,
        ImmutableArray<CodedCopy> copies = default,
        ImmutableArray<string> only = default)
    {
        (copies, only) = (copies.IsDefault ? [] : copies, only.IsDefault ? [] : only);
        var made = Pages.Site.InEachLanguage(site.Plan).Select((plan, i) => Make(kinds, i == 0 ? "" : $"{plan.Book.Language.Value}/", new PaperBook
        {
            Plan = plan,
            Words = theme.WordsIn(plan.Book.Language).Words,
            Where = site.Where,
            Picture = picture,
            Look = CardLook.Of(theme).Look,
            Paper = paper,
            Copies = copies,
            Boxes = PaperCopy.In(site.Plan.Book, copies, only),
            IsForEachBox = !copies.IsEmpty || !only.IsEmpty,
            IsForSome = !only.IsEmpty,
        }, kept ?? new(), work)).ToArray();
        var papers = made.Select(each => each.Papers).ToArray();
        return (
            new([.. papers.SelectMany(each => each.Files)], [.. papers.SelectMany(each => each.Booklets)], [.. papers.SelectMany(each => each.Clues)])
            {
                Codes = PaperReadBack.Of(papers.Select(each => each.Codes)),
            },
            Findings.Of([.. made.SelectMany(each => each.Findings)]));
    }

    private static (PrintedPapers Papers, ImmutableArray<Finding> Findings) Make(
        IReadOnlySet<PaperKind> kinds, string folder, PaperBook paper, KeptWork kept, WorkLog? work)
    {
        var files = ImmutableArray.CreateBuilder<MadeFile>();
        var booklets = ImmutableArray.CreateBuilder<PrintedBooklet>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var codes = new List<PaperReadBack>();
        if (Wanted(PaperKind.Booklet, "booklet of hints"))
        {
            var booklet = Booklet.Set(paper);
            if (booklet.LeftEmpty * 4 > booklet.Pages.Length || paper.Book.Stages.Length == 1)
                findings.Add(PaperFindings.FewToMix(paper.Book.Title.At, paper.Book.Stages.Length, booklet.LeftEmpty));
            booklets.Add(new($"{folder}booklet.pdf", paper.Book.Language.Value, booklet));
            Add("booklet", paper.Words["print_booklet"], booklet.Pages);
            AddSheets("booklet", paper.Words["print_booklet"], booklet.Pages);
        }

        if (Wanted(PaperKind.Leaflet, "solution leaflet"))
        {
            foreach (var (name, one) in paper.EachCopy("leaflet"))
            {
                var leaflet = SolutionLeaflet.Layout(one);
                Add(name, paper.Words["solution"], leaflet);
                AddSheets(name, paper.Words["solution"], leaflet);
            }
        }

        if (Wanted(PaperKind.Reset, "reset sheet"))
        {
            foreach (var (name, one) in paper.EachCopy("reset"))
                Add(name, paper.Words["reset"], ResetSheet.Layout(one));
        }

        if (Wanted(PaperKind.Label, "box label"))
        {
            foreach (var (name, one) in paper.IsForSome ? paper.EachCopy("label") : [("label", paper)])
            {
                var (pages, whole) = BoxLabel.Layout(one);
                if (!whole)
                    findings.Add(PaperFindings.FullLabel(paper.Book.Title.At));
                Add(name, paper.Book.Title.Value, pages);
            }
        }

        if (folder.Length == 0)
            findings.AddRange(Coarse(paper, kinds));

        var clues = ImmutableArray.CreateBuilder<PrintedClue>();
        // A clue has no language of its own, or that of the book.
        if (kinds.Contains(PaperKind.Clues) && folder.Length == 0)
        {
            foreach (var (code, clue, file, serial) in ClueToPrint.In(paper))
            {
                var (sheets, noRoom) = CluePrint.Make(clue, file, paper.Paper, serial);
                if (noRoom is not null)
                    findings.Add(PaperFindings.LargeClue(code.Clue?.At ?? code.Id.At, code.Id.Value, serial, noRoom));
                if (clue.Look == ClueLook.Lines && Letters.Printable(clue.Text).Missing is { Length: > 0 } missing)
                    findings.Add(PaperFindings.ClueLettersMissing(code.Clue?.At ?? code.Id.At, code.Id.Value, serial, missing));
                files.AddRange(sheets);
                clues.Add(new(file, clue, serial));
            }
        }

        return (
            new(files.ToImmutable(), booklets.ToImmutable(), clues.ToImmutable()) { Codes = PaperReadBack.Of(codes) },
            findings.ToImmutable());

        void Add(string name, string what, ImmutableArray<PaperPage> pages)
        {
            var title = $"{paper.Book.Title.Value}: {what}";
            var (file, language) = ($"{folder}{name}.pdf", paper.Book.Language.Value);
            if (!PaperCodes.AreOn(pages))
            {
                files.Add(new(file, () => Make()));
                return;
            }

            // A code is read back before anything is written.
            var made = Make();
            var (counts, unread) = PaperCodes.Read(paper.Book, file, made, pages, kept, work);
            codes.Add(counts);
            findings.AddRange(unread);
            files.Add(new(file, () => made));

            byte[] Make() => kept.Take(PaperKey.Of(title, language, pages, paper.Look), () =>
            {
                work?.Did(Work.MakePaper, file);
                return PaperPdf.Write(title, language, pages, paper.Look);
            });
        }

        void AddSheets(string name, string what, ImmutableArray<PaperPage> pages)
        {
            var whole = pages.AddRange(Enumerable.Repeat(PaperPage.Empty(pages[0].Frame), (4 - (pages.Length % 4)) % 4));
            if (Saddle.Sheets(whole, paper.Paper, paper.RightToLeft) is { IsEmpty: false } sheets)
                Add($"{name}-sheets", what, sheets);
        }

        bool Wanted(PaperKind kind, string name)
        {
            if (!kinds.Contains(kind))
                return false;
            if (Unprintable(paper, name) is not { } finding)
                return true;
            findings.Add(finding);
            return false;
        }
    }

    // Photos that are set smaller than they have room, since they have too few pixels; each is told once.
    private static IEnumerable<Finding> Coarse(PaperBook paper, IReadOnlySet<PaperKind> kinds) =>
        (from photo in paper.Book.Photos.Concat(paper.Book.Stages.SelectMany(stage => stage.Photos))
         let largest = paper.Plan.Pictures.GetValueOrDefault(photo.File.Value)?.Largest
         where largest is not null
         let room = Rooms(paper, kinds, photo.Place).Select(most => Math.Min(most.Width, most.Height * largest.Width / largest.Height)).DefaultIfEmpty().Max()
         let bears = Photos.PrintedPhoto.Bears(largest.Width)
         where bears < room
         select CardFindings.TooCoarseForPapers(photo.File, room, Photos.PrintedPhoto.LeastResolution, bears))
        .DistinctBy(finding => finding.Message);

    // The room that papers have for photos of a place.
    private static IEnumerable<Size> Rooms(PaperBook paper, IReadOnlySet<PaperKind> kinds, Place place)
    {
        if (kinds.Contains(PaperKind.Booklet) && place is (Place.Front or Place.Nudge or Place.Clue or Place.Answer))
            yield return Booklet.RoomForPhoto(paper, place);
        if (kinds.Contains(PaperKind.Leaflet) && place == Place.Answer)
            yield return SolutionLeaflet.RoomForPhoto;
        if (kinds.Contains(PaperKind.Reset) && place == Place.Reset)
            yield return ResetSheet.RoomForPhoto(paper.Paper);
    }

    // The words of a language that nobody can print; the author's own texts are looked at when they are set.
    private static Finding? Unprintable(PaperBook paper, string name)
    {
        var language = paper.Book.Language;
        string[] missing =
        [
            .. Texts(paper).SelectMany(text => Letters.Printable(text).Missing)
                .Where(letter => letter.EnumerateRunes().Any(System.Text.Rune.IsLetter))
                .Distinct(),
        ];
        return missing.Length == 0 ? null : PaperFindings.LettersMissing(language, name, missing);
    }

    private static IEnumerable<string> Texts(PaperBook paper) =>
    [
        .. paper.Words.Entries.Where(word => word.Key.StartsWith("print_", StringComparison.Ordinal)).Select(word => word.Value),
        paper.Book.Title.Value,
        .. paper.Book.Stages.SelectMany(stage => new[]
        {
            stage.Title.Value, stage.Sign.Value, stage.Nudge.Markdown, stage.Clue.Markdown, stage.Answer.Markdown, stage.Reset?.Markdown,
        }).OfType<string>(),
    ];
}
