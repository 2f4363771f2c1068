using HintBook.Books;
using HintBook.Publishing.Films;
using HintBook.Tests.House;
using HintBook.Tests.Photos.Films;

namespace HintBook.Tests.Publishing.Films;

// The films have 25 pictures a second and a key frame each second. Debian's ffmpeg decodes the clips and the films, and each picture is compared.
public class ClipCutterTests
{
    private static readonly Dictionary<string, string[]> Kinds = new(StringComparer.Ordinal)
    {
        ["plain.mp4"] = [],
        ["fragments.mp4"] = ["-movflags", "frag_keyframe+empty_moov"],
        ["camera.mov"] = ["-timecode", "01:00:00:00"],
        ["plain.mkv"] = [],
        ["plain.webm"] = ["-c:v", "libvpx", "-deadline", "realtime", "-g", "25", "-keyint_min", "25", "-auto-alt-ref", "0", "-c:a", "libopus"],
        ["without-sound.mp4"] = ["-an"],
    };

    public static TheoryData<string, double, double?, double> Clips()
    {
        var clips = new TheoryData<string, double, double?, double>();
        foreach (var kind in Kinds.Keys)
        {
            clips.Add(kind, 1.5, 3.4, 2);
            clips.Add(kind, 2, 4, 2);
        }

        clips.Add("plain.mp4", 4.2, null, 5);
        clips.Add("plain.mp4", 0, 1, 0);
        return clips;
    }

    [Theory]
    [MemberData(nameof(Clips))]
    public void A_clip_has_the_pictures_of_its_part_from_the_first_key_frame_in_it(string kind, double from, double? to, double key)
    {
        using var film = ToldFilm.Of(kind, Kinds[kind]);
        using var clip = Cut(film, from, to, out var start);

        // Kinds of film without an edit list begin up to three pictures late, all of them.
        Assert.InRange(start.TotalSeconds, key, key + 0.1);
        var all = Hashes(film);
        var shown = Hashes(clip);
        // Up to three pictures before the end may be missing: those that need one behind the end.
        var most = (int)Math.Ceiling(((to ?? 6) - start.TotalSeconds) * 25);
        Assert.InRange(shown.Length, most - 3, most);
        Assert.Equal(all.Skip((int)Math.Round(key * 25)).Take(shown.Length), shown);
        Assert.False(clip.Holds(ToldFilm.Telltale));
    }

    // One key frame, at the start of the film.
    [Theory]
    [InlineData("h264.mp4", "libx264", 2.6, 4)]
    [InlineData("vp8.webm", "libvpx", 2.6, 4)]
    public void Where_the_next_key_frame_is_far_away_the_pictures_are_encoded_anew(string name, string encoder, double from, double to)
    {
        using var film = ToldFilm.Of(name, "-c:v", encoder, "-g", "1000", "-c:a", name.EndsWith("webm", StringComparison.Ordinal) ? "libopus" : "copy");
        using var clip = Cut(film, from, to, out var start);

        Assert.Equal(from, start.TotalSeconds, 2);
        Assert.InRange(Hashes(clip).Length, (int)((to - from) * 25) - 1, (int)((to - from) * 25) + 1);
        // The first picture looks like that of the film at that moment, more than like any that is half a second away.
        var first = clip.Picture(0);
        Assert.InRange(Difference(first, film.Picture(from)), 0, 6);
        Assert.True(Difference(first, film.Picture(from)) < Difference(first, film.Picture(from - 0.5)));
    }

    [Fact]
    public void What_is_no_film_is_told_with_what_the_program_says()
    {
        using var film = ToldFilm.Of("plain.mp4");
        using var broken = film.With("no film at all"u8.ToArray());

        var target = broken.Path + ".clip.mp4";
        var (_, failure) = ClipCutter.Cut(Tools(), broken.Path, Part(1, 2), target, CancellationToken.None);

        Assert.Contains("Invalid data", failure, StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_that_is_gone_is_told() => Assert.NotNull(
        ClipCutter.Cut(new("/nowhere/ffmpeg", "/nowhere/ffprobe"), "film.mp4", Part(1, 2), "clip.mp4", CancellationToken.None).Failure);

    [Fact]
    public void A_stop_ends_it() => Assert.ThrowsAny<OperationCanceledException>(() =>
        ClipCutter.Cut(new("/nowhere/ffmpeg", "/nowhere/ffprobe"), "film.mp4", Part(1, 2), "clip.mp4", new CancellationToken(canceled: true)));

    private static ToldFilm Cut(ToldFilm film, double from, double? to, out TimeSpan start)
    {
        var target = Path.Combine(Path.GetDirectoryName(film.Path)!, "clip" + Path.GetExtension(film.Path));
        (start, var failure) = ClipCutter.Cut(Tools(), film.Path, Part(from, to), target, CancellationToken.None);
        Assert.Null(failure);
        return film.With(File.ReadAllBytes(target));
    }

    private static FilmTools Tools()
    {
        DebianProgram.Have("ffmpeg", "ffmpeg");
        return Assert.IsType<FilmTools>(FilmTools.OnPath());
    }

    private static FilmPart Part(double from, double? to) => new(TimeSpan.FromSeconds(from), to is { } end ? TimeSpan.FromSeconds(end) : null);

    // framemd5: stream, times, size and hash, parted by commas.
    private static string[] Hashes(ToldFilm film) => [.. film.Frames("0:v").Select(line => line.Split(',')[^1].Trim())];

    private static double Difference(byte[] one, byte[] other) => one.Zip(other).Average(pair => Math.Abs(pair.First - pair.Second));
}
