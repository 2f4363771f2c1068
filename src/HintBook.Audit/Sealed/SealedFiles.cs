using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Audit.Mentions;

namespace HintBook.Audit.Sealed;

/// <summary>
/// The sealed pictures and films in the folder <c>p</c> of a site: each opens with what stands in the pieces that show it. Safe for several threads.
/// </summary>
internal sealed partial class SealedFiles
{
    private readonly string folder;
    private readonly ImmutableArray<string> paths;
    private readonly Dictionary<string, string> byDigest;
    private readonly Secrets secrets;
    private readonly ConcurrentDictionary<string, Lazy<string?>> opened = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, bool> shown = new(StringComparer.Ordinal);
    private readonly ConcurrentBag<AuditFault> faults = [];

    /// <summary>The files of a site.</summary>
    /// <param name="folder">The site.</param>
    /// <param name="paths">Its files.</param>
    /// <param name="table">The digests of the pictures as they were made.</param>
    /// <param name="secrets">What may be told in films.</param>
    public SealedFiles(string folder, ImmutableArray<string> paths, AuditTable? table, Secrets secrets)
    {
        (this.folder, this.paths, this.secrets) = (folder, paths, secrets);
        byDigest = (table?.Digests ?? []).GroupBy(picture => picture.Value, picture => picture.Key, StringComparer.Ordinal)
            .ToDictionary(same => same.Key, same => same.Order(StringComparer.Ordinal).First(), StringComparer.Ordinal);
    }

    /// <summary>Where the pictures would lie that were found so far, if the site lay open.</summary>
    public IEnumerable<string> Pictures => opened.Values.Select(file => file.Value).OfType<string>().Distinct(StringComparer.Ordinal);

    /// <summary>Files that don't open, and those that no page shows. To be asked once every page was read.</summary>
    public IEnumerable<AuditFault> Faults =>
    [
        .. faults.OrderBy(fault => fault.File, StringComparer.Ordinal).ThenBy(fault => fault.Message, StringComparer.Ordinal),
        .. from path in paths
           where path.StartsWith("p/", StringComparison.Ordinal) && !shown.ContainsKey(path)
           select new AuditFault(path, 0, 0, "No sealed piece names this file, so it can't be told who may open it."),
    ];

    /// <summary>The same page with its pictures at the addresses at which they would lie open, and its films, which are read here, without any.</summary>
    public string In(string html, SealedShell shell) => FilmsOf().Replace(PicturesIn(html, shell), film =>
    {
        foreach (var fault in InFilm(film.Groups["file"].Value, shell))
            faults.Add(fault);
        return "";
    });

    private string PicturesIn(string html, SealedShell shell) => FilesOf().Replace(html, match =>
    {
        var up = string.Concat(Enumerable.Repeat("../", shell.Path.Count(letter => letter == '/')));
        var files = match.Groups["files"].Value.Split(';').Select(file => PathOf(file, shell)).OfType<string>().Select(path => up + path).ToArray();
        return files.Length == 0 ? "" : $" src=\"{files[^1]}\" srcset=\"{string.Join(", ", files.Select((file, i) => $"{file} {i + 1}w"))}\"";
    });

    private string? PathOf(string file, SealedShell shell)
    {
        if (Named().Match(file) is { Success: true } named)
            return opened.GetOrAdd(file, _ => new(() => PictureOf(Open(named, shell.Tag)))).Value;
        faults.Add(new(shell.Path, 0, 0, "A picture within a sealed piece has no file, key and length that could be read."));
        return null;
    }

    private string? PictureOf(byte[]? content) => content is null ? null : byDigest.GetValueOrDefault(Convert.ToHexStringLower(SHA256.HashData(content)));

    // A film by its kind, or what is said in one by the file that it would lie in.
    private IEnumerable<AuditFault> InFilm(string said, SealedShell shell)
    {
        if (Film().Match(said) is not { Success: true } named)
            return [new(shell.Path, 0, 0, "A film within a sealed piece has no file, key and length that could be read.")];
        if (Open(named, shell.Tag) is not { } content)
            return [];
        var (path, at) = (named.Groups["as"].Value, $"p/{named.Groups["name"].Value}-0.js");
        var read = path.EndsWith(".vtt", StringComparison.Ordinal)
            ? CaptionReader.Read(path, Encoding.UTF8.GetString(content), secrets)
            : MediaReader.Read($"{at}.mp4", secrets, () => new MemoryStream(content));
        return read.Faults.Select(fault => fault with { File = at, Line = 0, Column = 0, Message = $"Once it is opened with a card: {fault.Message}" });
    }

    // Name, key, number of segments, and length of the content, which is padded.
    private byte[]? Open(Match named, byte[] tag)
    {
        var (name, key, count) = (named.Groups["name"].Value, Convert.FromHexString(named.Groups["key"].Value), Number(named, "count"));
        using var content = new MemoryStream();
        for (var k = 0; k < count; k++)
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"p/{name}-{k}.js");
            shown[path] = true;
            var context = Unsealing.Fields("file", tag, name, k, k == count - 1 ? 1 : 0);
            if (!paths.Contains(path) || Unsealing.Open(key, context, ClosedIn(path)) is not { } segment)
            {
                faults.Add(new(path, 0, 0, "A sealed piece shows this file, and it isn't there or doesn't open."));
                return null;
            }

            content.Write(segment);
        }

        return content.ToArray()[..Math.Min((int)content.Length, Number(named, "length"))];
    }

    private byte[] ClosedIn(string path) => SealedForm.Bytes(SealedForm.Read(File.ReadAllText(Path.Combine(folder, path))).Groups["bytes"].Value) ?? [];

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(" data-sealed-files=\"(?<files>[^\"]*)\"", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex FilesOf();

    [GeneratedRegex(" data-sealed-(film|captions)=\"(?<file>[^\"]*)\"", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex FilmsOf();

    [GeneratedRegex(
        "^(?<name>[0-9a-z]{16}) (?<key>[0-9a-f]{32}) (?<count>[0-9]{1,4}) (?<length>[0-9]{1,9}) (?<as>video/[a-z0-9-]+|films/[A-Za-z0-9._-]+[.]vtt)$",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Film();

    [GeneratedRegex("^(?<name>[0-9a-z]{16}) (?<key>[0-9a-f]{32}) (?<count>[0-9]{1,4}) (?<length>[0-9]{1,9}) [0-9]+$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Named();
}
