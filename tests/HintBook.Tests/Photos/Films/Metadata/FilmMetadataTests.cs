using System.Buffers.Binary;
using System.Text;
using CsCheck;
using HintBook.Photos.Films.Metadata;

namespace HintBook.Tests.Photos.Films.Metadata;

/// <summary>
/// What a film tells beside its pictures must not be published. Two readers that share no code with ours look for it, MetadataExtractor and Debian's
/// exiftool, and ffmpeg decodes the film before and after.
/// </summary>
public class FilmMetadataTests
{
    private static readonly Dictionary<string, string[]> Kinds = new(StringComparer.Ordinal)
    {
        // The place stands in loci (3GPP TS 26.244, 8.10) and in the keys of QuickTime.
        ["keys.mp4"] = ["-movflags", "use_metadata_tags"],
        ["plain.mp4"] = [],
        ["moov-first.mp4"] = ["-movflags", "+faststart"],
        ["fragments.mp4"] = ["-movflags", "frag_keyframe+empty_moov"],
        ["fragments-by-default-base.mp4"] = ["-movflags", "frag_keyframe+empty_moov+default_base_moof"],
        ["phone.3gp"] = [],
        // The place stands in udta as ©xyz (QuickTime File Format).
        ["camera.mov"] = [],
        // Sounds that aren't packed: QuickTime says their samples are of one size.
        ["sounds.mov"] = ["-c:a", "pcm_s16le"],
        ["timecode.mov"] = ["-timecode", "01:00:00:00"],
        ["words-inside.mp4"] = ["-map", "1:s", "-c:s", "mov_text"],
        ["words-inside-fragments.mp4"] = ["-map", "1:s", "-c:s", "mov_text", "-movflags", "frag_keyframe+empty_moov"],
        ["plain.webm"] = ["-c:v", "libvpx", "-deadline", "realtime", "-c:a", "libopus"],
        ["while-taken.webm"] = ["-c:v", "libvpx", "-deadline", "realtime", "-c:a", "libopus", "-live", "1"],
        ["words-inside.mkv"] = ["-map", "1:s", "-c:s", "srt"],
        ["attached.mkv"] = ["-attach", "words.srt", "-metadata:s:t", "mimetype=text/plain"],
    };

