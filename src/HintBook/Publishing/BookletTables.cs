using System.Collections;
using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Print;
using HintBook.Print.Booklets;
using HintBook.Spoilers;

namespace HintBook.Publishing;

/// <summary>Writes down for the audit what each entry of a booklet may tell, and which of them may not be seen at once.</summary>
internal static class BookletTables
{
    private const double PointsToMillimetre = 72 / 25.4;

    /// <summary>The table of one booklet.</summary>
    /// <param name="printed">The booklet.</param>
    /// <param name="sayable">What may be said where, in its language.</param>
    /// <param name="among">Puts a set of that language among those of all.</param>
    /// <param name="survey">Which stage opens which.</param>
    /// <param name="where">The pages of “Where am I?”.</param>
    /// <param name="knownTo">The names that every reader of such a page has met.</param>
    public static AuditBooklet Of(
        PrintedBooklet printed,
        MayBeSaid sayable,
        Func<BitArray, BitArray> among,
        Survey survey,
        Whereabouts where,
        Func<WhereaboutsPage, BitArray> knownTo)
    {
        var booklet = printed.Booklet;
        var entries = booklet.Entries.Zip(booklet.Numbers, (entry, number) => (Entry: entry, Number: number)).ToArray();
        return new()
        {
            File = printed.File,
            Language = printed.Language,
            FirstPage = booklet.FirstPage,
            NumberSize = booklet.NumberSize * PointsToMillimetre,
            SaidOfEmpty = booklet.SaidOfEmpty,
            Entries = entries.ToImmutableDictionary(each => each.Number, each => MayOf(each.Entry)),
            Apart =
            [
                .. from one in entries
                   from other in entries
                   where one.Number < other.Number && AreApart(one.Entry, other.Entry)
                   select (one.Number, other.Number),
            ],
        };

        AuditEntry MayOf(Entry entry)
        {
            if (where.Pages.FirstOrDefault(page => Entry.QuestionOf(page.File) == entry.Key) is { } page)
            {
                var known = knownTo(page);
                foreach (var sign in page.Signs.Where(sayable.Stages.ContainsKey))
                    known.Or(sayable.Stages[sign].Sign);
                return new(among(known), null);
            }

            if (!sayable.Stages.TryGetValue(entry.Stages[0], out var may))
                return new(among(sayable.Outside), null);
            var set = entry.Key == Entry.NudgeOf(entry.Stages[0]) ? may.Sign : entry.Key == Entry.ClueOf(entry.Stages[0]) ? may.Clue : may.Answer;
            return new(among(set), may.Sure is null ? null : among(may.Sure));
        }

        bool AreApart(Entry one, Entry other)
        {
            if (one.IsQuestion || other.IsQuestion)
                return one.IsQuestion == other.IsQuestion || one.Stages.Intersect(other.Stages).Any();
            var (stage, another) = (one.Stages[0], other.Stages[0]);
            return stage == another || Opens(stage, another) || Opens(another, stage);
        }

        bool Opens(string stage, string another) => survey.Stages.TryGetValue(another, out var opened) && opened.OpensAfter.Any(group => group.Contains(stage));
    }
}
