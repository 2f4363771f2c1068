using HintBook.Books;
using HintBook.Pages;
using HintBook.Reading;
using HintBook.Reading.Folder;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>What a sealed book is sealed with.</summary>
/// <param name="Secret">Its secret.</param>
/// <param name="Kept">What is kept of its copies.</param>
public sealed record SealingPlan(BookSecret Secret, KeptCopies Kept)
{
    /// <summary>What the pages say of it in the open.</summary>
    /// <param name="id">The book's <c>id:</c>.</param>
    internal SealSigns SignsOf(string id) => new(Kept.Tag, Convert.ToHexStringLower(new BookKeys(Secret, id).Epoch(Kept.Epoch).Tag));

    /// <summary>Reads what sealing a book needs.</summary>
    /// <param name="book">The book.</param>
    /// <param name="folder">Its folder.</param>
    /// <param name="addresses">The list of addresses, with the cards that were printed.</param>
    /// <param name="findings">Where all is told that is missing or doesn't fit.</param>
    /// <returns>Null where the book isn't sealed, or can't be.</returns>
    public static SealingPlan? Of(Book book, BookFolder folder, AddressList addresses, List<Finding> findings)
    {
        if (book.Sealed is not { } asked)
            return null;
        var wrong = new List<Finding>();
        var (key, kept) = (KeyIn(folder), KeptIn(folder, wrong));
        if (book.Id is not { } id)
            wrong.Add(SealingFindings.NoId(asked));
        if (book.Address is { } address && new Uri(address.Value) is { IsLoopback: false } site && site.Scheme != Uri.UriSchemeHttps)
            wrong.Add(SealingFindings.PlainHttp(address));
        if (key is null)
            wrong.Add(SealingFindings.NoKey(asked, isDamaged: folder.SizeOf(KeyFile.FileName) is not null));
        else if (book.Id is { } named && (!key.Fits(named.Value) || (kept is not null && kept.Tag != key.Tag)))
            wrong.Add(SealingFindings.OtherKey(named.At));
        if (key is not null && !wrong.Exists(finding => finding.Code == SealingFindings.KeptLineCode))
        {
            var without = book.Copies.Where(copy => !copy.Retired && kept?[copy.Serial.Value] is null);
            wrong.AddRange(without.Select(copy => SealingFindings.NoNumber(copy.Serial.At, copy.Serial.Value)));
            if (kept is not null)
                wrong.AddRange(OlderThanCards(asked, kept, addresses));
        }

        wrong.AddRange(FilmsOf(book).Select(SealingFindings.OpenFilm));
        findings.AddRange(wrong);
        return wrong.Count == 0 ? new(key!.Secret, kept!) : null;
    }

    // A file from an old backup would let cards fail that lie in boxes by now.
    private static IEnumerable<Finding> OlderThanCards(Span asked, KeptCopies kept, AddressList addresses) =>
        from printed in addresses.Printed
        where printed.Serial is not null
        group printed.Issue by printed.Serial into copy
        let known = kept[copy.Key]
        where known is null || known.Issue < copy.Max()
        select SealingFindings.OlderThanCards(asked, copy.Key, copy.Max(), known?.Issue);

    private static IEnumerable<Located<string>> FilmsOf(Book book) => book.Translations
        .Prepend(book)
        .SelectMany(each => each.Stages)
        .Select(stage => stage.Clip?.File)
        .OfType<Located<string>>()
        .DistinctBy(file => file.Value);

    private static KeyFile? KeyIn(BookFolder folder) => folder.ReadText(KeyFile.FileName, []) is { } file ? KeyFile.Read(file.Text) : null;

    private static KeptCopies? KeptIn(BookFolder folder, List<Finding> findings) =>
        folder.SizeOf(KeptCopies.FileName) is not null && folder.ReadText(KeptCopies.FileName, findings) is { } file ? KeptCopies.Read(file, findings) : null;
}
