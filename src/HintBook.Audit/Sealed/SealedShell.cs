using System.Collections.Immutable;
using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;

namespace HintBook.Audit.Sealed;

/// <summary>A sealed page as it lies on the site.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Text">Its text.</param>
internal sealed partial record SealedShell(string Path, string Text)
{
    private static readonly string[] Lists = ["solution", "reset"];

    /// <summary>Its name among the keys.</summary>
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>What its <c>body</c> says that it is, in its folder: pages of one kind must be alike.</summary>
    public required string Kind { get; init; }

    public required string Language { get; init; }

    /// <summary>The tag of the book, 8 bytes.</summary>
    public required byte[] Tag { get; init; }

    /// <summary>The tag of the epoch, 8 bytes.</summary>
    public required byte[] Epoch { get; init; }

    /// <summary>The page's version, 8 bytes.</summary>
    public required byte[] Version { get; init; }

    public required ImmutableArray<SealedPiece> Pieces { get; init; }

    /// <summary>The page without its name, its version and what is sealed.</summary>
    public string Skeleton
    {
        get
        {
            var emptied = PieceOf().Replace(Text, piece => $"<div data-sealed=\"{piece.Groups["name"].Value}\">");
            return VersionOf().Replace(emptied, "").Replace(Name, "", StringComparison.Ordinal);
        }
    }

    /// <summary>Reads a page; null for one in which nothing is sealed.</summary>
    public static SealedShell? Read(string path, string text)
    {
        var pieces = PieceOf().Matches(text).Select(piece => new SealedPiece(piece.Groups["name"].Value, SealedForm.Bytes(piece.Groups["text"].Value) ?? []));
        using var page = new HtmlParser().ParseDocument(text);
        var root = page.DocumentElement;
        return root.GetAttribute("data-seal") is null
            ? null
            : new(path, text)
            {
                Kind = path[..(path.LastIndexOf('/') + 1)] + page.Body?.ClassName,
                Language = root.GetAttribute("lang") ?? "",
                Tag = Hex(root.GetAttribute("data-tag")),
                Epoch = Hex(root.GetAttribute("data-epoch")),
                Version = Hex(root.GetAttribute("data-version")),
                Pieces = [.. pieces],
            };
    }

    /// <summary>The name of the page whose key opens a piece: on a list of stages that of the stage, so that no list is a way round a card.</summary>
    public string KeyNameOf(SealedPiece piece) => Lists.Contains(Name) ? piece.Name.Split('-')[0] : Name;

    /// <summary>Where a piece belongs.</summary>
    public byte[] ContextOf(SealedPiece piece) => Unsealing.Fields("piece", Tag, Epoch, Language, Name, Version, piece.Name);

    /// <summary>The page as its reader sees it once all is open.</summary>
    /// <param name="texts">What was sealed, piece by piece.</param>
    public string With(IReadOnlyList<string> texts)
    {
        var next = 0;
        return PieceOf().Replace(Text, piece => $"<div data-sealed=\"{piece.Groups["name"].Value}\">{texts[next++]}");
    }

    private static byte[] Hex(string? digits) => digits is not null && Digits().IsMatch(digits) ? Convert.FromHexString(digits) : [];

    [GeneratedRegex("""<div data-sealed="(?<name>[^"]*)" data-text="(?<text>[^"]*)">""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex PieceOf();

    [GeneratedRegex(" data-version=\"[0-9a-f]{16}\"", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex VersionOf();

    [GeneratedRegex("^[0-9a-f]{16}$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Digits();
}

/// <summary>A sealed piece of a page.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Closed">Its sealed bytes; none where something else stands in their place.</param>
internal sealed record SealedPiece(string Name, byte[] Closed);
