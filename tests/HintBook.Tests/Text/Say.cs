using HintBook.Text;

namespace HintBook.Tests.Text;

/// <summary>Findings to write about.</summary>
internal static class Say
{
    public static readonly FindingCode Wrong = new("HB1101", Severity.Error, "Something is wrong");
    public static readonly FindingCode Odd = new("HB2102", Severity.Warning, "Something is odd");
    public static readonly FindingCode Mild = new("HB3103", Severity.Note, "Something is worth knowing");

    public static Finding At(FindingCode code, SourceFile file, string text, string message = "It is so.", string? help = null) =>
        code.At(Place(file, text), message, help);

    public static Span Place(SourceFile file, string text)
    {
        var start = file.Text.IndexOf(text, StringComparison.Ordinal);
        return new(file, start, start + text.Length);
    }
}
