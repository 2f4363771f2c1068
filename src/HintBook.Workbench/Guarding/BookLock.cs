using System.Security.Cryptography;
using System.Text;

namespace HintBook.Workbench.Guarding;

/// <summary>
/// Tells whether another workbench has the same book on this computer. A file outside the book is held open for it, which ends with the program,
/// however that ends, and is gone after it.
/// </summary>
internal sealed class BookLock : IDisposable
{
    private readonly FileStream? held;

    private BookLock(FileStream? held, bool isTaken) => (this.held, IsTaken) = (held, isTaken);

    /// <summary>Whether another workbench has the book.</summary>
    public bool IsTaken { get; }

    /// <summary>Takes a book, where nobody has it.</summary>
    /// <param name="root">The book's folder, as a full path.</param>
    public static BookLock Take(string root)
    {
        root = Path.TrimEndingDirectorySeparator(root);
        var real = Directory.Exists(root) ? new DirectoryInfo(root).ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? root : root;
        var name = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(real)).AsSpan(0, 16));
        var path = Path.Combine(Path.GetTempPath(), $"hintbook-workbench-{name}.lock");
        try
        {
            // Nothing is written, so that a file which was left behind says nothing and is simply taken over.
            return new(new(path, new FileStreamOptions
            {
                Mode = FileMode.OpenOrCreate,
                Access = FileAccess.ReadWrite,
                Share = FileShare.None,
                Options = FileOptions.DeleteOnClose,
            }), isTaken: false);
        }
        catch (IOException)
        {
            // Otherwise there is no place for such a file, so that nothing can be told.
            return new(null, isTaken: File.Exists(path));
        }
        catch (UnauthorizedAccessException)
        {
            // Another user's: whether they are at it can't be told, and the texts are held against each other in any case.
            return new(null, isTaken: false);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => held?.Dispose();
}
