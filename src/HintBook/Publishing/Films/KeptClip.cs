using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using HintBook.Books;
using HintBook.Photos.Films.Metadata;

namespace HintBook.Publishing.Films;

/// <summary>
/// A clip in the cache, with a record beside it: how clips were cut then, at which moment of the film it starts, and the hash of its bytes. A cache
/// that was cut short, mixed up or tampered with is a miss, never an error.
/// </summary>
internal sealed class KeptClip(string path, OutputWriter writer)
{
    // Another number for another way of cutting.
    private const string How = "clip 1";

    /// <summary>The clip's full path.</summary>
    public string Path => path;

    /// <summary>The moment of the film that is its first.</summary>
    public TimeSpan Start { get; private set; }

    /// <summary>Whether it is in the cache, as it was cut.</summary>
    public bool IsThere
    {
        get
        {
            try
            {
                if (!File.Exists(Record) || !File.Exists(path) || File.ReadAllText(Record).Split('\n') is not [How, var start, var hash, ""])
                    return false;
                if (!long.TryParse(start, NumberStyles.None, CultureInfo.InvariantCulture, out var ticks) || hash != Hash())
                    return false;
                Start = TimeSpan.FromTicks(ticks);
                return true;
            }
            catch (IOException)
            {
                return false;
            }
        }
    }

    private string Record => path + ".txt";

    /// <summary>Cuts it, and gives null if that went well, else why it didn't, in one line.</summary>
    /// <param name="tools">The programs; null if there are none any more.</param>
    /// <param name="film">The film's full path.</param>
    /// <param name="part">The clip.</param>
    public string? Cut(FilmTools? tools, string film, FilmPart part)
    {
        if (tools is null)
            return "it isn't there any more";
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        var unfinished = System.IO.Path.ChangeExtension(path, ".new" + System.IO.Path.GetExtension(path));
        try
        {
            var (start, failure) = ClipCutter.Cut(tools, film, part, unfinished, writer.Stop);
            if (failure is not null)
                return failure;
            Strip(unfinished);
            writer.Disk.Replace(unfinished, path);
            Start = start;
            writer.Disk.Write(Record, Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{How}\n{start.Ticks}\n{Hash()}\n")));
            return null;
        }
        finally
        {
            File.Delete(unfinished);
        }
    }

    // ffmpeg writes its own name here and there.
    private static void Strip(string clip)
    {
        using var file = new FileStream(clip, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        FilmMetadata.Find(file).Apply(file);
    }

    private string Hash()
    {
        using var file = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(file));
    }
}
