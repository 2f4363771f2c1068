using System.Text.RegularExpressions;

namespace HintBook.Audit.Sealed;

/// <summary>
/// Tells sealed bytes by their form, so that they aren't read as words. Whatever has another form is read like any text; whether sealed bytes open is
/// seen with the cards.
/// </summary>
internal static partial class SealedForm
{
    // By chance such a run comes once in some 10^13 bytes.
    private const int LongestReadable = 32;

    /// <summary>The bytes in base64; null if they are no base64, or hold a stretch of plain text.</summary>
    public static byte[]? Bytes(string base64)
    {
        var bytes = new byte[base64.Length];
        return base64.Length > 0 && Convert.TryFromBase64String(base64, bytes, out var length) && !IsReadable(bytes.AsSpan(0, length)) ? bytes[..length] : null;
    }

    /// <summary>Whether an attribute holds a sealed piece, or the names of book, epoch and version in the first element of a page.</summary>
    public static bool Holds(string element, string attribute, string value) => attribute switch
    {
        "data-text" => IsLengthOfPiece(Bytes(value)?.Length ?? 0),
        "data-tag" or "data-epoch" or "data-version" => element == "html" && Name().IsMatch(value),
        _ => false,
    };

    /// <summary>Whether a script hands on sealed bytes and does nothing else: a table of slots, or a segment of a file.</summary>
    public static bool IsHandedOn(string path, string script) =>
        HandedOn().Match(script) is { Success: true } said && said.Groups["name"].Value + ".js" == path && Bytes(said.Groups["bytes"].Value) is not null;

    /// <summary>A script that hands on sealed bytes, in groups.</summary>
    public static Match Read(string script) => HandedOn().Match(script);

    /// <summary>Whether a piece can be as long: all are padded to 1, 2, 4 … 64 KiB.</summary>
    public static bool IsLengthOfPiece(int length)
    {
        var padded = length - Unsealing.NonceLength - Unsealing.TagLength;
        return padded is >= 1024 and <= 64 * 1024 && int.IsPow2(padded);
    }

    private static bool IsReadable(ReadOnlySpan<byte> bytes)
    {
        var run = 0;
        foreach (var one in bytes)
        {
            run = one is >= 0x20 and < 0x7F or (byte)'\n' ? run + 1 : 0;
            if (run == LongestReadable)
                return true;
        }

        return false;
    }

    [GeneratedRegex("^[0-9a-f]{16}$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Name();

    [GeneratedRegex(
        """\Ahintbook\.take\("(?<name>(k/(?<table>[a-z0-9-]+)|p/(?<file>[a-z0-9]{16}))-(?<part>[0-9]{1,4}))","""
        + """("(?<epoch>[0-9a-f]{16})",(?<size>[0-9]{1,5}),)?"(?<bytes>[A-Za-z0-9+/]+={0,2})"\)\n\z""",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex HandedOn();
}
