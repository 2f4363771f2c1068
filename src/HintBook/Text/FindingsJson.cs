namespace HintBook.Text;

/// <summary>Writes findings for other programs, in HintBook's own plain form.</summary>
public static class FindingsJson
{
    /// <summary>
    /// <c>{"book":…, "findings":[{"code","severity","message","help","file","line","column","endLine","endColumn"}]}</c>, indented,
    /// ended by <c>\n</c>. Lines and columns count from 1, columns in UTF-16 units, the end excluded; <c>help</c> is null where
    /// there is none; <c>severity</c> is <c>error</c>, <c>warning</c> or <c>note</c>.
    /// </summary>
    /// <param name="book">The book as the author named it, such as the folder's path.</param>
    /// <param name="findings">What to write.</param>
    /// <param name="withNotes">Whether notes are written too.</param>
    public static string Write(string book, Findings findings, bool withNotes = false) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("book", JsonText.Whole(book));
        json.WriteStartArray("findings");
        foreach (var finding in findings.Shown(withNotes))
        {
            var (line, column) = finding.At.File.PlaceOf(finding.At.Start);
            var (endLine, endColumn) = finding.At.File.PlaceOf(finding.At.End);
            json.WriteStartObject();
            json.WriteString("code", finding.Code.Id);
            json.WriteString("severity", finding.Code.Severity.Word());
            json.WriteString("message", JsonText.Whole(finding.Message));
            json.WriteString("help", finding.Help is null ? null : JsonText.Whole(finding.Help));
            json.WriteString("file", JsonText.Whole(finding.At.File.Path));
            json.WriteNumber("line", line);
            json.WriteNumber("column", column);
            json.WriteNumber("endLine", endLine);
            json.WriteNumber("endColumn", endColumn);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });
}