    public static TheoryData<string> Names => [.. Kinds.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_is_told_and_every_picture_and_sound_is_the_same(string name)
    {
        using var film = ToldFilm.Of(name, Kinds[name]);
        Assert.True(film.Holds(ToldFilm.Telltale));
        Assert.Contains(film.Exiftool(), line => line.Contains(ToldFilm.Telltale, StringComparison.Ordinal));

        using var stripped = film.Stripped(out var stripping);

        Assert.True(stripping.IsKnown);
        Assert.False(stripped.Holds(ToldFilm.Telltale));
        Assert.False(stripped.Holds(ToldFilm.Place));
        AssertSilent(stripped);
        var frames = film.Frames();
        Assert.True(frames.Length > 300, $"{frames.Length} frames");
        Assert.Equal(frames, stripped.Frames());
    }

    [Fact]
    public void The_films_of_these_tests_do_tell_where_they_were_taken()
    {
        using var keys = ToldFilm.Of("keys.mp4", Kinds["keys.mp4"]);
        using var camera = ToldFilm.Of("camera.mov");

        Assert.Contains(keys.Exiftool(), line => line.Contains("GPSPosition", StringComparison.Ordinal));
        Assert.Contains(camera.Exiftool(), line => line.Contains("GPSPosition", StringComparison.Ordinal));
        Assert.Contains(camera.Extracted(), line => line.Contains("2024", StringComparison.Ordinal));
    }

    // The tracks of places that cameras and phones write: gpmd, camm, and mebx of QuickTime. Each is a track of timed metadata (ISO/IEC 14496-12,
    // 12.9), made here from one of captions by another handler and another sample entry of the same length.
    [Theory]
    [InlineData("gpmd")]
    [InlineData("camm")]
    [InlineData("mebx")]
    public void A_track_of_places_is_gone_with_all_that_it_holds(string entry)
    {
        using var words = ToldFilm.Of("words-inside.mp4", Kinds["words-inside.mp4"]);
        var bytes = words.Bytes;
        Replace(bytes, "sbtl", "meta");
        Replace(bytes, "tx3g", entry);
        using var film = words.With(bytes);
        Assert.Contains(film.Exiftool(), line => line.Contains(entry, StringComparison.Ordinal));

        using var stripped = film.Stripped(out var stripping);

        Assert.Equal(["meta"], stripping.LeftOut);
        Assert.False(stripping.LeavesOutWords);
        Assert.False(stripped.Holds(ToldFilm.Place));
        Assert.DoesNotContain(stripped.Exiftool(), line => line.Contains(entry, StringComparison.Ordinal));
        Assert.Equal(film.Frames(), stripped.Frames());
    }

    [Fact]
    public void Captions_inside_are_left_out_and_that_is_told()
    {
        using var film = ToldFilm.Of("words-inside.mp4", Kinds["words-inside.mp4"]);
        using var other = ToldFilm.Of("words-inside.mkv", Kinds["words-inside.mkv"]);

        using var stripped = film.Stripped(out var stripping);
        using var otherStripped = other.Stripped(out var otherStripping);

        Assert.True(stripping.LeavesOutWords);
        Assert.True(otherStripping.LeavesOutWords);
    }

    // ISO/IEC 14496-12, 8.1.2 (free), 11.1 (uuid), and what some cameras write behind the last box.
    [Theory]
    [InlineData("uuid")]
    [InlineData("free")]
    [InlineData("skip")]
    [InlineData("meta")]
    [InlineData("udta")]
    [InlineData("mine")]
    [InlineData("")]
    public void Whatever_stands_in_a_box_that_no_player_needs_is_gone(string kind)
    {
        using var plain = ToldFilm.Of("plain.mp4");
        var told = Encoding.ASCII.GetBytes($"................{ToldFilm.Telltale}");
        using var film = plain.With([.. plain.Bytes, .. kind.Length > 0 ? Mp4.Box(kind, told) : told]);

        using var stripped = film.Stripped(out _);

        Assert.False(stripped.Holds(ToldFilm.Telltale));
        Assert.Equal(film.Frames(), stripped.Frames());
    }

    // What lies among the media data and belongs to no picture or sound: a camera's own, or the rest of something that was cut away.
    [Fact]
    public void Of_the_media_data_only_pictures_and_sounds_stay()
    {
        using var plain = ToldFilm.Of("plain.mp4");
        using var film = plain.With([.. plain.Bytes, .. Mp4.Box("mdat", Encoding.ASCII.GetBytes(ToldFilm.Telltale))]);

        using var stripped = film.Stripped(out _);

        Assert.False(stripped.Holds(ToldFilm.Telltale));
        Assert.Equal(film.Frames(), stripped.Frames());
    }

    [Fact]
    public void A_film_of_another_kind_is_known_as_one_and_left_as_it_is()
    {
        using var film = ToldFilm.Of("old.avi", "-c:v", "mpeg4", "-c:a", "mp3");

        using var stripped = film.Stripped(out var stripping);

        Assert.False(stripping.IsKnown);
        Assert.Equal(film.Bytes, stripped.Bytes);
    }

    [Theory]
    [InlineData("plain.mp4")]
    [InlineData("fragments.mp4")]
    [InlineData("words-inside.mp4")]
    [InlineData("plain.webm")]
    [InlineData("words-inside.mkv")]
    public void However_a_film_is_spoilt_nothing_is_thrown_and_nothing_grows(string name)
    {
        using var film = ToldFilm.Of(name, Kinds[name]);
        var whole = film.Bytes;
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte, Gen.Int[whole.Length / 2, whole.Length * 3 / 2]).Sample((at, with, length) =>
        {
            // Half of them are cut short as well.
            var spoilt = whole[..Math.Min(length, whole.Length)];
            // The tables of an MP4 stand at one of its ends.
            at = at % 2 == 0 ? Math.Min(at, 4000) : Math.Max(0, spoilt.Length - 1 - (at % 8000));
            spoilt[Math.Min(at, spoilt.Length - 1)] = with;
            using var stream = new MemoryStream();
            stream.Write(spoilt);
            FilmMetadata.Find(stream).Apply(stream);
            Assert.Equal(spoilt.Length, stream.Length);
        });
    }

    [Fact]
    public void A_size_that_leads_out_of_the_file_is_no_box()
    {
        var film = new byte[64];
        "ftyp"u8.CopyTo(film.AsSpan(4));
        film[3] = 16;
        BinaryPrimitives.WriteInt64BigEndian(film.AsSpan(24), long.MaxValue);
        film[19] = 1;
        "moov"u8.CopyTo(film.AsSpan(20));
        using var stream = new MemoryStream(film);

        Assert.False(FilmMetadata.Find(stream).IsKnown);
    }

    // No place, no date, no name: of what exiftool knows only what a player needs has a value.
    private static void AssertSilent(ToldFilm film)
    {
        string[] silent = ["0000:00:00 00:00:00", "(none)", "(Binary data", ""];
        string[] told =
        [
            .. from line in film.Exiftool()
               let parts = line.Split(':', 2)
               let tag = parts[0].Split(']')[^1].Trim()
               where tag.Contains("Date", StringComparison.Ordinal) || tag.Contains("GPS", StringComparison.Ordinal)
                   || tag is "Title" or "Artist" or "Make" or "HandlerDescription" or "CompressorName" or "MuxingApp" or "WritingApp" or "Encoder"
                       or "LocationInformation" or "TagName" or "AttachedFileName" or "ChapterString" or "TrackName" or "HandlerVendorID"
               where !silent.Contains(parts[1].Trim())
               select line,
        ];
        Assert.Empty(told);
        // MetadataExtractor 2.4.3 doesn't know Matroska.
        string[] extracted = Path.GetExtension(film.Path) is ".webm" or ".mkv" ? [] : film.Extracted();
        Assert.DoesNotContain(extracted, line => line.Contains("2024", StringComparison.Ordinal) || line.Contains("GPS", StringComparison.Ordinal));
    }

    private static void Replace(byte[] bytes, string text, string by)
    {
        var at = bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(text));
        Assert.True(at > 0);
        for (; at >= 0; at = bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(text)))
            Encoding.ASCII.GetBytes(by).CopyTo(bytes, at);
    }
}
