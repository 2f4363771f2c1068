namespace HintBook.Text;

/// <summary>A stretch of one source file: UTF-16 offsets from 0, <paramref name="End"/> excluded.</summary>
/// <param name="File">The file it lies in.</param>
/// <param name="Start">The first offset.</param>
/// <param name="End">The offset after the last one; equal to <paramref name="Start"/> for a mere place.</param>
public readonly record struct Span(SourceFile File, int Start, int End)
{
    /// <summary>The text that the span covers.</summary>
    public string Text => File.Text[Start..End];
}

/// <summary>A value together with the place where the author wrote it.</summary>
/// <param name="Value">What was written, read.</param>
/// <param name="At">Where it was written.</param>
public readonly record struct Located<T>(T Value, Span At)
{
    /// <summary>The same place with another value.</summary>
    public Located<TOther> With<TOther>(TOther value) => new(value, At);

    /// <inheritdoc/>
    public override string ToString() => $"{Value}";
}
