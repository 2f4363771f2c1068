using System.Globalization;
using System.Text;

namespace HintBook.Cli.Usage;

/// <summary>The program's manual page, in the macros of man(7) that groff and mandoc both read.</summary>
internal static class ManualPage
{
    /// <summary>Writes it.</summary>
    /// <param name="sheet">What the program can do.</param>
    /// <param name="version">Its version.</param>
    public static string Write(Sheet sheet, string version)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $".TH HINTBOOK 1 \"\" \"HintBook {version}\" \"HintBook\"\n");
        page.Append(".SH NAME\nhintbook \\- ").Append(Line(char.ToLowerInvariant(sheet.Says[0]) + sheet.Says[1..].TrimEnd('.'))).Append('\n');
        page.Append(".SH SYNOPSIS\n.B hintbook\n.I VERB\n\\&...\n");
        page.Append(".SH VERBS\n");
        foreach (var verb in sheet.Verbs)
            Append(page, verb);
        page.Append(".SH EXIT STATUS\n");
        foreach (var (code, meaning) in ExitCode.Meanings)
            page.Append(CultureInfo.InvariantCulture, $".TP\n.B {code}\n{Line(meaning)}\n");
        page.Append(".SH ENVIRONMENT\n.TP\n.B NO_COLOR\nIf it is set, nothing is coloured.\n");
        page.Append(".SH SEE ALSO\n").Append(Line("“hintbook guide” shows how to write what a box does, and what a finding means.")).Append('\n');
        return page.ToString();
    }

    private static void Append(StringBuilder page, VerbSheet verb)
    {
        page.Append(".SS hintbook ").Append(Line(verb.Name));
        foreach (var argument in verb.Arguments)
            page.Append(' ').Append(Line(Called(argument)));
        page.Append('\n').Append(Line(verb.Says)).Append('\n');
        foreach (var argument in verb.Arguments)
            page.Append(".TP\n.I ").Append(Line(argument.Name)).Append('\n').Append(Line(argument.Says)).Append('\n');
        foreach (var option in verb.Options)
        {
            page.Append(".TP\n.B ").Append(Line(option.Name));
            if (option.Value.Length > 0)
                page.Append(" \\fI").Append(Line(option.Value)).Append("\\fR");
            page.Append('\n').Append(Line(option.Says)).Append('\n');
        }

        page.Append(".PP\nExample:\n.PP\n.RS\n.nf\n").Append(Line(verb.Example)).Append("\n.fi\n.RE\n");
    }

    private static string Called(SheetEntry argument)
    {
        var name = argument.MayBeRepeated ? $"{argument.Name} …" : argument.Name;
        return argument.MayBeLeftOut ? $"[{name}]" : name;
    }

    // groff_char(7): what isn't ASCII is named, and what would be read as a command is shielded.
    private static string Line(string text)
    {
        var line = new StringBuilder(text is ['.' or '\'', ..] ? "\\&" : "");
        foreach (var rune in text.EnumerateRunes())
        {
            line.Append(rune.Value switch
            {
                '\\' => "\\e",
                '-' => "\\-",
                '“' => "\\(lq",
                '”' => "\\(rq",
                '’' => "\\(cq",
                '…' => "...",
                '~' => "\\(ti",
                '^' => "\\(ha",
                '`' => "\\(ga",
                '\'' => "\\(aq",
                '"' => "\\(dq",
                < 128 => rune.ToString(),
                _ => string.Create(CultureInfo.InvariantCulture, $"\\[u{rune.Value:X4}]"),
            });
        }

        return line.ToString();
    }
}
