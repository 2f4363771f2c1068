using System.Text;
using HintBook.Photos.Films.Metadata;
using HintBook.Tests.House;
using MetadataExtractor;

namespace HintBook.Tests.Photos.Films;

/// <summary>
/// A film that Debian's ffmpeg makes, of six seconds with a key frame each second, that tells where it was taken, when and by whom. Where ffmpeg
/// can't be had the test is skipped.
/// </summary>
internal sealed class ToldFilm : IDisposable
{
    /// <summary>Stands in every text that the film tells.</summary>
    public const string Telltale = "workshop-bench-07";

    /// <summary>The place (ISO 6709), in the form that films write.</summary>
    public const string Place = "+52.5163+013.3777/";

    // What is seen and heard, encoded once: H.264 and AAC.
    private static readonly Lazy<byte[]> Shown = new(() =>
    {
        using var film = new ToldFilm("shown.mp4");
        film.Ffmpeg(
        [
            "-f", "lavfi", "-i", "testsrc=size=176x144:rate=25:duration=6", "-f", "lavfi", "-i", "sine=frequency=440:duration=6",
            "-g", "25", "-pix_fmt", "yuv420p", "-c:v", "libx264", "-c:a", "aac", "shown.mp4",
        ]);
        return film.Bytes;
    });

    private readonly string folder = System.IO.Directory.CreateTempSubdirectory("hintbook-film-").FullName;

    private ToldFilm(string name) => Path = System.IO.Path.Combine(folder, name);

    public string Path { get; }

    public byte[] Bytes
    {
        get => File.ReadAllBytes(Path);
        init => File.WriteAllBytes(Path, value);
    }

    /// <summary>A film.</summary>
    /// <param name="name">Its name, of which the ending says which kind it is.</param>
    /// <param name="more">What ffmpeg is given besides.</param>
    public static ToldFilm Of(string name, params string[] more)
    {
        DebianProgram.Have("ffmpeg", "ffmpeg");
        var film = new ToldFilm(name);
        film.Ffmpeg(
        [
            "-i", film.Write("shown.mp4", Shown.Value), "-i", film.Write("words.srt", $"1\n00:00:01,000 --> 00:00:02,000\n{Telltale} {Place}\n"),
            "-metadata", $"title={Telltale}", "-metadata", $"artist={Telltale}", "-metadata", $"location={Place}", "-metadata", $"make={Telltale}",
            "-metadata", "creation_time=2024-05-06T07:08:09Z", "-metadata:s:v:0", $"title={Telltale}", "-metadata:s:v:0", $"handler_name={Telltale}",
            "-map", "0:v", "-map", "0:a", "-c:v", "copy", "-c:a", "copy",
            .. more,
            name,
        ]);
        return film;
    }

    /// <summary>The same film with other bytes.</summary>
    public ToldFilm With(byte[] bytes) => new(System.IO.Path.GetFileName(Path)) { Bytes = bytes };

    /// <summary>The film as it is published.</summary>
    public ToldFilm Stripped(out FilmStripping stripping)
    {
        var bytes = Bytes;
        using var stream = new MemoryStream(bytes);
        stripping = FilmMetadata.Find(stream);
        stripping.Apply(stream);
        Assert.Equal(File.ReadAllBytes(Path).Length, stream.Length);
        return With(bytes);
    }

    /// <summary>What Debian's exiftool finds in it, in timed tracks too: a line for each, the file's own name and times on the disk aside.</summary>
    public string[] Exiftool()
    {
        DebianProgram.Have("exiftool", "libimage-exiftool-perl");
        return [.. DebianProgram.Run(folder, "exiftool", "-a", "-ee3", "-G1", "-s", "-u", Path).Split('\n')
            .Where(line => !line.StartsWith("[System]", StringComparison.Ordinal))];
    }

    /// <summary>What MetadataExtractor finds in it.</summary>
    public string[] Extracted() =>
    [
        .. from directory in ImageMetadataReader.ReadMetadata(Path)
           where directory.Name != "File"
           from tag in directory.Tags
           select $"{directory.Name}: {tag.Name} = {tag.Description}",
    ];

    /// <summary>All pictures and sounds as they are decoded, each with its time and its hash.</summary>
    public string[] Frames() => Frames("0:v", "0:a");

    /// <summary>Those of some of its streams.</summary>
    public string[] Frames(params string[] streams) =>
    [
        .. DebianProgram.Run(folder, "ffmpeg", ["-v", "error", "-i", Path, .. streams.SelectMany(stream => new[] { "-map", stream }), "-f", "framemd5", "-"])
            .Split('\n').Where(line => !line.StartsWith('#') && line.Length > 0),
    ];

    /// <summary>The picture at a moment, gray and small: 16 by 12.</summary>
    public byte[] Picture(double at)
    {
        var seconds = at.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
        Ffmpeg(["-ss", seconds, "-i", Path, "-frames:v", "1", "-vf", "scale=16:12,format=gray", "-f", "rawvideo", "picture.raw"]);
        return File.ReadAllBytes(System.IO.Path.Combine(folder, "picture.raw"));
    }

    public bool Holds(string text) => Encoding.Latin1.GetString(Bytes).Contains(text, StringComparison.Ordinal);

    public string Write(string name, string text) => Write(name, Encoding.UTF8.GetBytes(text));

    private string Write(string name, byte[] content)
    {
        var path = System.IO.Path.Combine(folder, name);
        File.WriteAllBytes(path, content);
        return path;
    }

    public void Dispose() => System.IO.Directory.Delete(folder, recursive: true);

    private void Ffmpeg(string[] arguments)
    {
        DebianProgram.Run(folder, "ffmpeg", ["-nostdin", "-v", "error", "-y", .. arguments]);
        Assert.True(File.Exists(Path), "ffmpeg made no film.");
    }
}
