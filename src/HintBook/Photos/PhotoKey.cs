using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace HintBook.Photos;

/// <summary>
/// Stands for one photo developed in one way for one book: the same key means the same pictures, byte for byte.
/// </summary>
/// <param name="Hex">64 small hexadecimal digits.</param>
public readonly record struct PhotoKey(string Hex)
{
    // 64 bits: two of a book's 2,000 photos meet by chance once in 10^13 books.
    private const int NameLength = 16;

    /// <summary>
    /// SHA-256 over the settings, the salt and the photo. The salt keeps a picture's name from being the hash of a file that
    /// somebody else may have.
    /// </summary>
    /// <param name="original">The photo as the author saved it.</param>
    /// <param name="salt">The book's identity.</param>
    /// <param name="settings">How it is developed; the two limits don't count, since they change no picture.</param>
    public static PhotoKey Compute(ReadOnlySpan<byte> original, string salt, PhotoSettings settings)
    {
        var ways = $"hintbook picture {settings.Version}\n{string.Join(' ', settings.Widths)}\n{settings.Quality}\n";
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        AppendWithLength(hash, Encoding.UTF8.GetBytes(ways));
        AppendWithLength(hash, Encoding.UTF8.GetBytes(salt));
        hash.AppendData(original);
        return new(Convert.ToHexStringLower(hash.GetHashAndReset()));
    }

    /// <summary>
    /// The file of one width, relative to the site. The <c>w</c> keeps a width of 800 from being mistaken for a lock that opens at 800.
    /// </summary>
    public string PathOf(int width) => $"pictures/{Hex[..NameLength]}-{width}w.jpg";

    /// <summary>The file in a folder of developed photos that says which pictures this one has there.</summary>
    public string RecordIn(string cache) => Path.Combine(cache, Hex + ".txt");

    /// <summary>The file of a drawn mark, relative to the site.</summary>
    public string PathOfDrawing() => $"pictures/{Hex[..NameLength]}-mark.svg";

    private static void AppendWithLength(IncrementalHash hash, byte[] bytes)
    {
        Span<byte> length = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(length, bytes.Length);
        hash.AppendData(length);
        hash.AppendData(bytes);
    }
}
