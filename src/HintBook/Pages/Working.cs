using System.Collections.Immutable;
using System.Text;
using HintBook.Ciphers;
using HintBook.Text;

namespace HintBook.Pages;

/// <summary>
/// The worked table of a code, where an answer says <c>{{ working: smoker-lock }}</c> in a paragraph of its own: every piece of
/// the clue and what it gives, one group of rows for each step, with the step's result at its end.
/// </summary>
internal sealed class Working
{
    // Nobody reads a longer table; a clue of that length is told as a whole.
    private const int MostRows = 100;

    private readonly Dictionary<string, Proof> proofs;
    private readonly ThemeWords words;
    private readonly bool allowed;

    private Working(Dictionary<string, Proof> proofs, ThemeWords words, bool allowed) => (this.proofs, this.words, this.allowed) = (proofs, words, allowed);

    /// <summary>The workings of a book, as its pages tell them.</summary>
    public static Working Build(Proofs proofs, ThemeWords words) =>
        new(proofs.Codes.DistinctBy(proof => proof.Code.Id.Value).ToDictionary(proof => proof.Code.Id.Value), words, allowed: true);

    /// <summary>The same for a text that gives no answers away: there every working is a finding.</summary>
    public Working BeforeTheAnswer => new(proofs, words, allowed: false);

    /// <summary>A code's table, or why there is none.</summary>
    /// <param name="code">The code's id.</param>
    /// <param name="at">Where it is asked for.</param>
    public (Html Table, Finding? Finding) TableOf(string code, Span at) => proofs.GetValueOrDefault(code) switch
    {
        _ when !allowed => (Html.Empty, WorkingFindings.TooEarly(at)),
        null => (Html.Empty, WorkingFindings.Unknown(at, code, proofs.Keys)),
        { Says: Verdict.Proved } proof => (Table(proof), null),
        { Says: Verdict.ByCopy } => (Html.Empty, WorkingFindings.DiffersByCopy(at, code)),
        _ => (Html.Empty, WorkingFindings.Unproved(at, code)),
    };

    /// <summary>The same without markup, line by line; none where there is no table.</summary>
    /// <param name="code">The code's id.</param>
    public ImmutableArray<(string Read, string Gives)> LinesOf(string code) =>
        proofs.GetValueOrDefault(code) is { Says: Verdict.Proved } proof && allowed ? [.. proof.Steps.SelectMany(LinesOf)] : [];

    private IEnumerable<(string Read, string Gives)> LinesOf(WorkedStep step)
    {
        if (step.Rows.Length is 0 or > MostRows)
            return [(step.From, step.To)];
        var rows = step.Rows.Select(row => (row.Read, row.Gives));
        return step.Rows.Length > 1 ? rows.Append((words["working_together"], step.To)) : rows;
    }

    private Html Table(Proof proof)
    {
        var html = new StringBuilder();
        html.Append("<table class=\"working\">\n<caption>").Append(Escaped(proof.Code.Name)).Append("</caption>\n");
        html.Append("<thead><tr><th scope=\"col\">").Append(Escaped(words["working_read"]));
        html.Append("</th><th scope=\"col\">").Append(Escaped(words["working_gives"])).Append("</th></tr></thead>\n");
        foreach (var step in proof.Steps)
        {
            html.Append("<tbody>\n");
            if (step.Block is { } block)
                Block(html, block);
            foreach (var (read, gives) in LinesOf(step))
                Line(html, read, gives);
            html.Append("</tbody>\n");
        }

        return new Html(html.Append("</table>\n").ToString());
    }

    // The block with the letters that the mask's first position shows marked. On one line, as all of it.
    private static void Block(StringBuilder html, MaskedBlock block)
    {
        html.Append("<tr><td class=\"block\" colspan=\"2\"><pre>");
        foreach (var (row, line) in block.Lines.Take(MostRows).Index())
        {
            html.Append(row == 0 ? "" : "<br>");
            foreach (var (column, letter) in line.Take(MostRows).Index())
            {
                var shown = Escaped(letter);
                html.Append(column == 0 ? "" : " ").Append(block.Shows(row, column) ? $"<mark>{shown}</mark>" : shown);
            }
        }

        html.Append("</pre></td></tr>\n");
    }

    private static void Line(StringBuilder html, string read, string gives) =>
        html.Append("<tr><th scope=\"row\">").Append(Escaped(read)).Append("</th><td>").Append(Escaped(gives)).Append("</td></tr>\n");

    // On one line: what follows an empty line inside of HTML would be Markdown again.
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var letter in text.ReplaceLineEndings(" "))
            escaped.Append(Html.Special.Contains(letter) ? Html.Entity(letter) : letter.ToString());
        return escaped.ToString();
    }
}
