using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;

namespace HintBook.Workbench.Rehearsing;

/// <summary>
/// Plays a book's box as a solver: the steps so far come with each request, so nothing is kept between two of them. A step that a changed book
/// doesn't know any more, or that isn't possible now, ends the playing there, and that is said.
/// </summary>
internal static class Play
{
    // Enough for a box of 500 stages; each request makes all of them.
    private const int MostSteps = 5000;

    /// <summary>What there is after some steps, as JSON.</summary>
    /// <param name="book">The book.</param>
    /// <param name="keys">The steps so far, as <see cref="Rehearsal.KeyOf"/> names them.</param>
    public static byte[] Json(Examined book, IEnumerable<string> keys)
    {
        var (box, why) = Rehearsal.Begin(book.Book);
        var names = new NamesOf(book.Book);
        var made = new List<(string Key, string Says, ImmutableArray<Placed> Changes)>();
        foreach (var key in keys.Take(MostSteps))
        {
            if (box?.After(key) is not { Last: { } step } next)
            {
                why ??= $"After {made.Count} steps the next one isn't possible in the book as it is now.";
                break;
            }

            made.Add((key, step.Says, next.Changes));
            box = next;
        }

        return JsonLists.Document(json =>
        {
            json.WriteString("why", why);
            json.WriteBoolean("solved", box?.Solved ?? false);
            json.WriteObjects("made", made, step =>
            {
                json.WriteString("key", step.Key);
                json.WriteString("says", step.Says);
                json.WriteString("changes", string.Join("; ", step.Changes.Select(names.Of)));
            });
            json.WriteObjects("possible", box?.Possible ?? [], step =>
            {
                json.WriteString("key", Rehearsal.KeyOf(step));
                json.WriteString("says", step.Says);
            });
            json.WriteObjects("stages", box is null ? [] : OpenStages(book, box), stage =>
            {
                json.WriteString("title", stage.Title.Value);
                json.WriteString("sign", stage.Sign.Value);
                json.WriteString("page", book.Addresses.PageOf(stage.Id.Value));
            });
            json.WriteTexts("hand", Said(placed => placed.Position == Thing.InHand && names.IsThing(placed)));
            json.WriteTexts("known", Said(names.IsKnown));
            json.WriteTexts("elsewhere", Said(names.IsElsewhere));
            json.WriteTexts("shortest", book.Survey.Opens is Claim.Proved(var opening) ? opening.Select(Rehearsal.KeyOf) : []);
            json.WriteTexts("stuck", book.Survey.NoDeadEnds is Claim.Refuted(var witness, _) ? witness.Select(Rehearsal.KeyOf) : []);
        });

        IEnumerable<string> Said(Func<Placed, bool> which) => (box?.Positions ?? []).Where(which).Select(names.Of);
    }

    // As on the site: all that comes before it has been done, and it hasn't.
    private static IEnumerable<Stage> OpenStages(Examined book, Rehearsal box)
    {
        var done = book.Book.Stages.Where(box.IsDone).Select(stage => stage.Id.Value).ToHashSet();
        return book.Book.Stages.Where(stage => !done.Contains(stage.Id.Value)
            && book.Survey.Stages[stage.Id.Value] is { Reachable: true } surveyed
            && surveyed.OpensAfter.All(group => group.Any(done.Contains)));
    }

    // Positions in the maker's words.
    private sealed class NamesOf(Book book)
    {
        private readonly Dictionary<string, Named> named = book.Box.Names.DistinctBy(each => each.Id.Value).ToDictionary(each => each.Id.Value);

        public bool IsThing(Placed placed) => named[placed.Name] is Thing;

        public bool IsKnown(Placed placed) => named[placed.Name] is { Attained: { } attained } and not (Thing or Part) && attained == placed.Position;

        // Not as it came from the maker, and not in a hand.
        public bool IsElsewhere(Placed placed) =>
            named[placed.Name] is (Part or Thing) and var one && one.Positions[0] != placed.Position && (one is Part || placed.Position != Thing.InHand);

        public string Of(Placed placed) => named[placed.Name] switch
        {
            Part part => $"{part.Name}: {part.Say(placed.Position)}",
            Thing when placed.Position == Thing.InHand => named[placed.Name].Name,
            Thing thing => $"{thing.Name}: {placed.Position.Replace('-', ' ')}",
            var known => known.Name,
        };
    }
}
