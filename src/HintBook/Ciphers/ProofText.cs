using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>What <c>prove</c> prints for people: a verdict for each code, and below it every step with what it made of each piece.</summary>
public static class ProofText
{
    /// <summary>The names of all ways of reading, as they stand under <c>reads</c>.</summary>
    public static ImmutableArray<string> WayNames => Ways.Names;

    // Of a step with more pieces than this only the first ones are printed.
    private const int MostRows = 40;
    private const int Widest = 44;

    /// <summary>All workings of a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="proofs">What is proved of its codes.</param>
    /// <param name="withNotes">Whether unlikely other readings are listed, too.</param>
    public static string Write(Book book, Proofs proofs, bool withNotes)
    {
        var text = new StringBuilder();
        var proved = proofs.Codes.Count(proof => proof.Says.Word is "proved");
        text.Append(CultureInfo.InvariantCulture, $"“{Shown(book.Title.Value)}”: {proved} of {Words.Count(proofs.Codes.Length, "code")} proved\n");
        foreach (var proof in proofs.Codes)
            One(text, proof, withNotes);
        return text.ToString();
    }

    /// <summary>Every way of reading: its name, what it does, and where it is published.</summary>
    public static string WriteWays()
    {
        var text = new StringBuilder();
        foreach (var way in Ways.All)
        {
            var told = way.Told is { } telling ? $"{{ {way.Name}: {telling.Example} }}" : way.Name;
            text.Append(CultureInfo.InvariantCulture, $"{way.Name}\n    {way.Says}\n    Written: {told}\n    Source: {way.Source}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"{Ways.Table}\n    Looks words, or else symbols, up in one of the book's “tables”.\n");
        text.Append(CultureInfo.InvariantCulture, $"    Written: {{ {Ways.Table}: flowers }}\n");
        text.Append(CultureInfo.InvariantCulture, $"{Ways.From}\n    Starts from the answer of another code instead of the clue.\n");
        text.Append(CultureInfo.InvariantCulture, $"    Written: {{ {Ways.From}: other-code }}\n");
        return text.ToString();
    }

    private static void One(StringBuilder text, Proof proof, bool withNotes)
    {
        if (proof.Says is Verdict.ByCopy(var copies))
        {
            text.Append(CultureInfo.InvariantCulture, $"\n{proof.Says.Word,-12}{proof.Code.Id} differs by copy\n");
            foreach (var copy in copies)
                Code(text, copy.Proof, $"in copy {Shown(copy.Copy.Serial.Value)} ", withNotes);
            return;
        }

        text.Append('\n');
        Code(text, proof, "", withNotes);
    }

    private static void Code(StringBuilder text, Proof proof, string where, bool withNotes)
    {
        var why = proof.Says switch
        {
            Verdict.Refuted refuted => $". {refuted.Finding.Message}",
            Verdict.NotProved open => $": {open.Why}",
            _ => "",
        };
        text.Append(CultureInfo.InvariantCulture, $"{proof.Says.Word,-12}{proof.Code.Id} {where}is {Cut(proof.Code.Answer.Value)}{Shown(why)}\n");
        if (!proof.Code.Skip.IsEmpty)
            text.Append(CultureInfo.InvariantCulture, $"            without {Shown(Words.List(proof.Code.Skip.Select(word => $"“{word}”")))}\n");
        foreach (var step in proof.Steps)
            Step(text, step);
        foreach (var other in proof.Others.Where(other => withNotes || other.Likely || other.RuledOut is not null))
        {
            var ruledOut = other.RuledOut is null ? "" : $": ruled out, {Shown(other.RuledOut)}";
            text.Append(CultureInfo.InvariantCulture, $"            a solver may set {Shown(other.Setting)} ({other.How}){ruledOut}\n");
        }
    }

    private static void Step(StringBuilder text, WorkedStep step)
    {
        text.Append(CultureInfo.InvariantCulture, $"            {Shown(step.Way)}: {Cut(step.To)}\n");
        if (step.Block is { } block)
            Block(text, block);
        var wide = step.Rows.Take(MostRows).Select(row => TerminalText.Columns(Cut(row.Read))).DefaultIfEmpty(0).Max();
        foreach (var row in step.Rows.Take(MostRows))
        {
            var read = Cut(row.Read);
            text.Append(CultureInfo.InvariantCulture, $"              {read}{new string(' ', wide - TerminalText.Columns(read))}  {Cut(row.Gives)}\n");
        }

        if (step.Rows.Length > MostRows)
            text.Append(CultureInfo.InvariantCulture, $"              … and {step.Rows.Length - MostRows} more\n");
    }

    // A letter under a hole stands in brackets.
    private static void Block(StringBuilder text, MaskedBlock block)
    {
        foreach (var (row, line) in block.Lines.Take(MostRows).Index())
        {
            text.Append("              ");
            foreach (var (column, letter) in line.Take(Widest).Index())
                text.Append(block.Shows(row, column) ? $"[{Shown(letter)}]" : $" {Shown(letter)} ");
            text.Append('\n');
        }
    }

    private static string Cut(string text)
    {
        var cut = text.Length <= Widest ? text : text[..(char.IsHighSurrogate(text[Widest - 1]) ? Widest - 1 : Widest)] + "…";
        return Shown(cut.ReplaceLineEndings(" "));
    }

    private static string Shown(string text) => TerminalText.Shown(text);
}
