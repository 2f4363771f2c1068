using HintBook.Books;
using HintBook.Pages;
using HintBook.Reading;
using HintBook.Reading.Folder;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>What a sealed book is sealed with.</summary>
/// <param name="Secret">Its secret; null where it is lost, and the site is corrected with a card.</param>
/// <param name="Kept">What is kept of its copies.</param>
public sealed record SealingPlan(BookSecret? Secret, KeptCopies Kept)
{
    /// <summary>What a card opened of the published site; null where the secret is there.</summary>
    public OpenedBox? Box { get; init; }

    /// <summary>What the pages say of it in the open.</summary>
    /// <param name="id">The book's <c>id:</c>.</param>
    internal SealSigns SignsOf(string id)
    {
        var keys = KeysOf(id);
        return new(Convert.ToHexStringLower(keys.BookTag), Convert.ToHexStringLower(keys.Tag));
    }

    /// <summary>The keys that seal its pages.</summary>
    /// <param name="id">The book's <c>id:</c>.</param>
    internal EpochKeys KeysOf(string id) => Secret is { } secret ? new BookKeys(secret, id).Epoch(Kept.Epoch) : Opened.Keys;

    /// <summary>The keys that seal its photos and films.</summary>
    /// <param name="id">The book's <c>id:</c>.</param>
    internal FileKeys FilesOf(string id) => Secret is { } secret ? new BookKeys(secret, id).Files : new(Opened.Keys.BoxKey, Opened.Keys.BookTag);

    private OpenedBox Opened => Box ?? throw new InvalidOperationException("A book is sealed with its secret, or with what a card opened.");

    /// <summary>Reads what sealing a book needs.</summary>
    /// <param name="book">The book.</param>
    /// <param name="folder">Its folder.</param>
    /// <param name="addresses">The list of addresses, with the cards that were printed.</param>
    /// <param name="box">What a card opened of the published site, where the key is lost; else null.</param>
    /// <param name="findings">Where all is told that is missing or doesn't fit.</param>
    /// <returns>Null where the book isn't sealed, or can't be.</returns>
    public static SealingPlan? Of(Book book, BookFolder folder, AddressList addresses, OpenedBox? box, List<Finding> findings)
    {
        if (book.Sealed is not { } asked)
            return null;
        var wrong = new List<Finding>();
        var (key, kept) = (KeyIn(folder), KeptIn(folder, wrong));
        if (book.Id is not { } id)
            wrong.Add(SealingFindings.NoId(asked));
        if (book.Address is { } address && new Uri(address.Value) is { IsLoopback: false } site && site.Scheme != Uri.UriSchemeHttps)
            wrong.Add(SealingFindings.PlainHttp(address));
        var tag = box is null ? key?.Tag : Convert.ToHexStringLower(box.Keys.BookTag);
        if (tag is null)
            wrong.Add(SealingFindings.NoKey(asked, isDamaged: folder.SizeOf(KeyFile.FileName) is not null));
        else if (book.Id is { } named && (key?.Fits(named.Value) == false || (kept is not null && kept.Tag != tag)))
            wrong.Add(SealingFindings.OtherKey(named.At));
        if (tag is not null && !wrong.Exists(finding => finding.Code == SealingFindings.KeptLineCode))
        {
            var without = book.Copies.Where(copy => !copy.Retired && kept?[copy.Serial.Value] is null);
            if (box is null)
                wrong.AddRange(without.Select(copy => SealingFindings.NoNumber(copy.Serial.At, copy.Serial.Value)));
            if (kept is not null)
                wrong.AddRange(OlderThanCards(asked, kept, addresses));
        }

        findings.AddRange(wrong);
        if (wrong.Count > 0 || tag is null)
            return null;
        return box is null ? new(key?.Secret, kept!) : new(null, kept ?? new() { Tag = tag }) { Box = box };
    }

    // A file from an old backup would let cards fail that lie in boxes by now.
    private static IEnumerable<Finding> OlderThanCards(Span asked, KeptCopies kept, AddressList addresses) =>
        from printed in addresses.Printed
        where printed.Serial is not null
        group printed.Issue by printed.Serial into copy
        let known = kept[copy.Key]
        where known is null || known.Issue < copy.Max()
        select SealingFindings.OlderThanCards(asked, copy.Key, copy.Max(), known?.Issue);

    private static KeyFile? KeyIn(BookFolder folder) => folder.ReadText(KeyFile.FileName, []) is { } file ? KeyFile.Read(file.Text) : null;

    private static KeptCopies? KeptIn(BookFolder folder, List<Finding> findings) =>
        folder.SizeOf(KeptCopies.FileName) is not null && folder.ReadText(KeptCopies.FileName, findings) is { } file ? KeptCopies.Read(file, findings) : null;
}
