using System.Collections.Immutable;
using HintBook.Spoilers;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Spoilers.Elsewhere;

/// <summary>
/// Secrets and sentences of one cabinet, written by people who haven't seen the check. A line is <c>= id | class | name; other name</c>, or
/// <c>classes | ids | text</c> with <c>⏎</c> for the end of a line; <c>-</c> where nothing is told, and <c>riddle</c> for the class where the author says
/// that no word of the secret stands in the text, or that something has to be solved first.
/// </summary>
/// <param name="Name">The file, such as <c>apothecary.en</c>.</param>
/// <param name="Language">The language.</param>
/// <param name="Secrets">What is hidden.</param>
/// <param name="Classes">The class of each secret, by its id: name, everyday, figures, time, letters.</param>
/// <param name="Sentences">The sentences.</param>
internal sealed record ElsewhereBook(
    string Name, string Language, ImmutableArray<Secret> Secrets, ImmutableDictionary<string, string> Classes, ImmutableArray<ElsewhereSentence> Sentences)
{
    /// <summary>The books of a half, in the order of their names; none if it isn't here.</summary>
    public static ImmutableArray<ElsewhereBook> AllIn(string half)
    {
        var folder = Path.Combine(Where.Tests, "Spoilers", "Elsewhere", half);
        return Directory.Exists(folder) ? [.. Directory.GetFiles(folder, "*.*.txt").Where(IsBook).Order(StringComparer.Ordinal).Select(Read)] : [];
    }

    private static bool IsBook(string file) => !Path.GetFileName(file).StartsWith("fragments", StringComparison.Ordinal);

    private static ElsewhereBook Read(string file)
    {
        var name = Path.GetFileNameWithoutExtension(file);
        var lines = File.ReadLines(file).Where(line => line.Trim().Length > 0 && line[0] != '#').ToArray();
        var divide = Array.FindIndex(lines, line => line.Trim() == "---");
        var declared = lines[..divide].Select(line => line.TrimStart('=').Split('|', StringSplitOptions.TrimEntries)).ToArray();
        var at = SourceFile.Unread("book.yaml").Top;
        return new(
            name,
            name[(name.LastIndexOf('.') + 1)..],
            [
                .. from cell in declared.Index()
                   let spellings = cell.Item[2].Split(';', StringSplitOptions.TrimEntries)
                   select new Secret(cell.Index, KindOf(cell.Item[1]), cell.Item[0], [.. spellings], at, Open: false) { IsHeld = true },
            ],
            declared.ToImmutableDictionary(cells => cells[0], cells => cells[1]),
            [.. lines[(divide + 1)..].Select(SentenceOf)]);
    }

    private static SecretKind KindOf(string kind) => kind is "name" or "everyday" ? SecretKind.Name : SecretKind.Answer;

    private static ElsewhereSentence SentenceOf(string line)
    {
        var cells = line.Split('|', 3, StringSplitOptions.TrimEntries);
        string[] told = cells[1] == "-" ? [] : cells[1].Split(',', StringSplitOptions.TrimEntries);
        return new(told, cells[2].Replace('⏎', '\n'), cells[0] == "riddle");
    }
}

/// <summary>A text with the ids of the secrets that a reader learns from it, and whether its author calls it a riddle.</summary>
internal sealed record ElsewhereSentence(string[] Told, string Text, bool IsRiddle);
