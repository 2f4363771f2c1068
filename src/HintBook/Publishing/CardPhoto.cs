using HintBook.Cards;
using HintBook.Cards.Kept;
using HintBook.Checking;
using HintBook.Checking.Media;
using HintBook.Photos;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>The picture on the fronts of a book's cards: the maker's mark, or the first photo of the closed box.</summary>
internal static class CardPhoto
{
    /// <summary>The picture, null where the book has none that can be developed; and a finding where it is too coarse.</summary>
    /// <param name="book">The book.</param>
    /// <param name="paper">The paper for a book that names none.</param>
    /// <param name="kept">What earlier runs made.</param>
    /// <param name="work">Counts what is developed.</param>
    public static (CardPicture? Picture, Finding[] Findings) Of(Examined book, Paper paper, KeptWork kept, WorkLog? work)
    {
        var mark = book.Book.Maker?.Logo;
        if (book.Addresses.Base is null || (mark ?? book.Book.Photos.FirstOrDefault()) is not { } shown)
            return (null, []);
        if (book.Media.Photos.FirstOrDefault(photo => photo.File.File.Value == shown.File.Value) is not { } planned)
            return (null, []);
        if (mark is not null && planned.Plan.Picture.Drawing is { } drawing)
            return (CardPicture.Of(drawing), []);
        var (width, height) = CardPicture.PlaceOn(CardSheet.Of(book.Book.Print, paper).Sheet.Card);
        var key = WorkKey.Of("photo", input =>
        {
            input.Write(planned.Plan.Key.Hex);
            input.Write(width);
            input.Write(height);
            input.Write(mark is not null);
        });
        if ((kept.TryTake(key, out var earlier) ? PrintedPhoto.Read(earlier) : Develop()) is not { } photo)
            return (null, []);
        Finding[] findings = photo.Dots < PrintedPhoto.LeastResolution
            ? [CardFindings.TooCoarse(shown.File, photo.Dots, PrintedPhoto.LeastResolution, PrintedPhoto.Bears(photo.Width))]
            : [];
        return (new(photo.Jpeg, photo.Width, photo.Height, mark is not null), findings);

        PrintedPhoto? Develop()
        {
            work?.Did(Work.DevelopForPaper, shown.File.Value);
            var bytes = book.Folder.ReadBytes(shown.File.Value, shown.File.At, PhotoSettings.Standard.MaxFileBytes, []);
            var developed = bytes is null ? null : PhotoPipeline.ForPaper(bytes, planned.Plan, width, height, whole: mark is not null);
            // A file that was changed since it was checked isn't kept under the key of what it was.
            if (developed is not null && PhotoKey.Compute(bytes, book.Book.Identity, MediaCheck.Settings) == planned.Plan.Key)
                kept.Keep(key, developed.Write());
            return developed;
        }
    }
}
