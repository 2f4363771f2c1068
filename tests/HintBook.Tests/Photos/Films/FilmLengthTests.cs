using System.Buffers.Binary;
using CsCheck;
using HintBook.Photos.Films;

namespace HintBook.Tests.Photos.Films;

public class FilmLengthTests
{
    private static readonly TimeSpan Film = TimeSpan.FromSeconds(754.5);

    [Fact]
    public void The_movie_header_says_it_in_32_bits() => Assert.Equal(Film, Of(Mp4.Of(Film)));

    [Fact]
    public void The_movie_header_says_it_in_64_bits() => Assert.Equal(Film, Of(Mp4.Wide(Film)));

    [Fact]
    public void A_box_of_64_bits_of_size_is_passed_over()
    {
        var large = new byte[24];
        BinaryPrimitives.WriteUInt32BigEndian(large, 1);
        "mdat"u8.CopyTo(large.AsSpan(4));
        BinaryPrimitives.WriteInt64BigEndian(large.AsSpan(8), large.Length);
        Assert.Equal(Film, Of([.. large, .. Mp4.Of(Film)]));
    }

    // An MP4 file whose duration isn't known has all ones there (ISO/IEC 14496-12, 8.2.2.3).
    [Fact]
    public void A_film_that_does_not_know_says_nothing()
    {
        var film = Mp4.Of(Film);
        film.AsSpan(film.Length - 100 + 16, 4).Fill(0xFF);
        Assert.Null(Of(film));
    }

    [Fact]
    public void What_is_no_film_has_no_length() => Assert.Null(Of("not a film at all, but a text"u8.ToArray()));

    [Fact]
    public void However_a_film_is_spoilt_nothing_is_thrown() =>
        Gen.Select(Gen.Int[0, 1300], Gen.Byte, Gen.Int[0, 1300]).Sample((at, with, length) =>
        {
            var film = Mp4.Of(Film)[..Math.Min(length, Mp4.Of(Film).Length)];
            if (at < film.Length)
                film[at] = with;
            _ = Of(film);
        });

    private static TimeSpan? Of(byte[] film)
    {
        using var stream = new MemoryStream(film);
        return FilmLength.Read(stream);
    }
}
