using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Reading.Sittings;

/// <summary>Reads which pages owners asked about: <c>letters.csv</c>, a row for each letter with the page's name and the day.</summary>
public static class LetterFile
{
    /// <summary>The file's name, in the book's folder.</summary>
    public const string FileName = "letters.csv";

    /// <summary>How a day is written.</summary>
    public const string DateForm = PrintedCards.DateForm;

    /// <summary>The first row of a new file.</summary>
    public const string Heading = "page,date";

    private static readonly string[] PageNames = ["page", "seite", "página", "pagina", "ページ", "الصفحة", "صفحة"];
    private static readonly string[] DateNames = ["date", "day", "datum", "tag", "fecha", "día", "日付", "التاريخ"];

    /// <summary>The letters in the order of the file.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="findings">Where findings go.</param>
    internal static ImmutableArray<NotedLetter> In(BookFolder folder, List<Finding> findings) =>
        folder.SizeOf(FileName) is not null && folder.ReadText(FileName, findings) is { } file ? In(file, findings) : [];

    /// <summary>The letters of a text; rows that can't be used are told and left out.</summary>
    /// <param name="file">The text.</param>
    /// <param name="findings">Where findings go.</param>
    public static ImmutableArray<NotedLetter> In(SourceFile file, List<Finding> findings)
    {
        var rows = Table.RowsOf(file).ToArray();
        if (rows.Length == 0)
            return [];
        if (ColumnsOf(rows[0]) is not var (page, date))
        {
            findings.Add(SittingFindings.NoPageColumn(rows[0][0].At));
            return [];
        }

        return [.. rows.Skip(1).Select(row => Row(row, page, date, findings)).OfType<NotedLetter>()];
    }

    /// <summary>A row for one more letter as a file has its rows, without the end of the line; null where the file names no column for pages.</summary>
    /// <param name="file">The file so far.</param>
    /// <param name="page">The page's name.</param>
    /// <param name="date">The day, or null.</param>
    public static string? RowFor(SourceFile file, string page, DateOnly? date)
    {
        if (Table.RowsOf(file).FirstOrDefault() is not { IsDefault: false } heading || ColumnsOf(heading) is not var (pageAt, dateAt))
            return null;
        var cells = heading.Select((_, i) => i == pageAt ? page : i == dateAt ? date?.ToString(DateForm, CultureInfo.InvariantCulture) : "");
        return string.Join(heading.Length > 1 ? file.Text[Separator(file, heading[0].At.End)] : ',', cells);
    }

    private static int Separator(SourceFile file, int from)
    {
        while (file.Text[from] is not (',' or ';' or '\t'))
            from++;
        return from;
    }

    private static (int Page, int? Date)? ColumnsOf(ImmutableArray<Located<string>> heading)
    {
        var names = heading.Select(cell => cell.Value.ToLowerInvariant()).ToList();
        var date = names.FindIndex(DateNames.Contains);
        return names.FindIndex(PageNames.Contains) is >= 0 and var page ? (page, date < 0 ? null : date) : null;
    }

    private static NotedLetter? Row(ImmutableArray<Located<string>> row, int page, int? date, List<Finding> findings)
    {
        if (page >= row.Length || row[page].Value.Length == 0)
        {
            findings.Add(SittingFindings.NoPage(row[0].At));
            return null;
        }

        var written = date is { } at && at < row.Length && row[at].Value.Length > 0 ? row[at] : (Located<string>?)null;
        if (written is { } day && !DateOnly.TryParseExact(day.Value, DateForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
        {
            findings.Add(SittingFindings.NoDate(day));
            written = null;
        }

        return new(
            row[page].Value.ToLowerInvariant(),
            written is null ? null : DateOnly.ParseExact(written.Value.Value, DateForm, CultureInfo.InvariantCulture),
            row[0].At with { End = row[^1].At.End });
    }
}
