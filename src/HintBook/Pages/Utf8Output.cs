using System.Buffers;
using System.Text;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Takes what a template writes straight into UTF-8, without a string of the whole page in between.</summary>
internal sealed class Utf8Output : IScriptOutput
{
    private readonly ArrayBufferWriter<byte> page = new(32 * 1024);

    /// <summary>The bytes that were written.</summary>
    public int Length => page.WrittenCount;

    /// <summary>Forgets what was written and keeps the memory.</summary>
    public void Clear() => page.ResetWrittenCount();

    /// <summary>A copy of what was written.</summary>
    public ReadOnlyMemory<byte> Copy() => page.WrittenSpan.ToArray();

    /// <inheritdoc/>
    public void Write(string text, int offset, int count) => Encoding.UTF8.GetBytes(text.AsSpan(offset, count), page);

    /// <inheritdoc/>
    public ValueTask WriteAsync(string text, int offset, int count, CancellationToken cancellationToken)
    {
        Write(text, offset, count);
        return ValueTask.CompletedTask;
    }

    /// <summary>Writes text with everything special escaped.</summary>
    public void WriteEscaped(ReadOnlySpan<char> text)
    {
        for (var special = text.IndexOfAny(Html.Special); special >= 0; special = text.IndexOfAny(Html.Special))
        {
            Encoding.UTF8.GetBytes(text[..special], page);
            Encoding.UTF8.GetBytes(Html.Entity(text[special]), page);
            text = text[(special + 1)..];
        }

        Encoding.UTF8.GetBytes(text, page);
    }
}
