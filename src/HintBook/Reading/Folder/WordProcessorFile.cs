namespace HintBook.Reading.Folder;

/// <summary>Tells files that aren't plain text by how they begin.</summary>
internal static class WordProcessorFile
{
    /// <summary>What kind of file it is, with its article; null for what may be plain text.</summary>
    /// <remarks>
    /// Rich text begins with <c>{\rtf</c> (Rich Text Format Specification 1.9.1), a PDF with <c>%PDF-</c> (ISO 32000-1, 7.5.2), a zip archive, which newer
    /// documents are, with <c>PK</c> 3 4 (ISO/IEC 21320-1), an older document with D0 CF 11 E0 A1 B1 1A E1 (MS-CFB, 2.2).
    /// </remarks>
    public static string? KindOf(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith("\uFEFF"u8))
            bytes = bytes[3..];
        return bytes.StartsWith("{\\rtf"u8) ? "rich text of a word processor"
            : bytes.StartsWith("PK\u0003\u0004"u8) || bytes.StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1])
                ? "a document of a word processor"
            : bytes.StartsWith("%PDF-"u8) ? "a PDF"
            : IsPage(bytes) ? "a web page"
            : null;
    }

    // WHATWG HTML, section 13.1: a doctype, or the element itself, in any case.
    private static bool IsPage(ReadOnlySpan<byte> bytes)
    {
        while (bytes is [(byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n', ..])
            bytes = bytes[1..];
        return Begins(bytes, "<!doctype html") || Begins(bytes, "<html");
    }

    private static bool Begins(ReadOnlySpan<byte> bytes, string word) =>
        bytes.Length >= word.Length && System.Text.Ascii.EqualsIgnoreCase(bytes[..word.Length], word);
}
