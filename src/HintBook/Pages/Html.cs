using System.Buffers;

namespace HintBook.Pages;

/// <summary>Text that is HTML already. Whatever a template writes that is not of this type is escaped.</summary>
/// <param name="Text">Well-formed HTML made by this program.</param>
internal sealed record Html(string Text)
{
    /// <summary>Nothing.</summary>
    public static Html Empty { get; } = new("");

    /// <summary>
    /// The characters that mean something in HTML text or in a quoted attribute (WHATWG HTML, "Escaping a string", and the
    /// apostrophe), and the control characters that no HTML may hold (13.2.3.5, "Preprocessing the input stream").
    /// </summary>
    public static SearchValues<char> Special { get; } = SearchValues.Create(
    [
        .. "&<>\"'",
        .. Enumerable.Range(0, 0xa0).Select(code => (char)code).Where(each => char.IsControl(each) && each is not ('\t' or '\n' or '\r' or '\f')),
    ]);

    /// <summary>What a special character is written as.</summary>
    public static string Entity(char special) => special switch
    {
        '&' => "&amp;",
        '<' => "&lt;",
        '>' => "&gt;",
        '"' => "&quot;",
        '\'' => "&#39;",
        _ => "\ufffd",
    };

    /// <summary>A text with everything escaped that means something in HTML.</summary>
    public static string Escaped(string text) => string.Concat(text.Select(letter => Special.Contains(letter) ? Entity(letter) : $"{letter}"));

    /// <inheritdoc/>
    public override string ToString() => Text;
}
