using System.Text.Json;

namespace HintBook.Text;

/// <summary>Writes findings as SARIF 2.1.0 (OASIS Standard, Static Analysis Results Interchange Format), for editors and build servers.</summary>
public static class FindingsSarif
{
    private const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json";

    /// <summary>
    /// One log with one run, indented, ended by <c>\n</c>. Files are relative to the book's folder. Related places
    /// are kept; the help is the last paragraph of the message.
    /// </summary>
    /// <param name="findings">What to write.</param>
    /// <param name="version">The program's version, such as <c>0.1.0</c>.</param>
    /// <param name="withNotes">Whether notes are written too.</param>
    public static string Write(Findings findings, string version, bool withNotes = false) => JsonText.Write(json =>
    {
        var shown = findings.Shown(withNotes).ToArray();
        var rules = shown.Select(finding => finding.Code).DistinctBy(code => code.Id).OrderBy(code => code.Id, StringComparer.Ordinal).ToArray();
        json.WriteStartObject();
        json.WriteString("$schema", Schema);
        json.WriteString("version", "2.1.0");
        json.WriteStartArray("runs");
        json.WriteStartObject();
        Driver(json, rules, version);
        json.WriteString("columnKind", "utf16CodeUnits");
        json.WriteStartArray("results");
        foreach (var finding in shown)
            Result(json, finding, Array.FindIndex(rules, rule => rule.Id == finding.Code.Id));
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void Driver(Utf8JsonWriter json, FindingCode[] rules, string version)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "HintBook");
        json.WriteString("version", version);
        json.WriteStartArray("rules");
        foreach (var rule in rules)
        {
            json.WriteStartObject();
            json.WriteString("id", rule.Id);
            Message(json, "shortDescription", rule.Title);
            json.WriteStartObject("defaultConfiguration");
            json.WriteString("level", rule.Severity.Word());
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Result(Utf8JsonWriter json, Finding finding, int rule)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", finding.Code.Id);
        json.WriteNumber("ruleIndex", rule);
        json.WriteString("level", finding.Code.Severity.Word());
        Message(json, "message", finding.Help is null ? finding.Message : $"{finding.Message}\n\n{finding.Help}");
        json.WriteStartArray("locations");
        json.WriteStartObject();
        Place(json, finding.At);
        json.WriteEndObject();
        json.WriteEndArray();
        if (!finding.Related.IsEmpty)
        {
            json.WriteStartArray("relatedLocations");
            for (var i = 0; i < finding.Related.Length; i++)
            {
                json.WriteStartObject();
                json.WriteNumber("id", i + 1);
                Place(json, finding.Related[i].At);
                Message(json, "message", finding.Related[i].Message);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter json, Span at)
    {
        var (line, column) = at.File.PlaceOf(at.Start);
        var (endLine, endColumn) = at.File.PlaceOf(at.End);
        json.WriteStartObject("physicalLocation");
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", Uri(at.File.Path));
        json.WriteEndObject();
        json.WriteStartObject("region");
        json.WriteNumber("startLine", line);
        json.WriteNumber("startColumn", column);
        json.WriteNumber("endLine", endLine);
        json.WriteNumber("endColumn", endColumn);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Message(Utf8JsonWriter json, string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", JsonText.Whole(text));
        json.WriteEndObject();
    }

    // A relative reference of RFC 3986: every name of the path percent-encoded, so that none is taken for a scheme or a query.
    private static string Uri(string path) => string.Join('/', path.Split('/').Select(System.Uri.EscapeDataString));
}
