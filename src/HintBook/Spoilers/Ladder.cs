using HintBook.Books;
using HintBook.Spoilers.Languages;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>
/// Whether the steps of help go up: the answer gives everything, and no step merely repeats the one before. That the lower ones don't give
/// too much is what <see cref="Leaks"/> looks after.
/// </summary>
internal static class Ladder
{
    /// <summary>Two texts are almost the same if of all the pairs of neighbouring words in either at least this share is in both.</summary>
    private const double AlmostAll = 0.8;

    private const int FewestWords = 6;

    public static IEnumerable<Finding> In(Book book)
    {
        var names = book.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value);
        var words = new WordList(SearchLanguage.For(book.Language.Value));
        var reader = new WordReader(words);
        // What nobody has translated is looked at in its own language.
        var untranslated = book.Untranslated;
        return book.Stages
            .Where(stage => !untranslated.Contains(stage))
            .SelectMany(stage => LeftOut(book, stage, names, words, reader).Concat(Repeats(stage, reader)));
    }

    private static IEnumerable<Finding> LeftOut(
        Book book, Stage stage, Dictionary<string, Named> names, WordList words, WordReader reader)
    {
        if (Draft.IsOpen(stage.Answer.Markdown))
            return [];
        var gives = stage.Moves.SelectMany(move => move.Changes)
            .Where(change => names.GetValueOrDefault(change.Name.Value) is (Thing or Code) and var named && named.Attained == change.Position.Value);
        var sets = stage.Moves.SelectMany(move => move.Needs).OfType<InPosition>().Where(need => names.GetValueOrDefault(need.Name.Value) is Code);
        var wanted = gives.Select(change => change.Name.Value).Concat(sets.Select(need => need.Name.Value)).Distinct().Select(name => names[name]).ToArray();
        if (wanted.Length == 0 || stage.Answer.Markdown.Length == 0)
            return [];

        HashSet<int> told = [];
        HashSet<int>[] heads = [.. wanted.Select(Heads)];
        reader.Read(stage.Answer.Markdown);
        foreach (var word in reader.Words)
            told.Add(word.Id);
        return [.. wanted.Where((named, i) => !IsTold(named, heads[i])).Select(named => LeakFindings.LeftOut(book, stage, named))];

        bool IsTold(Named named, HashSet<int> ownHeads) => named is Code code
            ? Gives(stage, code, words.Language)
            : ownHeads.Overlaps(told);

        // "Take the pin" will do for a brass pin: the reader holds the box.
        HashSet<int> Heads(Named named)
        {
            HashSet<int> found = [];
            foreach (var name in (string[])[named.Name, .. named.Also.Select(also => also.Value)])
            {
                reader.Read(name);
                var last = -1;
                foreach (var word in reader.Words)
                {
                    var number = words.Add(reader.Bare(word));
                    if (last >= 0 && (words.Language.HeadFirst || (words.RoleOf(number) & WordRole.Preposition) != WordRole.None))
                        break;
                    last = words.Language.HeadFirst && (words.RoleOf(number) & WordRole.Determiner) != WordRole.None ? -1 : number;
                }

                found.Add(last);
            }

            return found;
        }
    }

    private static bool Gives(Stage stage, Code code, SearchLanguage language)
    {
        // What all owners read can't give a code that differs by copy.
        if (code.AnswerByCopy is not null)
            return true;
        // A working ends in the code, and the page prints it.
        if (WorkingMark.In(stage.Answer.Markdown).Any(mark => mark.Code == code.Id.Value))
            return true;
        var secret = new Secret(0, SecretKind.Answer, code.Id.Value, [code.Answer.Value], code.Answer.At, Open: false);
        var finder = new Finder([secret], language.Code);
        return finder.In(stage.Answer.Markdown).Count > 0 || stage.Answer.Markdown.Contains(code.Answer.Value, StringComparison.OrdinalIgnoreCase);
    }

    private static IEnumerable<Finding> Repeats(Stage stage, WordReader reader)
    {
        if (AreAlike(stage.Nudge.Markdown, stage.Clue.Markdown, reader))
            yield return LeakFindings.Repeats(stage, stage.Clue, "clue", "nudge");
        if (AreAlike(stage.Clue.Markdown, stage.Answer.Markdown, reader))
            yield return LeakFindings.Repeats(stage, stage.Answer, "answer", "clue");
    }

    private static bool AreAlike(string one, string other, WordReader reader)
    {
        // Texts of very different lengths can't be alike, which spares most of the work.
        if (Math.Min(one.Length, other.Length) < AlmostAll * AlmostAll * Math.Max(one.Length, other.Length))
            return false;
        var (left, right) = (Pairs(one, reader), Pairs(other, reader));
        if (left.Count < FewestWords || right.Count < FewestWords)
            return false;
        var common = left.Count(right.Contains);
        return common >= AlmostAll * (left.Count + right.Count - common);
    }

    private static HashSet<(int, int)> Pairs(string text, WordReader reader)
    {
        reader.Read(text);
        HashSet<(int, int)> pairs = [];
        var before = 0;
        foreach (var word in reader.Words)
        {
            var now = NumberOf(reader.Bare(word));
            pairs.Add((before, now));
            before = now;
        }

        return pairs;
    }
    // FNV-1a, 32 bits (from memory): the same on every machine, which the framework's own hash is not.
    private static int NumberOf(ReadOnlySpan<char> word)
    {
        var hash = 2166136261;
        foreach (var letter in word)
            hash = unchecked((hash ^ letter) * 16777619);
        return unchecked((int)hash);
    }
}
