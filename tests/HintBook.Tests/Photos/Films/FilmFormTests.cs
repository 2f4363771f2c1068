using HintBook.Photos.Films;

namespace HintBook.Tests.Photos.Films;

/// <summary>
/// Films that not every browser plays are told from those that all play. Debian's ffmpeg makes them; its names for the codings stand beside ours.
/// </summary>
public class FilmFormTests
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    // ISO/IEC 14496-1, 7.2.6: a stream's descriptor with a decoder's inside, of which the first byte says the coding (RFC 6381, 3.3).
    private static readonly byte[] Aac = Descriptor(0x40, 2);

    // RFC 6381, 3.3, and ISO/IEC 14496-15 for the codes; that all browsers play H.264 and AAC is common practice, no source.
    [Theory]
    [InlineData("avc1", "")]
    [InlineData("avc3", "")]
    [InlineData("hvc1", "H.265")]
    [InlineData("hev1", "H.265")]
    [InlineData("av01", "AV1")]
    [InlineData("mp4v", "MPEG-4 Visual")]
    [InlineData("apch", "ProRes")]
    [InlineData("q\u0001<b", "“q?<b”")]
    public void Pictures_of_an_mp4_are_told_by_their_code(string code, string notPlayed) =>
        Assert.Equal(notPlayed, NotPlayed(Mp4.WithPictures(Minute, code)));

    [Theory]
    [InlineData("ac-3", "AC-3")]
    [InlineData("Opus", "Opus")]
    [InlineData("alac", "Apple Lossless")]
    public void Sounds_of_an_mp4_are_told_by_their_code(string code, string notPlayed) =>
        Assert.Equal(notPlayed, NotPlayed(Mp4.WithSounds(Minute, code)));

    // ISO/IEC 14496-3, table 1.17: 2 is AAC LC, 5 and 29 are its denser kinds, 42 is another coding altogether, written as 31 and 10 more.
    [Theory]
    [InlineData(0x40, 2, "")]
    [InlineData(0x40, 5, "")]
    [InlineData(0x40, 29, "")]
    [InlineData(0x40, 31, "AAC of a newer kind")]
    [InlineData(0x6B, 2, "MP3")]
    [InlineData(0xA5, 2, "AC-3")]
    public void Sounds_that_share_a_code_are_told_by_what_stands_inside(int coding, int kind, string notPlayed) =>
        Assert.Equal(notPlayed, NotPlayed(Mp4.WithSounds(Minute, "mp4a", Mp4.Box("esds", Descriptor((byte)coding, (byte)kind)))));

    // ISO/IEC 14496-10, annex A: 100 is High, 110 High 10, 122 High 4:2:2.
    [Theory]
    [InlineData(66, "")]
    [InlineData(100, "")]
    [InlineData(110, "H.264 of a studio’s kind")]
    [InlineData(122, "H.264 of a studio’s kind")]
    public void The_profile_of_h264_counts(byte profile, string notPlayed) =>
        Assert.Equal(notPlayed, NotPlayed(Mp4.WithPictures(Minute, "avc1", Mp4.Box("avcC", 1, profile, 0, 30))));

    [Fact]
    public void Of_a_damaged_film_nothing_is_said()
    {
        var film = Mp4.WithSounds(Minute, "mp4a", Mp4.Box("esds", Aac));
        for (var length = 0; length < film.Length; length++)
        {
            using var cut = new MemoryStream(film[..length]);
            Assert.Empty(FilmForms.Read(cut)?.NotPlayed.Where(each => each != "AAC") ?? []);
        }
    }

    [Theory]
    [InlineData("plain.mp4", "", "")]
    [InlineData("camera.mov", "", "QuickTime")]
    [InlineData("sounds.mov", "-c:a pcm_s16le", "QuickTime, sound that isn’t packed")]
    [InlineData("old.mp4", "-c:v mpeg4", "MPEG-4 Visual")]
    [InlineData("cinema.mp4", "-c:a ac3", "AC-3")]
    [InlineData("record.mp4", "-c:a libmp3lame", "MP3")]
    [InlineData("plain.webm", "-c:v libvpx -deadline realtime -c:a libopus", "")]
    [InlineData("packed.mkv", "", "Matroska")]
    [InlineData("packed-with-flac.mkv", "-c:a flac", "Matroska, FLAC")]
    [InlineData("studio.mp4", "-c:v libx264 -pix_fmt yuv422p -t 1", "H.264 of a studio’s kind")]
    public void Films_that_another_program_made_are_read(string name, string made, string notPlayed)
    {
        using var film = ToldFilm.Of(name, made.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(notPlayed, NotPlayed(film.Bytes));
    }

    private static string? NotPlayed(byte[] bytes)
    {
        using var film = new MemoryStream(bytes);
        return FilmForms.Read(film) is { } form ? string.Join(", ", form.NotPlayed) : null;
    }

    private static byte[] Descriptor(byte coding, byte kind) =>
    [
        0, 0, 0, 0,
        3, 0x80, 0x80, 0x80, 25, 0, 1, 0,
        4, 17, coding, 0x15, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 5, 2, (byte)(kind << 3), 0x10,
    ];
}
