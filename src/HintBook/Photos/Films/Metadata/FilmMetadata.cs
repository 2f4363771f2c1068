using System.Text;

namespace HintBook.Photos.Films.Metadata;

/// <summary>What a film of any kind that is known tells beside its pictures and sounds.</summary>
internal static class FilmMetadata
{
    /// <summary>Finds out what is to be overwritten. Never throws for what is in the file.</summary>
    /// <param name="film">The film, which must be able to seek.</param>
    public static FilmStripping Find(Stream film)
    {
        try
        {
            Span<byte> head = stackalloc byte[8];
            film.Position = 0;
            if (film.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) < head.Length)
                return FilmStripping.Unknown;
            return head is [0x1A, 0x45, 0xDF, 0xA3, ..] ? MatroskaMetadata.Find(film)
                : IsoMetadata.MayBegin(Encoding.Latin1.GetString(head[4..])) ? IsoMetadata.Find(film)
                : FilmStripping.Unknown;
        }
        catch (Exception damaged) when (damaged is InvalidDataException or EndOfStreamException or OverflowException)
        {
            return FilmStripping.Unknown;
        }
    }
}
