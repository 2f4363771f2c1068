using System.Text;
using HintBook.Text;

namespace HintBook.Cli;

/// <summary>
/// Passes text on as a terminal may show it: control characters and marks that turn the direction of text become U+FFFD, whatever a
/// book, a path or an argument holds. Line breaks and tabs pass.
/// </summary>
internal sealed class PrintableWriter(TextWriter inner) : TextWriter(inner.FormatProvider)
{
    /// <summary>A writer that passes on to another. It holds nothing back and needs no disposal.</summary>
    public static TextWriter Over(TextWriter inner) => new PrintableWriter(inner);

    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Write([value]);

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    /// <inheritdoc/>
    public override void Write(string? value) => Write(value.AsSpan());

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => inner.Write(TerminalText.Printable(buffer));

    /// <inheritdoc/>
    public override void WriteLine() => inner.WriteLine();

    /// <inheritdoc/>
    public override void WriteLine(string? value)
    {
        Write(value);
        WriteLine();
    }

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();
}
