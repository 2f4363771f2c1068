using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Pages;

namespace HintBook.Replying;

/// <summary>What a letter of an owner tells of itself.</summary>
/// <param name="Page">The page's name as it stands there; null where none was found.</param>
/// <param name="Language">The language of the words around it, as a BCP 47 tag; null where the owner wrote words of their own.</param>
/// <param name="Serial">The serial of the owner's copy; null where none was found.</param>
public sealed record ReadLetter(string? Page, string? Language, string? Serial);

/// <summary>
/// Reads a letter back with the words that the link “Still stuck?” wrote it with, in any language: its subject, whatever mail programs put before it
/// (<c>Re:</c>, <c>AW:</c>, a list's name), and the lines of its body, quoted or not. Where an owner wrote otherwise, a name of the book's own pages that
/// stands anywhere in it is taken.
/// </summary>
public static partial class LetterReader
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    // Before a serial, as owners write it in the six languages; only what is surely no part of a text that may name a code.
    private const string CopyWords = "copy|serial(?: number)?|exemplar|exemplaire|ejemplar|copia|番号|نسخة|النسخة|الرقم";

    /// <summary>Reads a letter.</summary>
    /// <param name="text">The subject, the body, or both.</param>
    /// <param name="words">The words of the theme in every language.</param>
    /// <param name="pages">The names of all pages of the book, the ones that are gone too.</param>
    public static ReadLetter Read(string text, IEnumerable<ThemeWords> words, IReadOnlySet<string> pages)
    {
        ImmutableArray<string> lines = [.. Unfolded().Replace(text.ReplaceLineEndings("\n"), " ").Split('\n').Select(Plain)];
        ImmutableArray<LetterForm> forms = [.. words.Select(LetterForm.Of)];
        var subject = First(forms, lines, form => form.Subject);
        var page = First(forms, lines, form => form.Page);
        var number = First(forms, lines, form => form.Number);
        string?[] named = [subject.Found, page.Found];
        var bare = named.OfType<string>().FirstOrDefault(each => pages.Contains(LetterPage.BareName(each)))
            ?? NameIn(lines, pages)
            ?? named.OfType<string>().FirstOrDefault();
        var serial = number.Found ?? lines.Select(line => Copy().Match(line)).FirstOrDefault(match => match.Success)?.Groups["serial"].Value;
        return new(bare, subject.Language ?? page.Language ?? number.Language, string.IsNullOrWhiteSpace(serial) ? null : serial);
    }

    private static (string? Found, string? Language) First(ImmutableArray<LetterForm> forms, ImmutableArray<string> lines, Func<LetterForm, Regex?> shape)
    {
        foreach (var line in lines)
        {
            foreach (var form in forms)
            {
                if (shape(form)?.Match(line) is { Success: true } match)
                    return (match.Groups["found"].Value.Trim(), form.Language);
            }
        }

        return (null, null);
    }

    // Whole words, and the last part of an address that was copied from the browser.
    private static string? NameIn(IEnumerable<string> lines, IReadOnlySet<string> pages) => lines
        .SelectMany(line => Word().Matches(line).Select(match => match.Value.ToLowerInvariant()))
        .FirstOrDefault(pages.Contains);

    // Spaces of every width as one, and without the marks that say in which direction text runs, which mail programs add and take away.
    private static string Plain(string line) => Spaces().Replace(Turns().Replace(line, ""), " ").Replace('’', '\'').Replace('：', ':').Trim();

    /// <summary>The shapes of a letter in one language.</summary>
    /// <param name="Language">The language.</param>
    /// <param name="Subject">Finds the page in a subject.</param>
    /// <param name="Page">Finds it in a line of the body.</param>
    /// <param name="Number">Finds the serial in a line of the body; null where the words have no such line.</param>
    private sealed record LetterForm(string Language, Regex Subject, Regex? Page, Regex? Number)
    {
        private const string PageMark = "{page}";
        private const string BookMark = "{book}";

        public static LetterForm Of(ThemeWords words)
        {
            var body = words["mail_body"].ReplaceLineEndings("\n").Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0).ToArray();
            // The first line that the owner fills in asks for the number of the box.
            var number = Array.Find(body, line => !line.Contains('{', StringComparison.Ordinal));
            return new(
                words.Language,
                Shape(words["mail_subject"], ""),
                Array.Find(body, line => line.Contains(PageMark, StringComparison.Ordinal)) is { } page ? Shape(page, "^[> |]*") : null,
                number is null ? null : Shape(number + PageMark, "^[> |]*", ".*"));
        }

        private static Regex Shape(string template, string before, string found = @"[\w./:-]+")
        {
            var marked = template.Replace(PageMark, "\u0001", StringComparison.Ordinal).Replace(BookMark, "\u0002", StringComparison.Ordinal);
            var escaped = Regex.Escape(Plain(marked));
            var shape = escaped.Replace(@"\ ", @"\s*", StringComparison.Ordinal).Replace("\u0002", ".*", StringComparison.Ordinal)
                .Replace("\u0001", $@"\s*(?<found>{found})", StringComparison.Ordinal);
            return new(before + shape, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, Patience);
        }
    }

    // A long header goes on in a line that begins with a space (RFC 5322, 2.2.3).
    [GeneratedRegex(@"\n[ \t]+(?=\S)", RegexOptions.CultureInvariant)]
    private static partial Regex Unfolded();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();

    [GeneratedRegex("[\u200E\u200F\u202A-\u202E\u2066-\u2069\u061C]", RegexOptions.CultureInvariant)]
    private static partial Regex Turns();

    [GeneratedRegex("[0-9A-Za-z]+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();

    [GeneratedRegex(
        $@"(?<!\w)(?:{CopyWords})\s*[:#]?\s*(?<serial>[\w./-]*\d[\w./-]*\w|\d)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Copy();
}
