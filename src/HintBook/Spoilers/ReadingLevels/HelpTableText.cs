using System.Globalization;
using System.Text;
using HintBook.Text;

namespace HintBook.Spoilers.ReadingLevels;

/// <summary>Prints a <see cref="HelpTable"/>.</summary>
public static class HelpTableText
{
    private const string Tiers = "   nudge   clue answer";

    /// <summary>For people: a line for each stage, with its three steps of help side by side.</summary>
    public static string Write(HelpTable table)
    {
        var text = new StringBuilder();
        var wide = table.Rows.Select(row => TerminalText.Columns(Title(row))).DefaultIfEmpty(0).Max();
        var blank = new string(' ', wide);
        text.Append($"{blank}   {"words",-21}{"sentences",-21}{(table.Graded ? "grade" : "")}".TrimEnd()).Append('\n');
        text.Append(blank).Append(Tiers[1..]).Append(Tiers[2..]).Append(table.Graded ? Tiers[2..] : "").Append('\n');
        foreach (var stage in table.Rows.Chunk(3))
        {
            var title = Title(stage[0]);
            text.Append(title).Append(' ', wide - TerminalText.Columns(title));
            Cells(text, stage.Select(row => row.Words.ToString(CultureInfo.InvariantCulture)));
            Cells(text, stage.Select(row => row.Sentences.ToString(CultureInfo.InvariantCulture)));
            if (table.Graded)
                Cells(text, stage.Select(row => row.Grade?.ToString("0.0", CultureInfo.InvariantCulture) ?? "–"));
            text.Append('\n');
        }

        return text.Append('\n').Append(Explained(table)).ToString();
    }

    /// <summary>
    /// For programs: <c>{"language","graded","steps":[{"stage","title","tier","words","sentences","grade"}]}</c>; <c>grade</c> is null
    /// where none is known.
    /// </summary>
    /// <param name="table">The table.</param>
    /// <param name="besides">Writes what else is told of the book.</param>
    public static string WriteJson(HelpTable table, Action<System.Text.Json.Utf8JsonWriter>? besides = null) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("language", table.Language);
        json.WriteBoolean("graded", table.Graded);
        json.WriteStartArray("steps");
        foreach (var row in table.Rows)
        {
            json.WriteStartObject();
            json.WriteString("stage", JsonText.Whole(row.Stage.Id.Value));
            json.WriteString("title", JsonText.Whole(row.Stage.Title.Value));
            json.WriteString("tier", row.TierWord);
            json.WriteNumber("words", row.Words);
            json.WriteNumber("sentences", row.Sentences);
            if (row.Grade is { } grade)
                json.WriteNumber("grade", Math.Round(grade, 1));
            else
                json.WriteNull("grade");
            json.WriteEndObject();
        }

        json.WriteEndArray();
        besides?.Invoke(json);
        json.WriteEndObject();
    });

    private static void Cells(StringBuilder text, IEnumerable<string> cells)
    {
        foreach (var cell in cells)
            text.Append(CultureInfo.InvariantCulture, $" {cell,6}");
    }

    private static string Explained(HelpTable table) => table.Graded
        ? "Grade: the Flesch–Kincaid grade level, the year of an American school whose pupils can read it. The syllables are counted by\n"
            + "the spelling, and short texts have large swings: take it as a hint. Titles, headings and workings aren't counted.\n"
        : $"No reading level: the Flesch–Kincaid formula is for English, and the book is in “{table.Language}”. "
            + "Titles, headings and workings aren't counted.\n";

    private static string Title(HelpRow row) => TerminalText.Shown(row.Stage.Title.Value);
}
