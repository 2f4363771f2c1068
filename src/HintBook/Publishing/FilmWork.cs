using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;

namespace HintBook.Publishing;

/// <summary>Copies the films that clips are taken from, under names that say nothing.</summary>
internal static class FilmWork
{
    /// <summary>The films by clip file, as paths relative to the site.</summary>
    public static ImmutableDictionary<string, string> Of(CheckedBook book, Desk desk)
    {
        var files = book.Book!.Stages.Select(stage => stage.Clip?.File.Value).OfType<string>().Distinct().Order(StringComparer.Ordinal).ToArray();
        var films = ImmutableDictionary.CreateBuilder<string, string>();
        foreach (var file in files)
        {
            desk.Stop.ThrowIfCancellationRequested();
            var source = Path.Combine(book.Folder!.Root, file);
            films[file] = $"films/{NameOf(source, book.Book.Identity)}{Path.GetExtension(file).ToLowerInvariant()}";
            desk.Copy(source, Path.Combine("site", films[file]));
        }

        return films.ToImmutable();
    }

    private static string NameOf(string source, string identity)
    {
        using var film = File.OpenRead(source);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes($"hintbook film\n{identity}\n"));
        hash.AppendData(SHA256.HashData(film));
        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }
}
