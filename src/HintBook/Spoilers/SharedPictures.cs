using HintBook.Books;

namespace HintBook.Spoilers;

/// <summary>
/// What a picture is said to show, wherever it stands: the words for it at a later step hold for an earlier one as well, for the picture is the same.
/// </summary>
internal sealed class SharedPictures
{
    private readonly Dictionary<string, Dictionary<int, Photo>> said = new(StringComparer.Ordinal);

    /// <summary>Reads the words and marks of all pictures that a book uses more than once.</summary>
    public SharedPictures(Book book, Finders finders)
    {
        foreach (var photo in book.AllPhotos.GroupBy(photo => photo.File.Value).Where(group => group.Skip(1).Any()).SelectMany(group => group))
        {
            foreach (var secret in Passage.OfPhoto(photo, Tier.Answer).SelectMany(passage => finders.In(passage).Select(mention => mention.Secret).ToArray()))
            {
                if (!said.TryGetValue(photo.File.Value, out var here))
                    said[photo.File.Value] = here = [];
                here.TryAdd(secret, photo);
            }
        }
    }

    /// <summary>The secrets that a picture is said to show at another place and not at this one, with that other place.</summary>
    public IEnumerable<(int Secret, Photo Elsewhere)> Of(Photo photo)
    {
        if (!said.TryGetValue(photo.File.Value, out var here))
            return [];
        return here.Where(one => !ReferenceEquals(one.Value, photo)).Select(one => (one.Key, one.Value));
    }
}
