using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using HintBook.Cards.Kept;
using HintBook.Reading;

namespace HintBook.Publishing.Unchanged;

/// <summary>
/// Knows the last publish again. Its outcome is kept in the cache under a digest of everything that it follows from, and of everything that it made: every
/// file of the book's folder, every file of the output folder, what was asked for, and this build. Where all of that is as it was then, a publish would make
/// the same files again and tell the same, so the outcome is taken instead. Where anything differs, is missing or can't be read, there is none to take.
/// </summary>
internal sealed class LastPublish
{
    /// <summary>The file's name in the cache.</summary>
    public const string FileName = "publish.kept";

    private const string MadeList = "made.json";
    private static readonly string[] Lists = [AddressList.FileName, AddressList.FormerName];

    private readonly string book;
    private readonly PublishOptions options;
    private readonly FolderContents? read;
    private readonly CancellationToken stop;

    private LastPublish(string book, PublishOptions options, FolderContents? read, CancellationToken stop)
    {
        (this.book, this.options, this.read, this.stop) = (book, options, read, stop);
    }

    /// <summary>Reads what the next publish will follow from, before it reads anything itself.</summary>
    /// <param name="path">The folder of the book, or of the shelf.</param>
    /// <param name="options">What is asked for.</param>
    /// <param name="stop">Ends it.</param>
    /// <param name="isShelf">Whether it is a shelf; a folder that is neither that nor a book isn't looked at.</param>
    public static LastPublish Before(string path, PublishOptions options, CancellationToken stop, bool isShelf = false)
    {
        var folder = FullPath(path);
        // With a card in place of a lost key the site that is there decides what can be made.
        var isKnownAgain = options.WithCard is null && (isShelf || File.Exists(Path.Combine(folder, "book.yaml")));
        var contents = isKnownAgain ? InBook(folder, FullPath(options.OutputFor(path)), stop) : null;
        return new(folder, options, contents, stop);
    }

    private static string FullPath(string path) => Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));

    /// <summary>What the last publish told, if nothing has changed since; null otherwise, and where somebody else is at work in the output folder.</summary>
    public KeptOutcome? Find()
    {
        var output = options.OutputFor(book);
        if (read is null || !File.Exists(Path.Combine(OutputFolder.CacheIn(output), FileName)))
            return null;
        try
        {
            using var folder = OutputFolder.Open(output, book, options.Disk, stop);
            return Find(folder);
        }
        catch (Exception failure) when (failure is MachineFailure or IOException or UnauthorizedAccessException)
        {
            // The publish itself will meet the same, and say so.
            return null;
        }
    }

    /// <summary>The same for an output folder that is open.</summary>
    public KeptOutcome? Find(OutputFolder folder) =>
        read is not null
        && File.Exists(Path.Combine(folder.Cache, FileName))
        && InOutput(folder, stop) is { } made
        && PrintCache.Open(folder.Cache, FileName).TryTake(KeyOf(read, made, folder), out var kept)
            ? KeptOutcome.Read(kept)?.Again(new(read.Files, made.Files))
            : null;

    /// <summary>
    /// Keeps how a publish ended, once it has. If a file of the book has changed meanwhile, or the list of addresses could not be kept in the book as it was
    /// in the output folder, nothing is kept: the next publish would find another book.
    /// </summary>
    /// <param name="outcome">What was told.</param>
    /// <param name="folder">The output folder, after the swap.</param>
    public void Keep(KeptOutcome outcome, OutputFolder folder)
    {
        try
        {
            if (read is null
                || InBook(book, FullPath(folder.Root), stop) is not { } now
                || !now.IsAs(read, aside: path => Lists.Contains(Path.GetFileName(path)))
                || InOutput(folder, stop) is not { } made
                || !HasSameLists(now, made, outcome))
            {
                return;
            }

            var kept = new KeptWork();
            kept.Keep(KeyOf(now, made, folder), outcome.Write());
            PrintCache.Save(kept, folder.Cache, options.Disk, FileName);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or OperationCanceledException)
        {
            // What was published is in its place; only the next publish has to do everything again.
        }
    }

    // A link may lead to what isn't looked at. Folders like those of version control are never read.
    private static FolderContents? InBook(string root, string output, CancellationToken stop)
    {
        var contents = FolderContents.Of(root, path => path == output || IsHidden(path), stop);
        return contents is { HasLinks: false } ? contents : null;

        bool IsHidden(string path) => Path.GetFileName(path).StartsWith('.') && Path.GetDirectoryName(path) == root && Directory.Exists(path);
    }

    // Of what a publish keeps for itself, only the list of its files decides anything that others see.
    private static FolderContents? InOutput(OutputFolder folder, CancellationToken stop) => FolderContents.Of(
        folder.Root,
        path => Path.GetFileName(path) != MadeList && Path.GetFileName(Path.GetDirectoryName(path)) == OutputFolder.Own,
        stop);

    private static bool HasSameLists(FolderContents inBook, FolderContents made, KeptOutcome outcome)
    {
        (string InBook, string InOutput)[] books =
            outcome.Report.IsShelf ? [.. outcome.Books.Select(each => ($"{each.Name}/", $"books/{each.Name}/"))] : [("", "")];
        return Array.TrueForAll(books, each => Array.TrueForAll(Lists, list => inBook[each.InBook + list] == made[each.InOutput + list]));
    }

    private string KeyOf(FolderContents inBook, FolderContents made, OutputFolder folder) => WorkKey.Of("publish", input =>
    {
        input.Write(RuntimeInformation.FrameworkDescription);
        input.Write(RuntimeInformation.RuntimeIdentifier);
        input.Write(CultureInfo.InvariantCulture.CompareInfo.Version.FullVersion);
        input.Write(book);
        input.Write(folder.Root);
        input.Write((int)options.Paper);
        input.Write(string.Join(' ', options.Copies));
        input.Write(options.Date?.ToString("O", CultureInfo.InvariantCulture) ?? "");
        input.Write(options.FilmTools is { } tools ? $"{tools.Ffmpeg}\n{tools.Ffprobe}" : "");
        inBook.Write(input);
        made.Write(input);
    });
}
