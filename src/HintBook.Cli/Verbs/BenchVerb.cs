using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using HintBook.Books;
using HintBook.Publishing;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>What <c>testwalk</c> and <c>packing</c> share: a copy, a sheet on paper, and how a refusal is told.</summary>
internal static class BenchVerb
{
    public static Option<string?> Copy() => new("--copy") { Description = "For this copy, with its own codes.", HelpName = "SERIAL" };

    public static Option<string?> Out() => new("--out") { Description = "A sheet to print as well, as a PDF.", HelpName = "FILE.pdf" };

    public static Option<string> Format()
    {
        var format = new Option<string>("--format") { Description = "How to print it.", DefaultValueFactory = _ => "text" };
        return format.AcceptOnlyFromAmong("text", "json");
    }

    /// <summary>Why a sheet can't be written; null where it can, or none is asked for.</summary>
    public static string? WhyNotWritten(string? file, bool replace) => file is null ? null
        : !file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase) ? $"“{file}” doesn't end in .pdf: the sheet is a PDF."
        : OwnFile.WhyNotWritten(file, replace);

    /// <summary>Finds a copy; null as a copy where none is asked for.</summary>
    /// <returns>False for a copy that isn't there or is out of use, with a sentence.</returns>
    public static bool Find(Book book, string? serial, out Copy? copy, [NotNullWhen(false)] out string? why)
    {
        copy = serial is null ? null : Copies.WithSerial(book, serial);
        why = serial is null || copy is { Retired: false } ? null
            : copy is null ? Copies.Unknown(book, serial)
            : $"Copy {serial} is out of use, so there is nothing to test or to pack. “hintbook copies” lists the others.";
        return why is null;
    }

    public static int Refuse(string why, Terminal terminal)
    {
        terminal.Say(why);
        return ExitCode.WrongUsage;
    }

    public static void Write(string file, byte[] bytes, Terminal terminal)
    {
        SingleFile.Write(file, bytes);
        terminal.Say($"Written: {TerminalText.Shown(file)}. Print it at 100 %.");
    }
}
