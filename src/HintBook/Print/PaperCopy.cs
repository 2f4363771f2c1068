using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using HintBook.Books;
using HintBook.Cards;

namespace HintBook.Print;

/// <summary>A copy for which papers of its own are made.</summary>
/// <param name="Serial">Its serial.</param>
/// <param name="Folder">The folder of its papers: its serial where that is a name on every disk.</param>
internal sealed record PaperCopy(string Serial, string Folder)
{
    private const int HashLetters = 8;

    /// <summary>The copies of a book that are in use, in its order.</summary>
    /// <param name="book">The book.</param>
    /// <param name="coded">Those of a sealed book; empty for one that lies open.</param>
    /// <param name="only">The serials of those that are asked for; empty for all.</param>
    public static ImmutableArray<PaperCopy> In(Book book, ImmutableArray<CodedCopy> coded, ImmutableArray<string> only)
    {
        var all = coded.IsEmpty
            ? book.Copies.Where(copy => !copy.Retired).Select(copy => new PaperCopy(copy.Serial.Value, FolderOf(copy.Serial.Value)))
            : coded.Select(copy => new PaperCopy(copy.Serial, copy.Folder));
        return [.. all.Where(copy => only.IsEmpty || only.Contains(copy.Serial))];
    }

    private static string FolderOf(string serial) =>
        CodedCopy.FolderOf(serial, $"copy-{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(serial)))[..HashLetters]}");
}
