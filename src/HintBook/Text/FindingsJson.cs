using System.Text.Json;

namespace HintBook.Text;

/// <summary>Writes findings for other programs, in HintBook's own plain form.</summary>
public static class FindingsJson
{
    /// <summary>
    /// <c>{"book":…, "findings":[{"code","severity","message","help","file","line","column","endLine","endColumn","related":[…]}]}</c>,
    /// indented, ended by <c>\n</c>. <c>related</c> holds the other places of a finding, in the order to read them, each
    /// <c>{"message","file","line","column","endLine","endColumn"}</c>; it is empty where there are none. Lines and columns
    /// count from 1, columns in UTF-16 units, the end excluded; <c>help</c> is null where there is none; <c>severity</c> is <c>error</c>,
    /// <c>warning</c> or <c>note</c>.
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
            json.WriteStartObject();
            json.WriteString("code", finding.Code.Id);
            json.WriteString("severity", finding.Code.Severity.Word());
            json.WriteString("message", JsonText.Whole(finding.Message));
            json.WriteString("help", finding.Help is null ? null : JsonText.Whole(finding.Help));
            Place(json, finding.At);
            json.WriteStartArray("related");
            foreach (var related in finding.Related)
            {
                json.WriteStartObject();
                json.WriteString("message", JsonText.Whole(related.Message));
                Place(json, related.At);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void Place(Utf8JsonWriter json, Span at)
    {
        var (line, column) = at.File.PlaceOf(at.Start);
        var (endLine, endColumn) = at.File.PlaceOf(at.End);
        json.WriteString("file", JsonText.Whole(at.File.Path));
        json.WriteNumber("line", line);
        json.WriteNumber("column", column);
        json.WriteNumber("endLine", endLine);
        json.WriteNumber("endColumn", endColumn);
    }
}
