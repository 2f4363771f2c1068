using HintBook.Cards;
using HintBook.Checking;
using HintBook.Photos;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>The picture on the fronts of a book's cards: the maker's mark, or the first photo of the closed box.</summary>
internal static class CardPhoto
{
    /// <summary>The picture, null where the book has none that can be developed; and a finding where it is too coarse.</summary>
    /// <param name="book">The book.</param>
    /// <param name="paper">The paper for a book that names none.</param>
    public static (CardPicture? Picture, Finding[] Findings) Of(Examined book, Paper paper)
    {
        var mark = book.Book.Maker?.Logo;
        if (book.Addresses.Base is null || (mark ?? book.Book.Photos.FirstOrDefault()) is not { } shown)
            return (null, []);
        if (book.Media.Photos.FirstOrDefault(photo => photo.File.File.Value == shown.File.Value) is not { } planned)
            return (null, []);
        var bytes = book.Folder.ReadBytes(shown.File.Value, shown.File.At, PhotoSettings.Standard.MaxFileBytes, []);
        var (width, height) = CardPicture.PlaceOn(CardSheet.Of(book.Book.Print, paper).Sheet.Card);
        if (bytes is null || PhotoPipeline.ForPaper(bytes, planned.Plan, width, height, whole: mark is not null) is not { } photo)
            return (null, []);
        Finding[] findings = photo.Dots < PrintedPhoto.LeastResolution
            ? [CardFindings.TooCoarse(shown.File, photo.Dots, PrintedPhoto.LeastResolution, PrintedPhoto.Bears(photo.Width))]
            : [];
        return (new(photo.Jpeg, photo.Width, photo.Height, mark is not null), findings);
    }
}
