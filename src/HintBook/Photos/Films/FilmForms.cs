using System.Text;
using HintBook.Photos.Films.Metadata;

namespace HintBook.Photos.Films;

/// <summary>Reads from films of every kind that is known what they are packed in and how they are coded.</summary>
internal static class FilmForms
{
    /// <summary>What a film is packed in and how it is coded; null for other kinds of file, and for one that is damaged.</summary>
    /// <param name="film">The film, which must be able to seek.</param>
    public static FilmForm? Read(Stream film)
    {
        try
        {
            var head = new byte[8];
            film.Position = 0;
            if (film.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) < head.Length)
                return null;
            return head is [0x1A, 0x45, 0xDF, 0xA3, ..] ? MatroskaForm.Read(film)
                : IsoMetadata.MayBegin(Encoding.Latin1.GetString(head, 4, 4)) ? IsoForm.Read(film)
                : null;
        }
        catch (Exception damaged) when (damaged is InvalidDataException or EndOfStreamException or OverflowException)
        {
            return null;
        }
    }
}
