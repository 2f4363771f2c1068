using System.Collections;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Audit.Mentions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace HintBook.Audit;

/// <summary>
/// Reads a finished booklet page by page: finds the entries by their large numbers, whatever the maker of the file says of them, and what each of them tells.
/// Two pages that follow each other are seen at once: they lie opposite each other, or are the two sides of one leaf, through which print shows.
/// </summary>
internal static class BookletReader
{
    private const string When = "which stands before a reader who hasn't come that far";
    private const double Tolerance = 0.3;

    /// <summary>What is wrong with a booklet.</summary>
    /// <param name="file">The booklet's file.</param>
    /// <param name="booklet">What it may tell.</param>
    /// <param name="secrets">Who may see what.</param>
    public static ImmutableArray<AuditFault> Faults(byte[] file, AuditBooklet booklet, Secrets secrets)
    {
        try
        {
            using var document = PdfDocument.Open(file);
            var listener = secrets.Listen(booklet.File);
            var pages = Read(document, booklet);
            return
            [
                .. PrintReader.OfDocument(document).SelectMany(said => listener.Hear(new(said.Text, 0, 0, said.Where, Manner.Prose, secrets.Outside))),
                .. Missing(pages, booklet),
                .. SeenAtOnce(pages, booklet),
                .. pages.SelectMany(page => page.Parts.SelectMany(part => Told(part, page.Number, booklet, secrets, listener))),
                .. pages.Zip(pages.Skip(1), (one, other) => ToldTogether(one, other, booklet, secrets, listener)).SelectMany(faults => faults),
            ];
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The reader of PDFs throws many kinds of exceptions for damaged files.
            return [new(booklet.File, 0, 0, "The booklet can't be read, so nobody knows what it tells.")];
        }
    }

    private static ReadPage[] Read(PdfDocument document, AuditBooklet booklet)
    {
        var pages = new List<ReadPage>();
        int? going = null;
        for (var number = 1; number <= document.NumberOfPages; number++)
        {
            var parts = new List<Part>();
            foreach (var (head, letters) in Split(document.GetPage(number).Letters, number < booklet.FirstPage ? double.PositiveInfinity : booklet.NumberSize))
            {
                // What stands on a page before its first number goes on from the page before.
                if (head is null && letters.Count == 0)
                    continue;
                var text = PrintReader.TextOf(letters);
                parts.Add(new(head is null && IsLeftEmpty(text, booklet) ? null : head ?? going, head is not null, text));
                going = head ?? going;
            }

            pages.Add(new(number, [.. parts]));
        }

        return [.. pages];
    }

    private static bool IsLeftEmpty(string text, AuditBooklet booklet) => LettersOf(text) == LettersOf(booklet.SaidOfEmpty);

    // Blanks are not written as letters everywhere; what runs from right to left may be written from its left end, and two of its letters as one.
    private static string LettersOf(string text) =>
        string.Concat(text.Normalize(NormalizationForm.FormKC).Where(letter => !char.IsWhiteSpace(letter)).Order());

    private static IEnumerable<(int? Head, List<Letter> Letters)> Split(IReadOnlyList<Letter> letters, double size)
    {
        int? head = null;
        var text = new List<Letter>();
        for (var i = 0; i < letters.Count;)
        {
            var digits = i;
            while (digits < letters.Count && letters[digits].PointSize > size - Tolerance && letters[digits].Value is [>= '0' and <= '9'])
                digits++;
            if (digits == i)
            {
                text.Add(letters[i++]);
                continue;
            }

            yield return (head, text);
            head = int.Parse(string.Concat(letters.Skip(i).Take(digits - i).Select(letter => letter.Value)), CultureInfo.InvariantCulture);
            text = [];
            i = digits;
        }

        yield return (head, text);
    }

    private static IEnumerable<AuditFault> Missing(ReadPage[] pages, AuditBooklet booklet)
    {
        var heads = pages.SelectMany(page => page.Parts).Where(part => part.IsHead).Select(part => part.Entry).OfType<int>().ToArray();
        foreach (var number in booklet.Entries.Keys.Except(heads).Order())
            yield return new(booklet.File, 0, 0, $"Entry {number} isn't in the booklet, and others send their readers to it.");
        foreach (var number in heads.Where(number => !booklet.Entries.ContainsKey(number)))
            yield return new(booklet.File, 0, 0, $"Nobody is sent to entry {number}: what it may tell isn't known.");
        foreach (var twice in heads.GroupBy(number => number).Where(same => same.Count() > 1))
            yield return new(booklet.File, 0, 0, $"Entry {twice.Key} stands in the booklet {twice.Count()} times.");
    }

    private static IEnumerable<AuditFault> SeenAtOnce(ReadPage[] pages, AuditBooklet booklet)
    {
        foreach (var (index, page) in pages.Index())
        {
            int[] here = [.. page.Entries];
            foreach (var (one, other) in from one in here from other in here where one < other select (one, other))
            {
                if (booklet.Apart.Contains((one, other)))
                    yield return new(booklet.File, 0, 0, $"Entries {one} and {other} stand on page {page.Number}: who reads one sees the other.");
            }

            if (index + 1 == pages.Length)
                continue;
            foreach (var (one, other) in from one in here from other in pages[index + 1].Entries where one != other select (one, other))
            {
                if (booklet.Apart.Contains((Math.Min(one, other), Math.Max(one, other))))
                {
                    yield return new(booklet.File, 0, 0, $"Entry {one} on page {page.Number} and entry {other} on page {page.Number + 1} "
                        + "lie opposite each other or behind each other: who reads one sees the other.");
                }
            }
        }
    }

    private static IEnumerable<AuditFault> Told(Part part, int page, AuditBooklet booklet, Secrets secrets, Secrets.Listener listener)
    {
        var scope = part.Entry is { } number && booklet.Entries.TryGetValue(number, out var entry)
            ? new Scope(entry.May, null, entry.Sure, When)
            : secrets.Outside;
        return listener.Hear(new(part.Text, 0, 0, part.Entry is { } of ? $"in entry {of} on page {page}" : $"on page {page}", Manner.Prose, scope));
    }

    // What none of the entries tells by itself may be told by what stands beside each other: a code, digit by digit.
    private static IEnumerable<AuditFault> ToldTogether(ReadPage one, ReadPage other, AuditBooklet booklet, Secrets secrets, Secrets.Listener listener)
    {
        var numbers = one.Entries.Concat(other.Entries).Distinct();
        AuditEntry[] entries = [.. numbers.Select(number => booklet.Entries.GetValueOrDefault(number)).OfType<AuditEntry>()];
        if (entries.Length == 0)
            return [];
        var (may, sure) = (new BitArray(secrets.Outside.May), entries.Select(entry => entry.Sure).FirstOrDefault(sure => sure is not null));
        foreach (var entry in entries)
            may.Or(entry.May);
        var text = string.Join("\n\n", one.Parts.Concat(other.Parts).Select(part => part.Text));
        return listener.Hear(new(text, 0, 0, $"on pages {one.Number} and {other.Number}", Manner.Prose, new(may, null, sure, When)));
    }

    private sealed record Part(int? Entry, bool IsHead, string Text);

    private sealed record ReadPage(int Number, ImmutableArray<Part> Parts)
    {
        public IEnumerable<int> Entries => Parts.Select(part => part.Entry).OfType<int>().Distinct();
    }
}
