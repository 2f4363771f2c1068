using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Reading.Sittings;

/// <summary>Reads what was noted of people who tried the box: <c>sittings/*.csv</c>, a row for each person and stage.</summary>
public static class SittingFiles
{
    /// <summary>The folder that holds them.</summary>
    public const string Folder = "sittings";

    private const double MostMinutes = 10_000;

    // The names of the columns as makers write them; the first of each is ours.
    private static readonly string[][] Columns =
    [
        ["who", "name", "player", "group", "wer", "gruppe", "qui", "groupe", "quién", "quien", "nombre", "誰", "名前", "من", "الاسم"],
        ["stage", "step", "schritt", "stufe", "abschnitt", "étape", "etape", "etapa", "paso", "段階", "ステップ", "الخطوة", "المرحلة"],
        ["minutes", "min", "time", "minuten", "zeit", "durée", "durée en minutes", "temps", "minutos", "tiempo", "分", "時間", "الدقائق", "الوقت"],
        ["help", "help used", "hint", "hilfe", "aide", "ayuda", "ヒント", "المساعدة"],
        ["remarks", "remark", "notes", "note", "bemerkung", "bemerkungen", "notizen", "remarques", "notas", "observaciones",
            "メモ", "備考", "ملاحظات"],
    ];

    private static readonly (HelpTaken Help, bool GaveUp, string[] Words)[] Helps =
    [
        (HelpTaken.Nothing, false, ["", "none", "nothing", "no", "0", "keine", "nichts", "aucune", "rien", "ninguna", "nada", "-", "なし", "لا"]),
        (HelpTaken.Nudge, false, ["nudge", "1", "anstoß", "anstoss", "coup de pouce", "empujón", "empujoncito", "一押し", "ひと押し", "دفعة", "إشارة خفيفة"]),
        (HelpTaken.Clue, false, ["clue", "2", "hinweis", "indice", "pista", "手がかり", "دليل"]),
        (HelpTaken.Answer, false, ["answer", "3", "all", "auflösung", "lösung", "réponse", "solution", "respuesta", "答え", "الجواب"]),
        (HelpTaken.Answer, true, ["gave up", "given up", "gave-up", "4", "aufgegeben", "abandon", "abandonné", "abandonó", "あきらめた", "استسلم"]),
    ];

    /// <summary>All rows of all files, in the order of the files' names.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="book">The book.</param>
    /// <param name="findings">Where findings go.</param>
    internal static ImmutableArray<SatStage> In(BookFolder folder, Book book, List<Finding> findings)
    {
        var files =
            from name in folder.FilesIn(Folder, findings) ?? []
            where name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
            let file = folder.ReadText($"{Folder}/{name}", findings)
            where file is not null
            select file;
        var tables = files.ToArray();
        if (tables.Length == 0)
            return [];
        // What is wrong with the list is told where it is checked.
        var kept = AddressList.In(folder, []);
        return [.. tables.SelectMany(file => In(file, book, kept, findings))];
    }

    /// <summary>The rows of a text; those that can't be used are told and left out.</summary>
    /// <param name="file">The text.</param>
    /// <param name="book">The book.</param>
    /// <param name="kept">The addresses of its pages that were published.</param>
    /// <param name="findings">Where findings go.</param>
    public static ImmutableArray<SatStage> In(SourceFile file, Book book, AddressList kept, List<Finding> findings)
    {
        var rows = Table.RowsOf(file).ToArray();
        if (rows.Length == 0)
            return [];
        var columns = Columns.Select(names => rows[0].Select(cell => cell.Value.ToLowerInvariant()).ToList().FindIndex(names.Contains)).ToArray();
        if (columns[1] < 0)
        {
            findings.Add(SittingFindings.NoStageColumn(rows[0][0].At, [.. Columns.Select(names => names[0])]));
            return [];
        }

        var named = NamesOf(book, kept);
        return [.. rows.Skip(1).Select(row => Row(row, columns, named, findings)).OfType<SatStage>()];
    }

    // By its id or title, as makers write it; by an id that it had; by the name of its page, as the reader's device writes it.
    private static NamedStages NamesOf(Book book, AddressList kept)
    {
        var written = book.Stages.SelectMany(stage => new[] { (Name: stage.Id.Value, Id: stage.Id.Value), (Name: stage.Title.Value, Id: stage.Id.Value) });
        var former =
            from stage in book.Stages
            from id in stage.Was.Select(id => id.Value).Prepend(stage.Id.Value)
            let pages = kept.Stages.GetValueOrDefault(id, []).Select(page => page.Value).Append(Addresses.Derive(book.Identity, id))
            from name in pages.Prepend(id)
            select (Name: name, Id: stage.Id.Value);
        return new(ByName(written), ByName(written.Concat(former)));

        static Dictionary<string, string> ByName(IEnumerable<(string Name, string Id)> pairs) =>
            pairs.DistinctBy(pair => pair.Name, StringComparer.OrdinalIgnoreCase)
                .ToDictionary(pair => pair.Name, pair => pair.Id, StringComparer.OrdinalIgnoreCase);
    }

    private static SatStage? Row(
        ImmutableArray<Located<string>> row, int[] columns, NamedStages stages, List<Finding> findings)
    {
        var cells = columns.Select(column => column >= 0 && column < row.Length ? row[column] : (Located<string>?)null).ToArray();
        if (cells[1] is not { } named || !stages.All.TryGetValue(named.Value, out var stage))
        {
            findings.Add(SittingFindings.NoStage(cells[1] ?? row[0], stages.Written.Keys));
            return null;
        }

        if (MinutesIn(cells[2], findings) is not (true, var minutes))
            return null;
        var help = Helps.FirstOrDefault(each => each.Words.Contains(cells[3]?.Value.ToLowerInvariant() ?? ""));
        if (help.Words is null)
        {
            findings.Add(SittingFindings.NoHelp(cells[3]!.Value));
            return null;
        }

        return new(cells[0]?.Value ?? "", stage, minutes, help.Help, help.GaveUp, cells[4]?.Value ?? "", row[0].At with { End = row[^1].At.End });
    }

    // “7”, “7.5”, “7,5” or “1:30” for an hour and a half; an empty cell is nobody's mistake.
    private static (bool IsRead, double? Minutes) MinutesIn(Located<string>? cell, List<Finding> findings)
    {
        if (cell is not { Value.Length: > 0 } written)
            return (true, null);
        var parts = written.Value.Replace(',', '.').Split(':');
        var minutes = 0.0;
        var isRead = parts.Length <= 2;
        foreach (var part in parts)
        {
            isRead &= double.TryParse(part.TrimEnd(' ', 'm', 'i', 'n', '′', '\''), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value);
            minutes = (minutes * 60) + value;
        }

        if (isRead && minutes is >= 0 and <= MostMinutes)
            return (true, minutes);
        findings.Add(SittingFindings.NoMinutes(written));
        return (false, null);
    }

    // The stages' ids by the names that makers write, and by all of their names.
    private sealed record NamedStages(Dictionary<string, string> Written, Dictionary<string, string> All);
}
