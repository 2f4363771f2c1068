using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Sealing;

namespace HintBook.Publishing;

/// <summary>
/// The site of a sealed book: pages of one kind are equal shells, what they say is sealed piece by piece, and the slots of the copies lie beside them.
/// </summary>
internal static class SealedSite
{
    // Pages about several stages: each piece is sealed with its own stage's key, so that no such page is a way round a card.
    private static readonly string[] Lists = ["solution", "reset"];

    private static ReadOnlySpan<byte> VersionMark => "data-version=\""u8;

    /// <summary>Writes the files of the site in place of those of the open one, once the pictures are there.</summary>
    /// <param name="book">The book.</param>
    /// <param name="sealing">What it is sealed with.</param>
    /// <param name="writer">Where the site is put together.</param>
    public static void Write(Examined book, SealingPlan sealing, OutputWriter writer)
    {
        var files = new SealedFileFolder(sealing.FilesOf(book.Book.Id!.Value.Value), writer);
        var (pictures, films, gates) = (new SealedPictures(book, files, writer), new SealedFilms(files, writer), GatesOf(book, sealing));
        writer.WriteAll("pages", "site", Build(book, sealing, pictures, films, gates));
        // A device keeps the tables that it used, and the list of what it keeps says nothing of steps and copies.
        writer.ForEach("keys", [.. Tables(book, sealing, gates)], table => writer.WriteUnkept(Path.Combine("site", table.Path), table.Content()));
        pictures.DropHidden();
        films.DropOpen();
    }

    private static IReadOnlyCollection<MadeFile> Build(
        Examined book, SealingPlan sealing, SealedPictures pictures, SealedFilms films, SealedGates gates)
    {
        var epoch = sealing.KeysOf(book.Book.Id!.Value.Value);
        var pages = book.Site.InPieces.AsParallel().AsOrdered()
            .Select(page => (Page: page, Printed: gates.With(page.Name, WithMedia(page.Print(), pictures, films)))).ToArray();
        var sizes = pages.SelectMany(each => each.Printed.Pieces.Select(piece =>
                (Kind: KindOf(each.Page, piece), Key: KeyOf(each.Page, piece), Bytes: Encoding.UTF8.GetByteCount(piece.Html))))
            .GroupBy(each => each.Kind, StringComparer.Ordinal)
            .Select(kind => kind.MaxBy(each => each.Bytes))
            .ToDictionary(longest => longest.Kind, longest => Padding.SizeFor(longest.Bytes) ?? throw TooLong(book, longest.Kind, longest.Key, longest.Bytes));
        var sealedPages = pages.ToDictionary(each => each.Page.Path, each => each);
        return
        [
            .. book.Site.Files.Select(file => sealedPages.TryGetValue(file.Path, out var page)
                ? new MadeFile(file.Path, () => Shell(epoch, gates, page.Page, page.Printed, sizes))
                : file),
        ];
    }

    private static PageInPieces WithMedia(PageInPieces page, SealedPictures pictures, SealedFilms films)
    {
        pictures.Show(page.Html.Span);
        return page with { Pieces = [.. page.Pieces.Select(piece => piece with { Html = films.In(pictures.In(piece.Html)) })] };
    }

    // The page with its pieces sealed, as base64 where they belong.
    private static ReadOnlyMemory<byte> Shell(EpochKeys epoch, SealedGates gates, SealablePage page, PageInPieces printed, Dictionary<string, int> sizes)
    {
        if (printed.Pieces.IsEmpty)
            return printed.Html;
        var pieces = printed.Pieces
            .Select(piece => new Piece(piece.Name, Padding.Pad(piece.Html, sizes[KindOf(page, piece)]), gates.KeyOf(KeyOf(page, piece), piece)))
            .ToImmutableArray();
        var made = SealedPage.Of(epoch, page.Language, page.Name, pieces);
        using var shell = new MemoryStream();
        var from = 0;
        Copy(printed.Html.Span.IndexOf(VersionMark) + VersionMark.Length, $"{Convert.ToHexStringLower(made.Version)}\" data-name=\"{page.Name}");
        foreach (var (piece, text) in printed.Pieces.Zip(made.Pieces))
            Copy(piece.At, Convert.ToBase64String(text.Sealed));
        shell.Write(printed.Html.Span[from..]);
        return shell.ToArray();

        void Copy(int to, string then)
        {
            shell.Write(printed.Html.Span[from..to]);
            shell.Write(Encoding.ASCII.GetBytes(then));
            from = to;
        }
    }

    /// <summary>The gates of a sealed book.</summary>
    internal static SealedGates GatesOf(Examined book, SealingPlan sealing) => new(book, sealing.KeysOf(book.Book.Id!.Value.Value));

    /// <summary>The files with the slots of the copies; those of the published site where the secret that makes them is lost.</summary>
    internal static IEnumerable<MadeFile> Tables(Examined book, SealingPlan sealing, SealedGates gates) => sealing switch
    {
        { Secret: { } secret } => Tables(book, sealing, gates, new BookKeys(secret, book.Book.Id!.Value.Value)),
        { Box: { } box } => box.Tables.Select(table => new MadeFile(table.Key, () => table.Value)),
        _ => [],
    };

    private static IEnumerable<MadeFile> Tables(Examined book, SealingPlan sealing, SealedGates gates, BookKeys keys)
    {
        var epoch = keys.Epoch(sealing.Kept.Epoch);
        var retired = book.Book.Copies.Where(copy => copy.Retired).Select(copy => copy.Serial.Value).ToHashSet(StringComparer.Ordinal);
        var copies = sealing.Kept.Copies.Where(copy => !copy.Retired && !retired.Contains(copy.Serial)).ToArray();
        var owned = new OwnOfCopies(book);
        var cardKeys = copies.Select(copy => keys.CardKey(copy.Serial, copy.Issue)).ToArray();
        var names = StageCards.PagesOf(book);
        return
            from table in names.Prepend("")
            from file in Slots.Files(epoch, table, Slots.Of(epoch, table, sealing.Kept.Room, HoldersOf(table)))
            select new MadeFile(file.Path, () => Encoding.ASCII.GetBytes(file.Content));

        IEnumerable<SlotHolder> HoldersOf(string table)
        {
            var page = table.Length == 0 ? null : table;
            var own = OwnValue.Padded([.. copies.Select(copy => owned.Of(copy.Serial, page).AddRange(gates.Of(copy, page)))]);
            return copies.Select((copy, i) => new SlotHolder(copy.Number, cardKeys[i], own[i]));
        }
    }

    private static string KindOf(SealablePage page, PieceOfPage piece) => Lists.Contains(page.Name) ? page.Name : piece.Of;

    private static string KeyOf(SealablePage page, PieceOfPage piece) => Lists.Contains(page.Name) ? piece.Of : page.Name;

    private static MachineFailure TooLong(Examined book, string kind, string page, int bytes)
    {
        var stage = book.Book.Stages.FirstOrDefault(each => book.Addresses.Names[each.Id.Value].Contains(page));
        return new(
            FailureKind.Machine,
            string.Create(
                CultureInfo.InvariantCulture,
                $"What is sealed as “{kind}” of {(stage is null ? page : $"“{stage.Title.Value}”")} has {(bytes + 1023) / 1024} KiB with all "
                    + $"that stands around it, and a sealed piece holds {Padding.Largest / 1024} KiB."),
            $"Make that text shorter{(stage is null ? "" : $" in {stage.File.Path}")}, or divide the stage. What was published before is untouched.");
    }
}
